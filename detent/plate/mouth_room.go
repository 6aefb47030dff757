package plate

import "math"

// WidestMouth returns the diameter (mm) to which the mouths of all seats can
// grow while webs and edges keep the plan's rules: the present one where a rule
// is broken already, and infinite where nothing is in the way.
func (pl *Plate) WidestMouth() float64 {
	rules, mouth := pl.Plan.Rules, pl.Plan.Seat.Mouth()
	room := math.Inf(1)
	for i, s := range pl.Seats { // two seats grow towards each other by half of it each
		room = min(room, s.Web-rules.Web, 2*(min(pl.ToEdge(i), pl.ToBore(i))-rules.Edge))
	}
	// No seat needs to be wider than the ball.
	reach := rules.Web + max(0, pl.Plan.Catch.BallDiameter-mouth)/2
	for _, f := range pl.Features {
		if f.Part == pl.SeatsPart {
			pl.SeatsNear(f, reach, func(_ int, web float64) { room = min(room, 2*(web-rules.Web)) })
		}
	}
	return mouth + max(0, room)
}
