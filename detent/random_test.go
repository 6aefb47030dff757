package detent_test

import (
	"math"

	"pgregory.net/rapid"

	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// drawPlan draws a valid plan from everything a plan may be: either
// arrangement, up to 64 catches on rings that often coincide, stops that repeat,
// share seats or lie outside the travel, features of every kind, a collar.
func drawPlan(t *rapid.T) plan.Plan {
	p := plan.Default()
	p.Arrangement.CatchIn = rapid.SampledFrom([]plan.Part{plan.PartTurntable, plan.PartBase}).Draw(t, "catch in")
	p.Arrangement.PositiveTurn = rapid.SampledFrom([]plan.Sense{plan.Clockwise, plan.Counterclockwise}).Draw(t, "sense")
	size := rapid.OneOf(rapid.SampledFrom([]float64{0.1, 260, 340, 10_000}), rapid.Float64Range(0.1, 10_000))
	p.Turntable.Diameter = size.Draw(t, "turntable")
	p.Turntable.PivotBore = rapid.SampledFrom([]float64{0, 8, 150}).Draw(t, "bore")
	p.Base.Shape = rapid.SampledFrom([]plan.Shape{plan.Disc, plan.Rectangle}).Draw(t, "shape")
	p.Base.Diameter, p.Base.Width, p.Base.Depth = size.Draw(t, "base"), size.Draw(t, "width"), size.Draw(t, "depth")
	drawClick(t, &p)
	p.Rules.Web = rapid.SampledFrom([]float64{0, 2, 100}).Draw(t, "web rule")
	p.Rules.Edge = rapid.SampledFrom([]float64{0, 4, 100}).Draw(t, "edge rule")
	angle := drawnAngle()
	p.Travel.From = -rapid.Float64Range(0, 360).Draw(t, "from")
	p.Travel.To = rapid.Float64Range(p.Travel.From, 360).Draw(t, "to")
	p.Catches = nil
	radius := rapid.OneOf(rapid.SampledFrom([]float64{0.1, 60, 105, 10_000}), rapid.Float64Range(0.1, 10_000))
	var names []string
	for i := range rapid.OneOf(rapid.IntRange(1, 4), rapid.Just(plan.MaxCatches)).Draw(t, "catches") {
		names = append(names, string(rune('0'+i)))
		p.Catches = append(p.Catches, plan.Placement{Name: names[i], Azimuth: angle.Draw(t, "azimuth"), Radius: radius.Draw(t, "radius")})
	}
	for range rapid.IntRange(0, 20).Draw(t, "stops") {
		p.Stops = append(p.Stops, drawStop(t, p))
	}
	for range rapid.IntRange(0, 6).Draw(t, "features") {
		p.Features = append(p.Features, drawFeature(t))
	}
	if rapid.Bool().Draw(t, "collar") {
		p.Collar = &plan.Collar{Clearance: 0.5, OutsideDiameter: size.Draw(t, "outside"), Thickness: 18, Screws: plan.Screws{
			Count: rapid.IntRange(0, 12).Draw(t, "screws"), Circle: size.Draw(t, "circle"), Diameter: 4.5, Start: angle.Draw(t, "start"),
		}}
	}
	return p
}

// drawClick draws a catch, the seats and what the table weighs: more often than
// not such that the ball clicks.
func drawClick(t *rapid.T, p *plan.Plan) {
	usually := func(name string, usual, least, most float64) float64 {
		return rapid.OneOf(
			rapid.Float64Range(0.5*usual, 1.5*usual), rapid.SampledFrom([]float64{least, most, usual}), rapid.Float64Range(least, most),
		).Draw(t, name)
	}
	p.Seat.Form = rapid.SampledFrom([]plan.Form{plan.Drilled, plan.Countersunk}).Draw(t, "form")
	p.Seat.Diameter = usually("seat", 4, 0.1, 100)
	p.Seat.Chamfer = rapid.SampledFrom([]float64{0, 0.3, 50}).Draw(t, "chamfer")
	p.Seat.Depth = rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 25)).Draw(t, "depth")
	p.Seat.DrillPoint = rapid.SampledFrom([]float64{60, 118, 180}).Draw(t, "point")
	p.Seat.ReliefDiameter = rapid.SampledFrom([]float64{0, 2, 100}).Draw(t, "relief")
	p.Catch.BallDiameter = usually("ball", 6, 0.1, 100)
	p.Catch.Protrusion = usually("protrusion", 2, 0.1, 100)
	p.Catch.FreeForce, p.Catch.FlushForce = usually("free", 8, 0, 1000), usually("flush", 20, 0, 1000)
	p.Catch.BodyLength = usually("body", 13, 0.1, 100)
	p.FaceGap = usually("gap", 0.2, -5, 50)
	p.Shop.Friction, p.Shop.TableFriction = usually("friction", 0.2, 0, 1.5), usually("rubbing", 0.2, 0, 1.5)
	p.Shop.Load = usually("load", 6, 0, 1000)
	p.Shop.SeatError, p.Shop.CatchError = usually("seat error", 0.2, 0, 50), usually("catch error", 0.2, 0, 50)
	p.Shop.Target = usually("target", 0.25, 0, 360)
}

