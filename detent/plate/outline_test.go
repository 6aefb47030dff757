package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

func drawOutline(t *rapid.T) plate.Outline {
	size := rapid.Float64Range(0.1, 1000)
	if rapid.Bool().Draw(t, "disc") {
		return plate.Outline{Diameter: size.Draw(t, "diameter")}
	}
	return plate.Outline{Width: size.Draw(t, "width"), Height: size.Draw(t, "height")}
}

// edgePoints returns points all along an outline, at most step mm apart.
func edgePoints(o plate.Outline, step float64) []geom.Point {
	var out []geom.Point
	if o.Diameter > 0 {
		n := math.Ceil(math.Pi * o.Diameter / step)
		for k := range int(n) {
			out = append(out, place(o.Diameter/2, 360*float64(k)/n))
		}
		return out
	}
	side := func(a, b geom.Point) {
		n := math.Ceil(apart(a, b) / step)
		for k := range int(n) + 1 {
			out = append(out, a.Add(b.Sub(a).Scale(float64(k)/n)))
		}
	}
	x, y := o.Width/2, o.Height/2
	corners := []geom.Point{{X: -x, Y: -y}, {X: x, Y: -y}, {X: x, Y: y}, {X: -x, Y: y}}
	for k := range corners {
		side(corners[k], corners[(k+1)%4])
	}
	return out
}

// TestInsideAgainstSampling measures a place inside an outline to points all
// along it.
func TestInsideAgainstSampling(t *testing.T) {
	const step = 1.0 // mm: from d away, a point half a step off is at most step²/8d farther
	rapid.Check(t, func(t *rapid.T) {
		o := drawOutline(t)
		az := rapid.Float64Range(-180, 180).Draw(t, "azimuth")
		share := rapid.Float64Range(0, 0.95).Draw(t, "share of the way to the edge")
		p := place(share*o.Reach(geom.Angle(az)), az)
		least := math.Inf(1)
		for _, e := range edgePoints(o, step) {
			least = math.Min(least, apart(e, p))
		}
		got := o.Inside(p)
		require.Greater(t, got, 0.0)
		require.LessOrEqual(t, got, least+same)
		require.GreaterOrEqual(t, got, least-math.Min(step/2, step*step/(8*got)+same))
	})
}

func TestReachEndsOnTheEdge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := drawOutline(t)
		az := rapid.OneOf(
			rapid.Float64Range(-360, 360),
			rapid.SampledFrom([]float64{0, 90, 180, -90, 270}),
		).Draw(t, "azimuth")
		require.InDelta(t, 0, o.Inside(geom.Polar(o.Reach(geom.Angle(az)), geom.Angle(az))), same)
	})
}

// TestFarthestIsTheFarthestOfTheEdge compares with points all along it, a
// rectangle's corners among them.
func TestFarthestIsTheFarthestOfTheEdge(t *testing.T) {
	const step = 1.0 // mm
	rapid.Check(t, func(t *rapid.T) {
		o := drawOutline(t)
		most := 0.0
		for _, e := range edgePoints(o, step) {
			most = math.Max(most, e.Norm())
		}
		require.InDelta(t, most, o.Farthest(), same)
	})
}

// TestInsideArcAgainstSampling compares the least of an arc with that of points
// along it.
func TestInsideArcAgainstSampling(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := drawOutline(t)
		const steps = 720
		a := geom.Arc{
			Radius: rapid.Float64Range(0, 600).Draw(t, "radius"),
			From:   geom.Angle(rapid.Float64Range(-720, 720).Draw(t, "from")),
			Sweep:  geom.Angle(rapid.Float64Range(0, 720).Draw(t, "sweep")),
		}
		least := math.Inf(1)
		for k := range steps + 1 {
			az := a.From + a.Sweep*geom.Angle(k)/steps
			least = math.Min(least, o.Inside(place(a.Radius, az.Degrees())))
		}
		got := o.InsideArc(a)
		require.LessOrEqual(t, got, least+same, "no point of the arc is nearer")
		// Between two samples the arc moves by at most half a step.
		require.GreaterOrEqual(t, got, least-a.Radius*(a.Sweep/(2*steps)).Radians()-same)
	})
}

