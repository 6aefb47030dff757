package chart

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Loose is a loose ball of the catch's size laid in a seat, and measured with
// calipers from the face to its top: it tells at the drill whether a seat came
// out as it should.
type Loose struct {
	Ball    float64 // its diameter, mm
	Rests   bool    // it rests in the seat and does not fall in: the rest means something
	Drop    float64 // how far it sinks below the face, mm
	Reading float64 // from the face to its top, mm

	// Band is by how much (mm) the reading may be off either way: what a drill
	// that cuts [plate.Oversize] larger takes off it. 0 where the seat's width is
	// not what the ball feels, or such a seat would swallow it.
	Band float64
}

// looseOf works out the loose ball for the plan's seats.
func looseOf(p plan.Plan) Loose {
	l := Loose{Ball: p.Catch.BallDiameter}
	over := func(s plan.Seat) (float64, bool) {
		c, err := ball.NewContour(p.Catch.BallDiameter, plate.SeatShape(s))
		if err != nil {
			return 0, false
		}
		return c.Gauge()
	}
	l.Reading, l.Rests = over(p.Seat)
	if !l.Rests {
		return l
	}
	l.Drop = l.Ball - l.Reading
	p.Seat.Diameter += plate.Oversize
	if larger, ok := over(p.Seat); ok {
		l.Band = math.Abs(l.Reading - larger)
	}
	return l
}

// looseText says what calipers should read over the ball.
func looseText(c Chart, l Loose) string {
	args := words.Args{
		"Ball": round(c, l.Ball), "Drop": words.MM(l.Drop), "Reading": words.MM(l.Reading), "Band": words.MM(l.Band),
	}
	key := "chart.data.loose.band"
	switch {
	case !l.Rests:
		key = "chart.data.loose.falls"
	case l.Band == 0:
		key = "chart.data.loose.one"
	}
	return c.Words.Text(key, args)
}

// csvLoose returns the same for the head of a table; nothing where the ball
// falls in.
func csvLoose(c Chart, l Loose) [][]string {
	if !l.Rests {
		return nil
	}
	name := func(key string) string { return guard(c.Words.Text("chart.head." + key)) }
	return [][]string{
		{name("loose"), mm(l.Ball)},
		{name("drop"), mm(l.Drop)},
		{name("over-ball"), mm(l.Reading), name("band"), mm(l.Band)},
	}
}
