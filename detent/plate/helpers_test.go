package plate_test

import (
	"fmt"
	"math"

	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
)

// same is how far (mm) two ways of reckoning one place may differ: a few
// roundings of a coordinate at 10 m.
const same = 1e-9

// place returns the point at a radius and azimuth by plain trigonometry in
// radians.
func place(radius, azimuth float64) geom.Point {
	s, c := math.Sincos(azimuth * math.Pi / 180)
	return geom.Point{X: radius * s, Y: radius * c}
}

// apart returns the distance between two points by Pythagoras.
func apart(a, b geom.Point) float64 {
	return math.Sqrt((a.X-b.X)*(a.X-b.X) + (a.Y-b.Y)*(a.Y-b.Y))
}

// withStops is the default plan with stops at the angles given.
func withStops(angles ...float64) plan.Plan {
	p := plan.Default()
	for _, a := range angles {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	return p
}

func nameOf(a plan.Arrangement) string {
	return fmt.Sprintf("catch in %s, %s", a.CatchIn, a.PositiveTurn)
}

// drawPlan draws a valid plan with several rings, some shared and some so small
// that everything overlaps, seats that coincide, and features of every kind.
func drawPlan(t *rapid.T) plan.Plan {
	p := plan.Default()
	p.Arrangement = rapid.SampledFrom(plantest.Arrangements).Draw(t, "arrangement")
	p.Seat.Diameter = rapid.Float64Range(0.1, 20).Draw(t, "mouth")
	p.Seat.Chamfer = rapid.SampledFrom([]float64{0, 0.25}).Draw(t, "chamfer")
	radius := rapid.OneOf(rapid.SampledFrom([]float64{0.1, 40, 80, 105}), rapid.Float64Range(0.1, 300))
	angle := rapid.OneOf(
		rapid.Map(rapid.IntRange(-48, 48), func(k int) float64 { return 7.5 * float64(k) }),
		rapid.Float64Range(-360, 360),
		rapid.SampledFrom([]float64{math.Nextafter(180, 0), -180, 180, -1e-16, 360}),
	)
	p.Catches = nil
	var names []string
	for i := range rapid.IntRange(1, 5).Draw(t, "catches") {
		names = append(names, string(rune('A'+i)))
		p.Catches = append(p.Catches, plan.Placement{
			Name: names[i], Azimuth: angle.Draw(t, "azimuth"), Radius: radius.Draw(t, "radius"),
		})
	}
	for range rapid.IntRange(0, 30).Draw(t, "stops") {
		p.Stops = append(p.Stops, plan.Stop{
			Angle:     angle.Draw(t, "angle"),
			BothSides: rapid.Bool().Draw(t, "both sides"),
			Catches:   rapid.SliceOfNDistinct(rapid.SampledFrom(names), 0, len(names), rapid.ID).Draw(t, "catches"),
		})
	}
	for range rapid.IntRange(0, 8).Draw(t, "features") {
		p.Features = append(p.Features, drawFeature(t))
	}
	return p
}

func drawFeature(t *rapid.T) plan.Feature {
	at := rapid.OneOf(rapid.SampledFrom([]float64{0, 40}), rapid.Float64Range(-200, 200))
	az := rapid.Float64Range(-360, 360)
	f := plan.Feature{
		Part: rapid.SampledFrom([]plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar}).Draw(t, "part"),
		Kind: rapid.SampledFrom([]plan.Kind{plan.Hole, plan.Slot, plan.ArcSlot}).Draw(t, "kind"),
		X:    at.Draw(t, "x"), Y: at.Draw(t, "y"), X2: at.Draw(t, "x2"), Y2: at.Draw(t, "y2"),
		Diameter: rapid.Float64Range(0.1, 40).Draw(t, "diameter"),
		Width:    rapid.Float64Range(0.1, 40).Draw(t, "width"),
		Radius:   rapid.Float64Range(0.1, 200).Draw(t, "radius"),
		From:     az.Draw(t, "from"), To: az.Draw(t, "to"),
	}
	if f.From > f.To {
		f.From, f.To = f.To, f.From
	}
	return f
}
