package drawing

import (
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Repair draws what is bored to put a seat right, as it lies at the drill: the
// old hole dashed, the plug or bush round it, the new seat, and an arrow for the
// way it moves. The old hole's centre is at the origin, the pivot in the
// direction of the line that leaves it. A moved pattern is drawn as the part
// with its new seats, the old ones as plain holes, pivot at the origin.
func Repair(pl *plate.Plate, x detent.Repair) Drawing {
	if x.Seat < 0 {
		return Part(x.Trial.Plate, pl.SeatsPart, AsAtDrill)
	}
	var d Drawing
	seat, mouth := pl.Seats[x.Seat], pl.Plan.Seat.Mouth()
	half := x.Diameter // how far round the hole is drawn, mm
	span := geom.FromRadians(half / seat.Radius)
	d.Add(Ring, ArcOf(geom.ArcBetween(seat.Radius, seat.Azimuth-span, seat.Azimuth+span)))
	inward := geom.Polar(1, seat.Azimuth)
	d.Add(Centres, Line{x.Old.Sub(inward.Scale(half)), x.Old.Add(inward.Scale(half))})
	d.Add(PocketRim, Circle{x.Old, x.Diameter / 2})
	d.Add(Track, Circle{x.Old, mouth / 2}) // over the plug, which a view may fill
	d.Add(Seats, Circle{x.New, mouth / 2})
	cross(&d, x.New, 0)
	moveArrow(&d, x)
	var out Drawing
	mirror := AsAtDrill.Mirrored(pl.SeatsPart)
	old := plate.AtDrill(pl.SeatsPart, x.Old)
	out.Place(d, Transform{Mirror: mirror, Scale: 1, Move: old.Scale(-1)})
	return out
}

// moveArrow points along the ring, outside the plug, the way the seat moves.
func moveArrow(d *Drawing, x detent.Repair) {
	const gap, long, wide = 1.5, 4.0, 1.0 // mm
	out := geom.Polar(1, x.Old.Azimuth())
	along := geom.Polar(1, x.Towards)
	from := x.Old.Add(out.Scale(x.Diameter/2 + gap)).Sub(along.Scale(long))
	tip := from.Add(along.Scale(2 * long))
	neck := tip.Sub(along.Scale(long))
	d.Add(Witness, Line{from, neck})
	d.Add(Witness, Polygon{[]geom.Point{tip, neck.Add(out.Scale(wide)), neck.Sub(out.Scale(wide))}})
}