func TestOutlinesAndBores(t *testing.T) {
	p := plan.Default() // turntable 260, base 340 by 320, bore 8
	assert.Equal(t, plate.Outline{Diameter: 260}, plate.OutlineOf(p, plan.PartTurntable))
	assert.Equal(t, plate.Outline{Width: 340, Height: 320}, plate.OutlineOf(p, plan.PartBase), "whatever a disc's diameter would be")
	assert.Equal(t, plate.Outline{}, plate.OutlineOf(p, plan.PartCollar), "there is none")
	assert.Zero(t, plate.BoreOf(p, plan.PartCollar))
	assert.Equal(t, 8.0, plate.BoreOf(p, plan.PartBase), "the pivot passes through both")
	assert.Equal(t, 8.0, plate.BoreOf(p, plan.PartTurntable))

	p.Base.Shape, p.Base.Diameter = plan.Disc, 330
	assert.Equal(t, plate.Outline{Diameter: 330}, plate.OutlineOf(p, plan.PartBase), "whatever the rectangle would be")

	p.Collar = &plan.Collar{Clearance: 0.5, OutsideDiameter: 310}
	assert.Equal(t, plate.Outline{Diameter: 310}, plate.OutlineOf(p, plan.PartCollar))
	assert.Equal(t, 260.5, plate.BoreOf(p, plan.PartCollar))
}

func TestMaterialBesideASeat(t *testing.T) {
	p := withStops(0, 90)
	p.Seat.Diameter, p.Seat.Chamfer = 4.5, 0.25 // mouth 5
	pl := plate.New(p)                          // ring 105, base 340 by 320
	assert.InDelta(t, 160-105-2.5, pl.ToEdge(0), same, "to the far side")
	assert.InDelta(t, 170-105-2.5, pl.ToEdge(1), same, "to the right")
	assert.InDelta(t, 105-4-2.5, pl.ToBore(0), same)

	p.Turntable.PivotBore = 0
	assert.Equal(t, math.Inf(1), plate.New(p).ToBore(0), "no bore to break into")

	p.Arrangement.CatchIn = plan.PartBase
	assert.InDelta(t, 130-105-2.5, plate.New(p).ToEdge(1), same, "the seats are in the turntable")
}

func TestPockets(t *testing.T) {
	p := plan.Default()
	p.Catch = plan.Catch{
		BallDiameter: 6, Protrusion: 2,
		BodyDiameter: 8, BodyLength: 13, FlangeDiameter: 9.5, FlangeThickness: 1,
		BodyAllowance: 0.1, RecessAllowance: 0.5,
	}
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 270, Radius: 105}}
	k := plate.New(p).Pockets[0]
	assert.Equal(t, "A", k.Name)
	assert.Equal(t, geom.Angle(-90), k.Azimuth)
	assert.Equal(t, geom.Point{X: -105}, k.Centre)
	assert.Equal(t, 8.1, k.Body, "wider by its allowance, a difference of diameters")
	assert.Equal(t, 9.5, k.Rim, "the allowance of the recess is of its depth")
	assert.Equal(t, 1.5, k.RimDepth)
	assert.Equal(t, 13.5, k.BodyDepth, "the whole catch sits deeper by the recess's allowance")
	assert.Equal(t, 9.5, k.Widest())

	p.Catch.FlangeDiameter = 0
	k = plate.New(p).Pockets[0]
	assert.Zero(t, k.Rim)
	assert.Zero(t, k.RimDepth)
	assert.Equal(t, 13.0, k.BodyDepth, "without a flange there is no recess to sit in")
	assert.Equal(t, 8.1, k.Widest())
}
