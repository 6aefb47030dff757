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

// gapSlack is what rounding may do to a distance of a few hundred mm.
const gapSlack = 1e-9

func TestGapsOfAFeature(t *testing.T) {
	p := plan.Default()
	p.Arrangement.CatchIn = plan.PartTurntable // seats in the base
	p.Base = plan.Base{Shape: plan.Rectangle, Width: 340, Depth: 300, Thickness: 18}
	p.Turntable.PivotBore = 8
	p.Catches = []plan.Placement{{Name: "A", Radius: 100}}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 90}}
	p.Seat.Diameter, p.Seat.Chamfer = 4, 0
	hole := func(x, y float64) plan.Feature {
		return plan.Feature{Part: plan.PartBase, Kind: plan.Hole, X: x, Y: y, Diameter: 6}
	}
	for _, c := range []struct {
		why       string
		feature   plan.Feature
		web, edge float64
		bore      bool
	}{
		{"beside the seat at 0, 100", hole(20, 100), 20 - 3 - 2, 150 - 100 - 3, false},
		{"it lies over the seat", hole(0, 101), 1 - 3 - 2, 150 - 101 - 3, false},
		{"near the right-hand edge", hole(160, 0), 60 - 3 - 2, 10 - 3, false},
		{"near the bore", hole(0, -12), 112.0 - 3 - 2 - (112 - math.Hypot(100, 12)), 12 - 4 - 3, true},
		{
			"a slot, by the end that is nearer to the edge",
			plan.Feature{Part: plan.PartBase, Kind: plan.Slot, X: 40, Y: -60, X2: 40, Y2: -140, Width: 8},
			math.Hypot(60, 60) - 4 - 2, 150 - 140 - 4, false,
		},
		{
			"a curved slot, where it crosses the axis nearest to an edge",
			plan.Feature{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 140, From: 100, To: 200, Width: 8},
			math.Sqrt(100*100+140*140-2*100*140*math.Cos(10*math.Pi/180)) - 4 - 2, 150 - 140 - 4, false,
		},
	} {
		t.Run(c.why, func(t *testing.T) {
			q := p
			q.Features = []plan.Feature{c.feature}
			pl := plate.New(q)
			web, ok := pl.WebOf(pl.Features[0])
			require.True(t, ok)
			assert.InDelta(t, c.web, web.Size, gapSlack)
			assert.InDelta(t, math.Abs(c.web), web.From.Distance(web.To), gapSlack)
			edge := pl.EdgeOf(pl.Features[0])
			assert.InDelta(t, c.edge, edge.Size, gapSlack)
			assert.InDelta(t, math.Abs(c.edge), edge.From.Distance(edge.To), gapSlack)
			assert.Equal(t, c.bore, edge.Bore)
			if c.bore {
				assert.InDelta(t, 4, edge.To.Norm(), gapSlack, "it ends on the bore")
			} else {
				assert.InDelta(t, 0, plate.OutlineOf(q, plan.PartBase).Inside(edge.To), gapSlack, "it ends on the edge")
			}
		})
	}
}

func TestAFeatureOfAnotherPartHasNoWeb(t *testing.T) {
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 0}}
	p.Features = []plan.Feature{{Part: plan.PartTurntable, Kind: plan.Hole, X: 40, Diameter: 5}}
	pl := plate.New(p)
	_, ok := pl.WebOf(pl.Features[0])
	assert.False(t, ok, "the seats are in the base")
	p.Features[0].Part, p.Stops = plan.PartBase, nil
	pl = plate.New(p)
	_, ok = pl.WebOf(pl.Features[0])
	assert.False(t, ok, "there are no seats")
}

// Whatever its form, no place along a feature's centre line is nearer to the
// edge or the bore than the gap says, and one is as near.
func TestNothingIsNearerThanTheGap(t *testing.T) {
	const steps = 400
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Base.Shape = rapid.SampledFrom([]plan.Shape{plan.Rectangle, plan.Disc}).Draw(t, "shape")
		p.Turntable.PivotBore = 8
		size := rapid.Float64Range(-160, 160)
		f := plan.Feature{
			Part: plan.PartBase, Kind: rapid.SampledFrom([]plan.Kind{plan.Hole, plan.Slot, plan.ArcSlot}).Draw(t, "kind"),
			X: size.Draw(t, "x"), Y: size.Draw(t, "y"), X2: size.Draw(t, "x2"), Y2: size.Draw(t, "y2"),
			Radius: rapid.Float64Range(1, 160).Draw(t, "radius"), From: rapid.Float64Range(-360, 0).Draw(t, "from"),
			Diameter: 5, Width: 5,
		}
		f.To = f.From + rapid.Float64Range(0, 360).Draw(t, "sweep")
		p.Features = []plan.Feature{f}
		pl := plate.New(p)
		got := pl.EdgeOf(pl.Features[0])
		outline := plate.OutlineOf(p, plan.PartBase)
		least := math.Inf(1)
		for k := range steps + 1 {
			along := float64(k) / steps
			at := geom.Point{X: f.X, Y: f.Y}
			switch f.Kind {
			case plan.Slot:
				at = at.Add(geom.Point{X: f.X2, Y: f.Y2}.Sub(at).Scale(along))
			case plan.ArcSlot:
				at = geom.Polar(f.Radius, geom.Angle(f.From+(f.To-f.From)*along))
			}
			least = min(least, outline.Inside(at)-2.5, at.Norm()-4-2.5)
		}
		const step = 320.0 * math.Pi / steps // mm: the longest way between two places tried
		require.LessOrEqual(t, got.Size, least+gapSlack)
		require.GreaterOrEqual(t, got.Size, least-step)
	})
}
