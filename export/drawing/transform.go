package drawing

import "stopwright/detent/geom"

// Transform mirrors (x changes sign), then turns about the origin, then scales,
// then moves. Scale must be above 0. Lettering keeps its size and reads the
// right way round whatever the transform: only its place moves.
type Transform struct {
	Mirror bool
	Turn   geom.Angle // clockwise
	Scale  float64
	Move   geom.Point
}

// Point returns where the transform takes p.
func (t Transform) Point(p geom.Point) geom.Point {
	if t.Mirror {
		p = p.MirrorX()
	}
	if t.Turn != 0 {
		p = p.Rotate(t.Turn)
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
		start = 180 - a.Start - a.Sweep // its end comes first
	}
	start = (geom.Angle(start) - t.Turn).Turn().Degrees()
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
