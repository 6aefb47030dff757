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
	corners := witnessCorners(pl, part, witnessAzimuth(pl))
	d.Add(Witness, Polygon{corners[:]})
}

// witnessCorners returns the tip of the mark, the corner below it on the same
// radius, and the end of its foot. The mark is smaller where less than twice its
// height is left between the edge and the opening on the pivot, and on a part so
// small that it would be over a tenth of its radius.
func witnessCorners(pl *plate.Plate, part plan.Part, az geom.Angle) [3]geom.Point {
	edge := plate.OutlineOf(pl.Plan, part).Reach(az)
	space := edge - plate.BoreOf(pl.Plan, part)/2
	k := max(0, min(1, space/(2*(witnessGap+witnessHeight)), edge/(10*witnessHeight)))
	tip := geom.Polar(edge-k*witnessGap, az)
	corner := geom.Polar(edge-k*(witnessGap+witnessHeight), az)
	return [3]geom.Point{tip, corner, corner.Add(geom.Polar(k*witnessFoot, az+90))}
}

// witnessClear is the room (mm) a mark must have to the nearest hole.
const witnessClear = 1.0

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
// to the edge of a hole there; where the mark leaves a part, how far, negative.
// The mark counts as the circle through its corners, whose middle is halfway
// along its long side.
func witnessRoom(pl *plate.Plate, az geom.Angle) float64 {
	room := math.Inf(1)
	keep := func(free float64) { room = math.Min(room, free) }
	for _, part := range Parts(pl.Plan) {
		corners := witnessCorners(pl, part, az)
		for _, c := range corners {
			if in := plate.OutlineOf(pl.Plan, part).Inside(c); in < 0 {
				keep(in)
			}
		}
		mid := corners[0].Add(corners[2]).Scale(0.5)
		half := corners[0].Distance(corners[2]) / 2
		for _, f := range pl.Features {
			if f.Part == part {
				keep(f.Clear(mid, half))
			}
		}
		if part == pl.CatchPart {
			for _, p := range pl.Pockets {
				keep(p.Centre.Distance(mid) - p.Widest()/2 - half)
			}
		}
		if part == pl.SeatsPart {
			for _, s := range pl.Seats {
				keep(s.Centre.Distance(mid) - pl.Plan.Seat.Mouth()/2 - half)
			}
		}
	}
	return room
}
