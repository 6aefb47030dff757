package drawing

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// The columns of the table of layers, mm from its left edge.
const (
	layerDepthAt = 62.0
	layerMeansAt = 92.0
)

// layerTable letters, below everything drawn so far, which layers a part's
// drawing has, how deep each is cut and what it holds.
func layerTable(d *Drawing, pl *plate.Plate, part plan.Part, c *words.Catalogue) {
	used := layersOf(*d)
	b := d.Bounds()
	y := b.Min.Y - margin
	row := func(name, depth, means string) {
		for _, cell := range [...]struct {
			x    float64
			text string
		}{{0, name}, {layerDepthAt, depth}, {layerMeansAt, means}} {
			if cell.text != "" {
				d.Add(Lettering, Text{At: geom.Point{X: b.Min.X + cell.x, Y: y - tagSize}, Size: tagSize, Text: cell.text})
			}
		}
		y -= tagSize * lineStep
	}
	row(c.Text("sheet.layers"), c.Text("sheet.layers.depth"), c.Text("sheet.layers.means"))
	for _, l := range used {
		depth := ""
		if PenOf(l).Cut {
			depth = c.Text("sheet.through")
			if deep := DepthOf(pl, part, l); !deep.Through() {
				depth = c.Text("sheet.deep", words.Args{"Depth": words.MM(deep.MM)})
			}
		}
		row(string(l), depth, c.Text("layer."+string(l.Kind())))
	}
}

// layersOf lists the layers that a drawing uses, in the order of [Pens] and each
// once.
func layersOf(d Drawing) []Layer {
	seen := map[Layer]Layer{} // by kind: a part has one depth of each
	for _, e := range d.Entities {
		seen[e.Layer.Kind()] = e.Layer
	}
	var out []Layer
	for _, p := range Pens {
		if l, used := seen[p.Layer]; used {
			out = append(out, l)
		}
	}
	return out
}
