package dxf

import (
	"github.com/yofu/dxf/entity"
	"github.com/yofu/dxf/handle"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// entities returns the ENTITIES section, in drawing order.
func entities(d drawing.Drawing, t tables) entity.Entities {
	out := make(entity.Entities, 0, len(d.Entities))
	for _, e := range d.Entities {
		made := t.entity(e.Shape)
		if made == nil {
			continue
		}
		made.SetOwner(t.space)
		made.SetLayer(t.layers[e.Layer])
		out = append(out, made)
	}
	return out
}

// owned is an entity that can say which block it belongs to.
type owned interface {
	entity.Entity
	SetOwner(handle.Handler)
}

// entity returns the form of a checked shape, or nil if nothing of it would be
// seen.
func (t tables) entity(s drawing.Shape) owned {
	switch s := s.(type) {
	case drawing.Line:
		if s.A.Distance(s.B) < grain {
			return nil
		}
		l := entity.NewLine()
		l.Start, l.End = coordinates(s.A), coordinates(s.B)
		return l
	case drawing.Circle:
		return circle(s.Centre, s.Radius)
	case drawing.Arc:
		a := entity.NewArc(circle(s.Centre, s.Radius))
		start := turn(s.Start)
		a.Angle = []float64{start, turn(start + s.Sweep)}
		return a
	case drawing.Polygon:
		p := entity.NewLwPolyline(len(s.Points))
		for i, q := range s.Points {
			p.Vertices[i] = []float64{q.X, q.Y}
		}
		p.Close()
		return p
	case drawing.Text:
		if text := label(s.Text); text != "" {
			return newLettering(s, text, t.style)
		}
	}
	return nil
}

func circle(centre geom.Point, radius float64) *entity.Circle {
	c := entity.NewCircle()
	c.Center = coordinates(centre)
	c.Radius = radius
	return c
}

func coordinates(p geom.Point) []float64 { return []float64{p.X, p.Y, 0} }

// turn brings an angle in degrees into [0, 360), where every reader expects it.
func turn(deg float64) float64 { return geom.Angle(deg).Turn().Degrees() }
