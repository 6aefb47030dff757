package svg

import (
	"fmt"
	"io"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// margin is left round the drawing, mm: for the thickness of its lines, and for
// letters that come out wider in another font than they were laid out in.
const margin = 5.0

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
	b := shown.Bounds()
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

// byLayer sorts what is written by its layer, and lists the layers there are in
// the order of the layer table; those it does not know follow as they come.
func byLayer(d drawing.Drawing) (map[drawing.Layer][]drawing.Entity, []drawing.Layer) {
	layers := map[drawing.Layer][]drawing.Entity{}
	var unknown []drawing.Layer
	for _, e := range d.Entities {
		if e.Layer == drawing.Shade {
			continue
		}
		if _, there := layers[e.Layer]; !there && !known(e.Layer) {
			unknown = append(unknown, e.Layer)
		}
		layers[e.Layer] = append(layers[e.Layer], e)
	}
	var order []drawing.Layer
	for _, p := range drawing.Pens {
		if len(layers[p.Layer]) > 0 {
			order = append(order, p.Layer)
		}
	}
	return layers, append(order, unknown...)
}

// known reports whether the layer table has a layer.
func known(l drawing.Layer) bool {
	for _, p := range drawing.Pens {
		if p.Layer == l {
			return true
		}
	}
	return false
}
