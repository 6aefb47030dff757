package drawing

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// same is how far (mm) a drawn place may be from the reckoned one.
const same = 1e-9

// everything is a plan with one of each thing that is drawn, lopsided so that
// no mirror image fits.
func everything(catchIn plan.Part, sense plan.Sense) plan.Plan {
	p := plan.Default()
	p.Title = "Swivelling sanding table"
	p.Arrangement = plan.Arrangement{CatchIn: catchIn, PositiveTurn: sense}
	p.Collar = &plan.Collar{Clearance: 0.5, OutsideDiameter: 310, Thickness: 18, Screws: plan.Screws{
		Count: 8, Circle: 285, Diameter: 4.5, Start: 10,
	}}
	p.Seat.Chamfer, p.Seat.ReliefDiameter = 0.25, 2.5
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 12, Radius: 105}, {Name: "B", Azimuth: -100, Radius: 80}}
	p.Travel = plan.Span{From: -20, To: 60}
	p.Stops = []plan.Stop{
		{Angle: 0, Label: "square", Catches: []string{"A", "B"}},
		{Angle: 36, Catches: []string{"A"}},
		{Angle: -11, Catches: []string{"B"}},
	}
	for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable} {
		p.Features = append(p.Features,
			plan.Feature{Part: part, Kind: plan.Hole, X: 60, Y: -40, Diameter: 5, Label: "foot screw"},
			plan.Feature{Part: part, Kind: plan.Slot, X: -60, Y: -30, X2: -50, Y2: -70, Width: 8},
			plan.Feature{Part: part, Kind: plan.ArcSlot, Radius: 50, From: -10, To: 50, Width: 8},
		)
	}
	return p
}

// eachWay calls check for both arrangements in both senses.
func eachWay(t *testing.T, check func(t *testing.T, pl *plate.Plate)) {
	for _, part := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		for _, sense := range []plan.Sense{plan.Clockwise, plan.Counterclockwise} {
			t.Run(fmt.Sprintf("catch in %s, %s", part, sense), func(t *testing.T) {
				check(t, plate.New(everything(part, sense)))
			})
		}
	}
}

// on returns the shapes of one layer of a drawing, and their items.
func on(d Drawing, l Layer) (shapes []Shape, items []Item) {
	for _, e := range d.Entities {
		if e.Layer == l {
			shapes, items = append(shapes, e.Shape), append(items, e.Item)
		}
	}
	return shapes, items
}

// requireCircles wants one circle of a diameter on a layer for each place, in
// order, as items of a kind.
func requireCircles(t *testing.T, d Drawing, l Layer, kind ItemKind, diameter float64, places []geom.Point) {
	t.Helper()
	shapes, items := on(d, l)
	require.Len(t, shapes, len(places), "%s", l)
	for i, want := range places {
		c, ok := shapes[i].(Circle)
		require.True(t, ok, "%s", l)
		assert.InDelta(t, 0, want.Distance(c.Centre), same, "%s %d", l, i)
		assert.InDelta(t, diameter/2, c.Radius, same, "%s %d", l, i)
		assert.Equal(t, Item{kind, i}, items[i])
	}
}

// TestHolesStandWhereTheReportSays draws each part both ways. As at the drill
// the turntable's x changes sign and nothing else does.
func TestHolesStandWhereTheReportSays(t *testing.T) {
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		for _, v := range []View{FromAbove, AsAtDrill} {
			seen := func(part plan.Part, p geom.Point) geom.Point {
				if v == AsAtDrill && part == plan.PartTurntable {
					return geom.Point{X: -p.X, Y: p.Y}
				}
				return p
			}
			var seats, pockets []geom.Point
			for _, s := range pl.Seats {
				seats = append(seats, seen(pl.SeatsPart, s.Centre))
			}
			for _, p := range pl.Pockets {
				pockets = append(pockets, seen(pl.CatchPart, p.Centre))
			}
			d := Part(pl, pl.SeatsPart, v)
			requireCircles(t, d, Seats, SeatItem, 4.5, seats)
			requireCircles(t, d, SeatChamfer, SeatItem, 5, seats)
			requireCircles(t, d, SeatRelief, SeatItem, 2.5, seats)
			requireCircles(t, d, PocketBody, PocketItem, 0, nil)
			d = Part(pl, pl.CatchPart, v)
			requireCircles(t, d, PocketBody, PocketItem, pl.Pockets[0].Body, pockets)
			requireCircles(t, d, PocketRim, PocketItem, pl.Pockets[0].Rim, pockets)
			requireCircles(t, d, Seats, SeatItem, 0, nil)
		}
	})
}

func TestPlainSeatsAndPockets(t *testing.T) {
	p := everything(plan.PartTurntable, plan.Clockwise)
	p.Seat.Chamfer, p.Seat.ReliefDiameter, p.Catch.FlangeDiameter = 0, 0, 0
	pl := plate.New(p)
	for _, l := range []Layer{SeatChamfer, SeatRelief} {
		shapes, _ := on(Part(pl, plan.PartBase, FromAbove), l)
		assert.Empty(t, shapes, "%s", l)
	}
	shapes, _ := on(Part(pl, plan.PartTurntable, FromAbove), PocketRim)
	assert.Empty(t, shapes)
}

