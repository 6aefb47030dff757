package drawing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// markOf returns the corners of the witness mark of a part.
func markOf(t *testing.T, pl *plate.Plate, part plan.Part, v View) []geom.Point {
	t.Helper()
	shapes, _ := on(Part(pl, part, v), Witness)
	require.Len(t, shapes, 1)
	return shapes[0].(Polygon).Points
}

// clockwise is above 0 where a triangle's corners run clockwise.
func clockwise(p []geom.Point) float64 {
	a, b := p[1].Sub(p[0]), p[2].Sub(p[0])
	return a.Y*b.X - a.X*b.Y
}

func TestWitnessMarksLineUp(t *testing.T) {
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		az := markOf(t, pl, plan.PartBase, FromAbove)[0].Azimuth()
		require.NotZero(t, math.Mod(az.Degrees(), 90), "on no axis, or the mirror image could pass for it")
		for _, part := range Parts(pl.Plan) {
			m := markOf(t, pl, part, FromAbove)
			for _, p := range m[:2] {
				assert.InDelta(t, az.Degrees(), p.Azimuth().Degrees(), same, "%s: the long side lies along one radius", part)
			}
			assert.Less(t, m[1].Norm(), m[0].Norm(), "%s: tip at the edge", part)
			assert.Greater(t, m[2].Azimuth(), az, "%s: the foot points clockwise", part)
			assert.InDelta(t, 1.5, m[0].Distance(geom.Polar(plate.OutlineOf(pl.Plan, part).Reach(az), az)), same, "%s: from the edge", part)
			assert.InDelta(t, 8, m[0].Distance(m[1]), same)
			assert.InDelta(t, 5, m[1].Distance(m[2]), same, "%s: sides unlike, so that no turn makes its mirror image of it", part)
		}
	})
}

func TestWitnessMarkTellsTheFaces(t *testing.T) {
	pl := plate.New(everything(plan.PartTurntable, plan.Clockwise))
	above, below := markOf(t, pl, plan.PartTurntable, FromAbove), markOf(t, pl, plan.PartTurntable, AsAtDrill)
	assert.Negative(t, clockwise(above)*clockwise(below), "turned over, its foot points the other way round")
	for _, p := range above {
		for _, q := range below {
			assert.Greater(t, p.Distance(q), 1.0, "and it stands elsewhere")
		}
	}
}

// farFromHoles requires every point of the mark's sides to be outside every
// hole of its part.
func farFromHoles(t *testing.T, pl *plate.Plate) {
	t.Helper()
	for _, part := range Parts(pl.Plan) {
		m := markOf(t, pl, part, FromAbove)
		for k := range m {
			for u := 0.0; u <= 1; u += 0.05 {
				p := m[k].Add(m[(k+1)%3].Sub(m[k]).Scale(u))
				for _, f := range pl.Features {
					if f.Part == part {
						assert.Positive(t, f.Clear(p, 0))
					}
				}
				if part == pl.SeatsPart {
					for _, s := range pl.Seats {
						assert.Greater(t, s.Centre.Distance(p), pl.Plan.Seat.Mouth()/2)
					}
				}
				if part == pl.CatchPart {
					for _, k := range pl.Pockets {
						assert.Greater(t, k.Centre.Distance(p), k.Widest()/2)
					}
				}
				assert.Positive(t, plate.OutlineOf(pl.Plan, part).Inside(p), "%s", part)
				assert.Greater(t, p.Norm(), plate.BoreOf(pl.Plan, part)/2, "%s", part)
			}
		}
	}
}

func TestWitnessMarkKeepsOffHoles(t *testing.T) {
	eachWay(t, farFromHoles)
	usual := geom.Angle(50)
	edit := func(change func(*plan.Plan)) *plate.Plate {
		p := everything(plan.PartTurntable, plan.Clockwise)
		p.Features = nil
		change(&p)
		return plate.New(p)
	}
	require.Equal(t, usual, witnessAzimuth(edit(func(*plan.Plan) {})))
	for _, c := range []struct {
		why    string
		change func(*plan.Plan)
	}{
		{"a hole of the turntable stands there", func(p *plan.Plan) {
			at := geom.Polar(124, usual)
			p.Features = []plan.Feature{{Part: plan.PartTurntable, Kind: plan.Hole, X: at.X, Y: at.Y, Diameter: 6}}
		}},
		{"the foot alone would touch a hole", func(p *plan.Plan) {
			at := geom.Polar(120.5, usual).Add(geom.Polar(8, usual+90))
			p.Features = []plan.Feature{{Part: plan.PartTurntable, Kind: plan.Hole, X: at.X, Y: at.Y, Diameter: 7}}
		}},
		{"a pocket stands there", func(p *plan.Plan) { p.Catches[0] = plan.Placement{Name: "A", Azimuth: 50, Radius: 120} }},
		{"a seat stands there", func(p *plan.Plan) {
			p.Base = plan.Base{Shape: plan.Disc, Diameter: 230, Thickness: 18}
			p.Catches[0].Azimuth = 14
		}},
	} {
		t.Run(c.why, func(t *testing.T) {
			pl := edit(c.change)
			assert.NotEqual(t, usual, witnessAzimuth(pl))
			farFromHoles(t, pl)
		})
	}
}

func TestWitnessMarkStaysOnAwkwardParts(t *testing.T) {
	for _, c := range []struct {
		why    string
		change func(*plan.Plan)
	}{
		{"a long narrow base", func(p *plan.Plan) { p.Base.Width, p.Base.Depth = 1000, 50 }},
		{"a deep narrow base", func(p *plan.Plan) { p.Base.Width, p.Base.Depth = 50, 1000 }},
		{"a collar hardly wider than its bore", func(p *plan.Plan) { p.Collar.OutsideDiameter = 264 }},
		{"a turntable of a few millimetres", func(p *plan.Plan) { p.Turntable.Diameter, p.Turntable.PivotBore = 6, 2 }},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := everything(plan.PartTurntable, plan.Clockwise)
			p.Features, p.Stops, p.Collar.Screws.Count = nil, nil, 0
			p.Catches = []plan.Placement{{Name: "A", Azimuth: -90, Radius: 105}}
			c.change(&p)
			farFromHoles(t, plate.New(p))
		})
	}
}

func TestWitnessMarkWhereThereIsNoRoom(t *testing.T) {
	p := everything(plan.PartTurntable, plan.Clockwise)
	p.Base = plan.Base{Shape: plan.Disc, Diameter: 340, Thickness: 18}
	p.Collar = nil
	// Slots take every place at the edge; that at 105 only half as deep.
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 160, From: 20, To: 90, Width: 40},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 160, From: 95, To: 110, Width: 10},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 160, From: 112, To: 170, Width: 40},
	}
	pl := plate.New(p)
	require.Negative(t, witnessRoom(pl, 105), "even there it lies over a slot")
	assert.Equal(t, geom.Angle(105), witnessAzimuth(pl), "the least bad place")
}
