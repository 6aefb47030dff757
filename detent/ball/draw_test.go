package ball_test

import (
	"math"

	"pgregory.net/rapid"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
)

// drawSeat draws a seat of either form, in all proportions to the ball from
// needle prick to one that swallows it, with every extra present or absent.
func drawSeat(t *rapid.T, ballDiameter float64) ball.Seat {
	part := func(name string, lo, hi float64) float64 {
		return ballDiameter * rapid.Float64Range(lo, hi).Draw(t, name)
	}
	s := ball.Seat{
		Form:        rapid.SampledFrom([]ball.Form{ball.Drilled, ball.Countersunk}).Draw(t, "form"),
		Diameter:    part("diameter", 0.02, 1.4),
		DrillPoint:  geom.Angle(rapid.SampledFrom([]float64{60, 82, 90, 118, 135, 175, 180, 180}).Draw(t, "point")),
		Countersink: geom.Angle(rapid.SampledFrom([]float64{30, 60, 82, 90, 100, 120, 150}).Draw(t, "countersink")),
	}
	if rapid.Bool().Draw(t, "chamfered") {
		s.Chamfer = part("chamfer", 0.005, 0.3)
	}
	if rapid.Bool().Draw(t, "blind") {
		s.Depth = part("depth", 0.02, 1)
	}
	if rapid.Bool().Draw(t, "relieved") {
		s.Relief = part("relief", 0.02, 1.2)
	}
	return s
}

// drawSetup draws a catch over a seat that a workshop could have.
func drawSetup(t *rapid.T) ball.Setup {
	d := rapid.Float64Range(2, 12).Draw(t, "ball")
	free := rapid.Float64Range(0, 50).Draw(t, "free")
	return ball.Setup{
		BallDiameter: d,
		Seat:         drawSeat(t, d),
		Spring: ball.Spring{
			Free:   free,
			Flush:  free + rapid.Float64Range(0, 50).Draw(t, "stiffness"),
			Travel: d * rapid.Float64Range(0.05, 0.6).Draw(t, "protrusion"),
		},
		FaceGap:    d * rapid.Float64Range(-0.05, 0.2).Draw(t, "gap"),
		RingRadius: rapid.Float64Range(10, 500).Draw(t, "ring"),
		Friction:   rapid.SampledFrom([]float64{0, 0.05, 0.2, 0.5, 1, 1.5}).Draw(t, "friction"),
	}
}

// surface returns the height of the seat's material (0 or less) at a distance
// from its axis, minus infinity where it is cut right through. It is worked out
// as a maker would: what each tool takes away, the deepest cut counts.
func surface(s ball.Seat, rho float64) float64 {
	cut := 0.0
	take := func(depth float64) { cut = math.Max(cut, depth) }
	tan := func(a geom.Angle) float64 { return math.Tan(a.Radians()) }

	wall := s.Diameter / 2
	switch {
	case s.Form == ball.Countersunk:
		take((wall - rho) / tan(s.Countersink/2))
		if s.Chamfer > 0 {
			take(wall + s.Chamfer - rho)
		}
		if s.Depth > 0 {
			cut = math.Min(cut, s.Depth)
		}
	case rho >= wall:
		take(wall + s.Chamfer - rho)
	case s.Depth == 0:
		take(math.Inf(1))
	default:
		take(math.Max(s.Depth, s.Chamfer) + (wall-rho)/tan(s.DrillPoint/2))
	}
	if rho < s.Relief/2 {
		take(math.Inf(1))
	}
	return -cut
}

// corners are the radii at which edges lie that the drawing gives at once.
func corners(s ball.Seat) []float64 {
	return []float64{s.Diameter / 2, s.Diameter/2 + s.Chamfer, s.Relief / 2}
}

// lower lets a ball down on sampled points of the seat until one touches. It
// returns the height of its centre, minus infinity where none does, and how far
// from the seat's axis the touching point is. The true ball stands as high or
// higher.
func lower(ballDiameter float64, s ball.Seat, offset float64) (height, at float64) {
	r := ballDiameter / 2
	height = math.Inf(-1)
	try := func(rho float64) {
		d := rho - offset
		if rho < 0 || math.Abs(d) > r {
			return
		}
		if h := surface(s, rho) + math.Sqrt(r*r-d*d); h > height {
			height, at = h, rho
		}
	}
	for _, rho := range corners(s) {
		try(rho)
	}
	const points = 200 // a pass; each pass looks closer at the best point of the last
	middle, half := offset, r
	for range 4 {
		for k := -points; k <= points; k++ {
			try(middle + half*float64(k)/points)
		}
		middle, half = at, 2*half/points
	}
	return height, at
}