// drawnAngle draws angles that often meet each other or the seam of a turn.
func drawnAngle() *rapid.Generator[float64] {
	return rapid.OneOf(
		rapid.Map(rapid.IntRange(-24, 24), func(k int) float64 { return 15 * float64(k) }),
		rapid.Float64Range(-360, 360),
		rapid.SampledFrom([]float64{math.Copysign(0, -1), math.Nextafter(180, 0), 1e-10, 359.9999999}),
	)
}

func drawStop(t *rapid.T, p plan.Plan) plan.Stop {
	names := make([]string, len(p.Catches))
	for i, c := range p.Catches {
		names[i] = c.Name
	}
	return plan.Stop{
		Angle: drawnAngle().Draw(t, "angle"), BothSides: rapid.Bool().Draw(t, "both sides"),
		Catches: rapid.SliceOfNDistinct(rapid.SampledFrom(names), 0, min(3, len(names)), rapid.ID).Draw(t, "dropping"),
	}
}

func drawFeature(t *rapid.T) plan.Feature {
	at := rapid.Float64Range(-200, 200)
	from := rapid.Float64Range(-360, 360).Draw(t, "from")
	return plan.Feature{
		Part: rapid.SampledFrom([]plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar}).Draw(t, "part"),
		Kind: rapid.SampledFrom([]plan.Kind{plan.Hole, plan.Slot, plan.ArcSlot}).Draw(t, "kind"),
		X:    at.Draw(t, "x"), Y: at.Draw(t, "y"), X2: at.Draw(t, "x2"), Y2: at.Draw(t, "y2"),
		Diameter: rapid.Float64Range(0.1, 60).Draw(t, "diameter"), Width: rapid.Float64Range(0.1, 60).Draw(t, "width"),
		Radius: rapid.Float64Range(0.1, 200).Draw(t, "radius"),
		From:   from, To: rapid.Float64Range(from, 360).Draw(t, "to"),
	}
}

// turnedBy is the plan with everything that is placed by hand turned clockwise
// about the pivot.
func turnedBy(p plan.Plan, turn geom.Angle) plan.Plan {
	p = p.Clone()
	d := turn.Degrees()
	wrap := func(a float64) float64 { return geom.Angle(a + d).Wrap().Degrees() }
	for i := range p.Catches {
		p.Catches[i].Azimuth = wrap(p.Catches[i].Azimuth)
	}
	if p.Collar != nil {
		p.Collar.Screws.Start = wrap(p.Collar.Screws.Start)
	}
	for i := range p.Features {
		f := &p.Features[i]
		a, b := geom.Point{X: f.X, Y: f.Y}.Rotate(turn), geom.Point{X: f.X2, Y: f.Y2}.Rotate(turn)
		f.X, f.Y, f.X2, f.Y2 = a.X, a.Y, b.X, b.Y
		f.From, f.To = f.From+d, f.To+d
	}
	return p
}

// subject is what a finding is about, as an index into one of the plate's lists.
type subject struct {
	id, list string
	index    int
}

// subjects returns what a finding is about: its seats, else its pockets, else
// its features. A track crossed is its feature's finding, a track that leaves
// its pocket's.
func subjects(f check.Finding) []subject {
	list, indices := "feature", f.Features
	switch {
	case len(f.Seats) > 0:
		list, indices = "seat", f.Seats
	case len(f.Pockets) > 0:
		list, indices = "pocket", f.Pockets
	}
	var out []subject
	for _, i := range indices {
		out = append(out, subject{f.ID, list, i})
	}
	return out
}

// worsts returns the least value that any finding of an id gives for each
// subject. Which of two equal neighbours a seat is told with is decided by
// rounding; this is not.
func worsts(findings []check.Finding) map[subject]float64 {
	out := map[subject]float64{}
	for _, f := range findings {
		for _, s := range subjects(f) {
			if v, known := out[s]; !known || f.Value < v {
				out[s] = f.Value
			}
		}
	}
	return out
}
