package ui

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// seatReading says where a seat lies, how much is left beside it, and what a
// caliper reads over pins to its neighbour.
func (w *Window) seatReading(pl *plate.Plate, seat int) string {
	s := pl.Seats[seat]
	args := words.Args{
		"Tag": s.Tag, "Angle": words.Deg(s.Angle), "Azimuth": words.Deg(s.Azimuth),
		"X": words.MM(s.Centre.X), "Y": words.MM(s.Centre.Y),
		"Edge": words.MM(min(pl.ToEdge(seat), pl.ToBore(seat))),
	}
	if s.Nearest < 0 {
		return w.words.Text("hover.seat.alone", args)
	}
	args["Web"], args["Next"] = words.MM(s.Web), pl.Seats[s.Nearest].Tag
	// Over the outsides of two pins of the drill's size: the chord and one pin.
	args["Over"] = words.MM(s.Web + pl.Plan.Seat.Mouth() + pl.Plan.Seat.Diameter)
	return w.words.Text("hover.seat", args)
}

// placeReading says where a place is, and what dragging there does.
func (w *Window) placeReading(p geom.Point, h hit) string {
	args := words.Args{"X": words.MM(p.X), "Y": words.MM(p.Y), "Radius": words.MM(p.Norm())}
	switch {
	case h.feature >= 0:
		return w.words.Text("hover.feature", args)
	case h.edge == "turntable" && w.store.View().Part == "":
		return w.words.Text("hover.rim", args)
	case h.edge != "":
		return w.words.Text("hover.edge", args)
	}
	return w.words.Text("hover.place", args)
}
