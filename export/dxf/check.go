package dxf

import (
	"cmp"
	"fmt"
	"math"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// grain is what numbers are rounded to when written, mm or degrees: far below
// what any machine resolves, and still hundreds of times the spacing of a
// float64 at the largest part, 10 m.
const grain = 1e-9

// check returns the first thing in d that must not be written.
func check(d drawing.Drawing) error {
	for i, e := range d.Entities {
		err := checkLayer(e.Layer)
		if err == nil {
			err = checkShape(e.Shape)
		}
		if err != nil {
			return fmt.Errorf("entity %d on layer %q: %w", i, string(e.Layer), err)
		}
	}
	return nil
}

// maxLayerName is the longest name of a layer in AC1015 (DXF Reference).
const maxLayerName = 255

func checkLayer(l drawing.Layer) error {
	if l == "" || len(l) > maxLayerName {
		return fmt.Errorf("layer name of %d characters: wants 1 to %d", len(l), maxLayerName)
	}
	for _, r := range l {
		switch {
		case 'A' <= r && r <= 'Z', '0' <= r && r <= '9', r == '_', r == '-':
		default:
			return fmt.Errorf("layer name holds %q: only A-Z, 0-9, _ and - are safe in every reader", r)
		}
	}
	return nil
}

func checkShape(s drawing.Shape) error {
	switch s := s.(type) {
	case drawing.Line:
		return cmp.Or(checkPoint("line start", s.A), checkPoint("line end", s.B))
	case drawing.Circle:
		return cmp.Or(checkPoint("circle centre", s.Centre), checkSize("circle radius", s.Radius))
	case drawing.Arc:
		return cmp.Or(
			checkPoint("arc centre", s.Centre), checkSize("arc radius", s.Radius),
			checkFinite("arc start", s.Start, "degrees"), checkSweep(s.Sweep),
		)
	case drawing.Polygon:
		return checkPolygon(s)
	case drawing.Text:
		return cmp.Or(
			checkPoint("text place", s.At), checkSize("text height", s.Size),
			checkFinite("text angle", s.Angle, "degrees"), checkAlign(s.Align),
		)
	default:
		return fmt.Errorf("shape %T has no form in a DXF file", s)
	}
}

func checkPolygon(p drawing.Polygon) error {
	if len(p.Points) < 3 {
		return fmt.Errorf("polygon of %d corners: wants 3 or more", len(p.Points))
	}
	for i, q := range p.Points {
		if err := checkPoint(fmt.Sprintf("polygon corner %d", i), q); err != nil {
			return err
		}
	}
	return nil
}

func checkAlign(a drawing.Align) error {
	if _, ok := anchors[a]; !ok {
		return fmt.Errorf("text alignment %d is not one of the drawing's", a)
	}
	return nil
}

func checkPoint(what string, p geom.Point) error {
	return cmp.Or(checkFinite(what+" x", p.X, "mm"), checkFinite(what+" y", p.Y, "mm"))
}

func checkFinite(what string, v float64, unit string) error {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return fmt.Errorf("%s %v %s: is no number", what, v, unit)
	}
	return nil
}

// checkSize refuses what would be written as 0 too.
func checkSize(what string, v float64) error {
	if err := checkFinite(what, v, "mm"); err != nil {
		return err
	}
	if v < grain {
		return fmt.Errorf("%s %v mm: must be above 0", what, v)
	}
	return nil
}

// checkSweep refuses an arc whose ends would be written as the same direction:
// readers differ on whether that is a whole circle or nothing.
func checkSweep(deg float64) error {
	if err := checkFinite("arc sweep", deg, "degrees"); err != nil {
		return err
	}
	if deg <= 2*grain || deg >= 360-2*grain {
		return fmt.Errorf("arc sweep %v degrees: must be above 0 and below 360", deg)
	}
	return nil
}
