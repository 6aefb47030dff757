package template

import (
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// The crosses at the centres, mm. Their middles are open, so that the point of a
// centre punch is seen to stand where it should.
const (
	open     = 0.75 // radius of the middle
	overhang = 2.0  // of an arm past its hole
	leastArm = 2.0  // radius that a cross is drawn as round, where there is no hole
)

// Drawing draws one part as it lies at the drill, at full size with the pivot at
// the origin: its outlines and holes, an open cross at every centre, the pitch
// circles between the holes, and the holes' tags where there is room for them.
func Drawing(pl *plate.Plate, part plan.Part, c *words.Catalogue) drawing.Drawing {
	var d drawing.Drawing
	for _, e := range drawing.Part(pl, part, drawing.AsAtDrill).Entities {
		switch e.Layer {
		case drawing.Centres, drawing.Track, drawing.Ring:
		default:
			d.Entities = append(d.Entities, e)
		}
	}
	all := marks(pl, part, c)
	for _, m := range all {
		cross(&d, m.at, m.radius)
	}
	rings(&d, all)
	tags(&d, all, plate.OutlineOf(pl.Plan, part))
	return d
}

// mark is a centre to be pricked.
type mark struct {
	at     geom.Point // as the part lies at the drill
	radius float64    // of the hole; 0: none
	ring   float64    // radius of its pitch circle; 0: none
	names  []string   // what to write beside it, the longest first; none: nothing
}

// marks lists the centres of a part: seats or pockets with their names, and
// every other round hole.
func marks(pl *plate.Plate, part plan.Part, c *words.Catalogue) []mark {
	var all []mark
	like := drawing.Like(pl, part) // a wear ring has the seats of the part it is let into
	if part == pl.SeatsPart || part == plan.PartWearRing {
		for _, s := range pl.Seats {
			all = append(all, mark{
				plate.AtDrill(like, s.Centre), pl.Plan.Seat.Mouth() / 2, s.Radius,
				[]string{s.Tag + "  " + c.Angle(s.Angle.Degrees()), s.Tag},
			})
		}
	}
	if part == pl.CatchPart {
		for _, p := range pl.Pockets {
			all = append(all, mark{plate.AtDrill(like, p.Centre), p.Widest() / 2, p.Radius, []string{p.Name}})
		}
	}
	listed := map[geom.Point]bool{}
	for _, m := range all {
		listed[m.at] = true
	}
	for _, e := range drawing.Part(pl, part, drawing.AsAtDrill).Entities {
		hole, round := e.Shape.(drawing.Circle)
		if round && bored(e.Layer) && !listed[hole.Centre] {
			listed[hole.Centre] = true
			all = append(all, mark{at: hole.Centre, radius: hole.Radius})
		}
	}
	if turns := part == plan.PartBase || part == plan.PartTurntable; turns && !listed[geom.Point{}] {
		all = append(all, mark{}) // the pivot, where it has no bore
	}
	return all
}

// bored reports whether a circle on a layer is a hole with a centre to prick,
// and not an edge of the part.
func bored(l drawing.Layer) bool {
	switch l {
	case drawing.Outline, drawing.Bore, drawing.WearRing:
		return false
	}
	return drawing.PenOf(l).Cut
}

// cross draws two lines at right angles that leave their middle open.
func cross(d *drawing.Drawing, at geom.Point, radius float64) {
	reach := max(radius, leastArm) + overhang
	for q := range 4 {
		arm := geom.Polar(1, geom.Angle(90*q))
		d.Add(drawing.Centres, drawing.Line{A: at.Add(arm.Scale(open)), B: at.Add(arm.Scale(reach))})
	}
}

// rings draws the pitch circles, left out where a hole is: the middles of the
// crosses stay open.
func rings(d *drawing.Drawing, all []mark) {
	var radii []float64
	for _, m := range all {
		if m.ring > 0 && !slices.Contains(radii, m.ring) {
			radii = append(radii, m.ring)
		}
	}
	for _, r := range radii {
		var at []geom.Angle
		var half geom.Angle
		for _, m := range all {
			if m.ring == r {
				at = append(at, m.at.Azimuth())
				half = geom.FromRadians(m.radius / r)
			}
		}
		slices.Sort(at)
		for i, from := range at {
			to := at[(i+1)%len(at)]
			if i+1 == len(at) {
				to += geom.FullTurn
			}
			if sweep := to - from - 2*half; sweep > 0 {
				d.Add(drawing.Ring, drawing.ArcOf(geom.Arc{Radius: r, From: from + half, Sweep: sweep}))
			}
		}
	}
}
