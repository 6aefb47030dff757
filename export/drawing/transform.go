package drawing

import "stopwright/detent/geom"

// Transform mirrors (x changes sign), then scales, then moves. It never
// rotates. Scale must be above 0. Lettering keeps its size and reads the right
// way round whatever the transform: only its place moves.
type Transform struct {
	Mirror bool
	Scale  float64
	Move   geom.Point
}

// Point returns where the transform takes p.
func (t Transform) Point(p geom.Point) geom.Point {
	if t.Mirror {
		p = p.MirrorX()
	}
	return p.Scale(t.Scale).Add(t.Move)
}

func (l Line) transform(t Transform) Shape { return Line{t.Point(l.A), t.Point(l.B)} }

func (c Circle) transform(t Transform) Shape {
	return Circle{t.Point(c.Centre), c.Radius * t.Scale}
}

func (a Arc) transform(t Transform) Shape {
	start := a.Start
	if t.Mirror {
		start = geom.Angle(180 - a.Start - a.Sweep).Turn().Degrees() // its end comes first
	}
	return Arc{t.Point(a.Centre), a.Radius * t.Scale, start, a.Sweep}
}

func (p Polygon) transform(t Transform) Shape {
	out := make([]geom.Point, len(p.Points))
	for i, q := range p.Points {
		out[i] = t.Point(q)
	}
	return Polygon{out}
}

func (x Text) transform(t Transform) Shape {
	x.At = t.Point(x.At)
	if t.Mirror {
		switch x.Align {
		case Left:
			x.Align = Right
		case Right:
			x.Align = Left
		}
		x.Angle = -x.Angle
	}
	return x
}
