package dxf

import (
	"fmt"
	"io"

	"stopwright/export/drawing"
)

// Write writes d to w as one DXF file, in a single call of w.Write.
//
// A drawing that no reader could make sense of is refused before anything is
// written: a number that is not finite, a radius or letter height that is not
// above 0, an arc that does not turn by more than 0 and less than 360 degrees,
// a polygon of fewer than three corners, a layer name with other characters
// than A-Z, 0-9, _ and -. The error names the layer and the value.
func Write(w io.Writer, d drawing.Drawing) error {
	d = written(d)
	if err := check(d); err != nil {
		return fmt.Errorf("dxf: %w", err)
	}
	if _, err := w.Write(file(d)); err != nil {
		return fmt.Errorf("dxf: %w", err)
	}
	return nil
}

// written returns the part of d that goes into a file.
func written(d drawing.Drawing) drawing.Drawing {
	var out drawing.Drawing
	out.Entities = make([]drawing.Entity, 0, len(d.Entities))
	for _, e := range d.Entities {
		if e.Layer != drawing.Shade {
			out.Entities = append(out.Entities, e)
		}
	}
	return out
}
