package svg

const black = "#000000"

// colours gives the layers' colours (AutoCAD colour index) as SVG names them:
// plain ones, by which a laser's program tells cuts apart. 7 is black on paper.
var colours = map[int]string{
	1: "#ff0000", 2: "#ffff00", 3: "#00ff00", 4: "#00ffff", 5: "#0000ff", 6: "#ff00ff",
	7: black, 8: "#808080", 9: "#c0c0c0", 254: "#d6d6d6",
}
