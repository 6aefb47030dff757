package drawing

import (
	"math"
	"slices"

	"stopwright/detent/geom"
)

// Clip returns what of a drawing lies within a rectangle: lines, arcs and filled
// figures cut at its sides, circles there as arcs. A text is kept whole where
// the middle of its box is within.
func (d Drawing) Clip(b Bounds) Drawing {
	var out Drawing
	for _, e := range d.Entities {
		for _, s := range clip(e.Shape, b) {
			out.AddItem(e.Layer, s, e.Item)
		}
	}
	return out
}

func clip(s Shape, b Bounds) []Shape {
	switch s := s.(type) {
	case Line:
		return clipLine(s, b)
	case Circle:
		return clipArc(Arc{s.Centre, s.Radius, 0, 360}, b)
	case Arc:
		return clipArc(s, b)
	case Polygon:
		return clipPolygon(s, b)
	}
	box := NoBounds()
	s.bounds(&box)
	if b.Contains(box.Min.Add(box.Max).Scale(0.5)) {
		return []Shape{s}
	}
	return nil
}

// Contains reports whether a point lies within, edges included.
func (b Bounds) Contains(p geom.Point) bool {
	return p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y
}

// clipLine narrows the stretch of the line that lies within, side by side (the
// method of Liang and Barsky, ACM Transactions on Graphics 3, 1984).
func clipLine(l Line, b Bounds) []Shape {
	from, to := 0.0, 1.0
	way := l.B.Sub(l.A)
	for _, side := range [4]struct{ speed, room float64 }{
		{-way.X, l.A.X - b.Min.X},
		{way.X, b.Max.X - l.A.X},
		{-way.Y, l.A.Y - b.Min.Y},
		{way.Y, b.Max.Y - l.A.Y},
	} {
		switch {
		case side.speed > 0:
			to = math.Min(to, side.room/side.speed)
		case side.speed < 0:
			from = math.Max(from, side.room/side.speed)
		case side.room < 0:
			return nil // outside, and along the side
		}
	}
	if from >= to {
		return nil
	}
	out := l
	if from > 0 {
		out.A = l.A.Add(way.Scale(from))
	}
	if to < 1 {
		out.B = l.A.Add(way.Scale(to))
	}
	return []Shape{out}
}

// clipArc cuts an arc, or a circle as an arc of 360 degrees, where it crosses
// the lines of the sides, and keeps the pieces whose middle is within.
func clipArc(a Arc, b Bounds) []Shape {
	ends := append(crossings(a, b), 0, a.Sweep)
	slices.Sort(ends)
	var kept []Arc
	for i := 1; i < len(ends); i++ {
		from, to := ends[i-1], ends[i]
		if to-from < sliver || !b.Contains(a.at(a.Start+(from+to)/2)) {
			continue
		}
		if n := len(kept); n > 0 && kept[n-1].Start+kept[n-1].Sweep >= from-sliver {
			kept[n-1].Sweep = to - kept[n-1].Start
			continue
		}
		kept = append(kept, Arc{a.Centre, a.Radius, from, to - from})
	}
	if n := len(kept); a.Sweep >= 360 && n > 0 {
		if kept[0].Sweep >= 360-sliver {
			return []Shape{Circle{a.Centre, a.Radius}}
		}
		if first, last := kept[0], kept[n-1]; n > 1 && first.Start == 0 && last.Start+last.Sweep == a.Sweep {
			kept[n-1].Sweep += first.Sweep // over the place where the circle was begun
			kept = kept[1:]
		}
	}
	out := make([]Shape, len(kept))
	for i, k := range kept {
		k.Start = geom.Angle(a.Start + k.Start).Turn().Degrees()
		out[i] = k
	}
	return out
}

// sliver is the least angle, degrees, that is worth a stroke: at 10 m under a
// thousandth of a millimetre.
const sliver = 1e-6

// crossings returns where an arc crosses the lines of a rectangle's sides,
// degrees from its start. Of a side beyond its reach it is where the arc comes
// nearest: a touch is no piece's middle then, and rounding cannot turn a touch
// into a crossing.
func crossings(a Arc, b Bounds) []float64 {
	var out []float64
	add := func(deg float64) {
		if t := geom.Angle(deg - a.Start).Turn().Degrees(); t < a.Sweep {
			out = append(out, t)
		}
	}
	degrees := func(rad float64) float64 { return geom.FromRadians(rad).Degrees() }
	for _, x := range [2]float64{b.Min.X, b.Max.X} {
		t := degrees(math.Acos(within1((x - a.Centre.X) / a.Radius)))
		add(t)
		add(-t)
	}
	for _, y := range [2]float64{b.Min.Y, b.Max.Y} {
		t := degrees(math.Asin(within1((y - a.Centre.Y) / a.Radius)))
		add(t)
		add(180 - t)
	}
	return out
}

// within1 returns the sine or cosine nearest to a number.
func within1(x float64) float64 { return max(-1, min(1, x)) }

// clipPolygon cuts a figure by one side after the other (the method of
// Sutherland and Hodgman, Communications of the ACM 17, 1974).
func clipPolygon(p Polygon, b Bounds) []Shape {
	points := p.Points
	for _, inside := range [4]func(geom.Point) float64{
		func(q geom.Point) float64 { return q.X - b.Min.X },
		func(q geom.Point) float64 { return b.Max.X - q.X },
		func(q geom.Point) float64 { return q.Y - b.Min.Y },
		func(q geom.Point) float64 { return b.Max.Y - q.Y },
	} {
		var kept []geom.Point
		for i, q := range points {
			before := points[(i+len(points)-1)%len(points)]
			was, is := inside(before), inside(q)
			if was*is < 0 {
				kept = append(kept, before.Add(q.Sub(before).Scale(was/(was-is))))
			}
			if is >= 0 {
				kept = append(kept, q)
			}
		}
		points = kept
	}
	if len(points) < 3 {
		return nil
	}
	return []Shape{Polygon{points}}
}