func TestFeaturesOfEachPart(t *testing.T) {
	pl := plate.New(everything(plan.PartTurntable, plan.Clockwise))
	for _, part := range Parts(pl.Plan) {
		d := Part(pl, part, FromAbove)
		var want, got []Item
		for i, f := range pl.Features {
			if f.Part == part {
				want = append(want, Item{FeatureItem, i})
			}
		}
		for _, l := range []Layer{Holes, Slots, Screws} {
			_, items := on(d, l)
			for _, item := range items {
				if len(got) == 0 || got[len(got)-1] != item {
					got = append(got, item)
				}
			}
		}
		assert.Equal(t, want, got, "%s", part)
	}
	screws, _ := on(Part(pl, plan.PartCollar, AsAtDrill), Screws)
	require.Len(t, screws, 8)
	c := screws[2].(Circle)
	assert.InDelta(t, 0, c.Centre.Distance(onCircle(geom.Point{}, 142.5, 90-(10+90))), same, "the third of eight, clockwise from azimuth 10")
}

// TestSeenFromBelowIsTheMirrorImage compares points along every shape.
func TestSeenFromBelowIsTheMirrorImage(t *testing.T) {
	const n = 16
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		above, below := Part(pl, plan.PartTurntable, FromAbove), Part(pl, plan.PartTurntable, AsAtDrill)
		require.Len(t, below.Entities, len(above.Entities))
		for i, e := range above.Entities {
			assert.Equal(t, e.Layer, below.Entities[i].Layer)
			assert.Equal(t, e.Item, below.Entities[i].Item)
			if poly, ok := e.Shape.(Polygon); ok {
				for k, p := range poly.Points {
					assert.Equal(t, p.MirrorX(), below.Entities[i].Shape.(Polygon).Points[k])
				}
				continue
			}
			want, got := trace(t, e.Shape, n), trace(t, below.Entities[i].Shape, n)
			if _, isLine := e.Shape.(Line); !isLine {
				got = reversed(got) // anticlockwise there is clockwise here
			}
			if _, isCircle := e.Shape.(Circle); isCircle {
				want, got = want[:1], []geom.Point{below.Entities[i].Shape.(Circle).Centre.Add(want[0].Sub(e.Shape.(Circle).Centre).MirrorX())}
			}
			for k := range want {
				assert.InDelta(t, 0, want[k].MirrorX().Distance(got[k]), same, "%s", e.Layer)
			}
		}
		for _, part := range []plan.Part{plan.PartBase, plan.PartCollar} {
			assert.Equal(t, Part(pl, part, FromAbove), Part(pl, part, AsAtDrill), "lies as it is seen")
		}
	})
}

func TestTracksAreDrawnWhereTheyRun(t *testing.T) {
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		tracks, _ := on(Part(pl, pl.SeatsPart, FromAbove), Track)
		require.Len(t, tracks, len(pl.Tracks))
		for i, track := range pl.Tracks {
			p := trace(t, tracks[i], 40)
			for _, q := range p {
				assert.InDelta(t, 0, track.Path.DistanceToPoint(q), same)
			}
			assert.InDelta(t, 0, track.Path.End().Distance(p[0]), same, "from its clockwise end")
			assert.InDelta(t, 0, track.Path.Start().Distance(p[40]), same)
		}
	})
}

func TestOutlinesAndPitchCircles(t *testing.T) {
	pl := plate.New(everything(plan.PartTurntable, plan.Clockwise))
	for _, c := range []struct {
		part   plan.Part
		layer  Layer
		want   []Shape
		reason string
	}{
		{plan.PartTurntable, Outline, []Shape{Circle{Radius: 130}}, "a disc"},
		{plan.PartTurntable, Pivot, []Shape{Circle{Radius: 4}}, "the pivot passes through"},
		{plan.PartTurntable, Ring, []Shape{Circle{Radius: 105}, Circle{Radius: 80}}, "of the pockets"},
		{plan.PartBase, Ring, []Shape{Circle{Radius: 105}, Circle{Radius: 80}}, "of the seats"},
		{plan.PartBase, Outline, []Shape{
			Line{geom.Point{X: -170, Y: -160}, geom.Point{X: 170, Y: -160}},
			Line{geom.Point{X: 170, Y: -160}, geom.Point{X: 170, Y: 160}},
			Line{geom.Point{X: 170, Y: 160}, geom.Point{X: -170, Y: 160}},
			Line{geom.Point{X: -170, Y: 160}, geom.Point{X: -170, Y: -160}},
		}, "a rectangle, width along x"},
		{plan.PartCollar, Outline, []Shape{Circle{Radius: 155}}, "a ring"},
		{plan.PartCollar, Bore, []Shape{Circle{Radius: 130.25}}, "clearance is a difference of diameters"},
		{plan.PartCollar, Ring, nil, "it holds neither seats nor pockets"},
		{plan.PartCollar, Centres, nil, "there is nothing at its middle"},
	} {
		t.Run(string(c.part)+" "+string(c.layer), func(t *testing.T) {
			got, _ := on(Part(pl, c.part, FromAbove), c.layer)
			assert.Equal(t, c.want, got, c.reason)
		})
	}
	p := pl.Plan
	p.Turntable.PivotBore, p.Collar = 0, nil
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Azimuth: 90, Radius: 105}}
	pl = plate.New(p)
	assert.Len(t, Parts(p), 2)
	rings, _ := on(Part(pl, plan.PartBase, FromAbove), Ring)
	assert.Len(t, rings, 1, "one circle for all catches of a ring")
	bores, _ := on(Part(pl, plan.PartBase, FromAbove), Pivot)
	assert.Empty(t, bores)
}
