package drawing

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// The witness mark is a small right-angled flag at the edge of every part, all
// at one azimuth, so that the marks line up with the table at zero and a part
// lying the wrong way up shows it. It is scribed, not cut.
const (
	witnessHeight = 8.0 // mm, along the radius
	witnessFoot   = 5.0 // mm, along the edge, clockwise seen from above
	witnessGap    = 1.5 // mm, from the edge
)

// witness draws the mark inside the part's outer edge.
func witness(d *Drawing, pl *plate.Plate, part plan.Part) {
	az := witnessAzimuth(pl)
	top := plate.OutlineOf(pl.Plan, part).Reach(az) - witnessGap
	foot := top - witnessHeight
	across := geom.Polar(witnessFoot, az+90)
	d.Add(Witness, Polygon{[]geom.Point{
		geom.Polar(top, az), geom.Polar(foot, az), geom.Polar(foot, az).Add(across),
	}})
}

// witnessClear is the room (mm) a mark must have to the nearest hole.
const witnessClear = 4.0

// witnessAzimuth returns where the mark stands: the first of a few places on
// the right, none of them on an axis of the drawing, that is clear of every
// hole of every part, so that it stays where it is while stops come and go;
// else the one with most room, the first of equals.
func witnessAzimuth(pl *plate.Plate) geom.Angle {
	best, room := geom.Angle(0), math.Inf(-1)
	for _, az := range [...]geom.Angle{50, 65, 40, 115, 130, 75, 105, 30, 150} {
		r := witnessRoom(pl, az)
		if r >= witnessClear {
			return az
		}
		if r > room+roomSlack {
			best, room = az, r
		}
	}
	return best
}

// roomSlack keeps rounding from choosing between equal places, mm.
const roomSlack = 1e-6

// witnessRoom returns the least distance (mm) from the mark at az, in any part,
// to the edge of a hole there.
func witnessRoom(pl *plate.Plate, az geom.Angle) float64 {
	room := math.Inf(1)
	for _, part := range Parts(pl.Plan) {
		top := plate.OutlineOf(pl.Plan, part).Reach(az) - witnessGap
		mid := geom.Polar(top-witnessHeight/2, az)
		keep := func(free float64) { room = math.Min(room, free) }
		for _, f := range pl.Features {
			if f.Part == part {
				keep(f.Clear(mid, 0))
			}
		}
		if part == pl.CatchPart {
			for _, p := range pl.Pockets {
				keep(p.Centre.Distance(mid) - p.Widest()/2)
			}
		}
		if part == pl.SeatsPart {
			for _, s := range pl.Seats {
				keep(s.Centre.Distance(mid) - pl.Plan.Seat.Mouth()/2)
			}
		}
	}
	return room
}
