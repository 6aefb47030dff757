package svg

const black = "#000000"

// colours gives the layers' colours (AutoCAD colour index) as SVG names them,
// darker where the plain colour would not be seen on white. A laser's program
// tells cuts apart by them. 7 is black on paper.
var colours = map[int]string{
	1: "#ff0000", 2: "#b08c00", 3: "#00a000", 4: "#00a8a8", 5: "#0000ff", 6: "#ff00ff",
	7: black, 8: "#808080", 9: "#a0a0a0", 30: "#ff7f00", 200: "#bf00ff",
}
