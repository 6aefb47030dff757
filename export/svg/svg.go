package svg

import (
	"fmt"
	"io"
	"slices"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// margin is left round the drawing, mm, for the thickness of its lines.
const margin = 5.0

// wider is how much wider than laid out letters may come out in another font:
// common practice, no source.
const wider = 1.4

// Write writes d to w as one SVG file, in a single call of w.Write. A shape that
// is not [drawing.Sound] is refused before anything is written; the error names
// its layer. A drawing of nothing gives an empty sheet.
//
// [drawing.Shade], the tinted ground of printed sheets, is left out.
func Write(w io.Writer, d drawing.Drawing) error {
	for i, e := range d.Entities {
		if !drawing.Sound(e.Shape) {
			return fmt.Errorf("svg: shape %d on layer %s: %+v holds what is no number, or no size above 0", i, e.Layer, e.Shape)
		}
	}
	if _, err := w.Write(file(d)); err != nil {
		return fmt.Errorf("svg: %w", err)
	}
	return nil
}

// bytesPerEntity is about what a circle takes; it only sizes the buffer.
const bytesPerEntity = 70

// file returns the bytes of a drawing.
func file(d drawing.Drawing) []byte {
	layers, order := byLayer(d)
	var shown drawing.Drawing
	for _, l := range order {
		shown.Entities = append(shown.Entities, layers[l]...)
	}
	b := extent(shown)
	if b.Empty() {
		b = drawing.Bounds{}
	}
	lo := b.Min.Sub(geom.Point{X: margin, Y: margin})
	width, height := b.Width()+2*margin, b.Height()+2*margin

	out := &page{out: make([]byte, 0, 1000+len(d.Entities)*bytesPerEntity)}
	out.text(`<?xml version="1.0" encoding="UTF-8"?>` + "\n")
	out.text(`<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="`)
	out.number(width)
	out.text(`mm" height="`)
	out.number(height)
	out.text(`mm" viewBox="`)
	out.numbers(lo.X, -(lo.Y + height), width, height)
	out.text("\">\n")
	for _, l := range order {
		out.layer(l, layers[l])
	}
	out.text("</svg>\n")
	return out.out
}

// extent returns the bounds of a drawing whose letters may come out wider.
func extent(d drawing.Drawing) drawing.Bounds {
	var all drawing.Drawing
	for _, e := range d.Entities {
		if s, letters := e.Shape.(drawing.Text); letters {
			s.Size *= wider
			e.Shape = s
		}
		all.Entities = append(all.Entities, e)
	}
	return all.Bounds()
}

// byLayer sorts what is written by its layer, and lists the layers there are in
// the order of the layer table; those it does not know follow as they come.
func byLayer(d drawing.Drawing) (map[drawing.Layer][]drawing.Entity, []drawing.Layer) {
	layers := map[drawing.Layer][]drawing.Entity{}
	var order []drawing.Layer
	for _, e := range d.Entities {
		if e.Layer == drawing.Shade {
			continue
		}
		if _, there := layers[e.Layer]; !there {
			order = append(order, e.Layer)
		}
		layers[e.Layer] = append(layers[e.Layer], e)
	}
	slices.SortStableFunc(order, func(a, b drawing.Layer) int { return place(a) - place(b) })
	return layers, order
}

// place returns where a layer stands in the layer table; past its end where it
// has none.
func place(l drawing.Layer) int {
	for i, p := range drawing.Pens {
		if p.Layer == l.Kind() {
			return i
		}
	}
	return len(drawing.Pens)
}
