package drawing

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// fitted is a plan with a collar and every fitting.
func fitted() plan.Plan {
	p := everything(plan.PartTurntable, plan.Clockwise)
	p.Travel = plan.Span{From: -60, To: 60}
	m := &p.Making
	m.KnockOut = 4
	m.Pivot = plan.PivotFit{Turntable: 0.1, Base: -0.05}
	m.Screws = plan.ScrewHoles{Size: "#8", Pilot: 2.8, PilotDepth: 12, Head: 9, HeadDepth: 3}
	m.Dust = plan.DustSlots{Width: 6, Side: plan.Both, Bridge: 20}
	m.EndStops.Diameter, m.Clamp.Diameter, m.Clamp.Radius = 6, 8, 30
	m.Fence.Width, m.Registration.Diameter = 6.6, 6
	m.WearRing.Width = 24
	m.Carrier.Width, m.Carrier.PadThickness = 24, 2
	return p
}

// cutLayers returns the layers of a drawing that are cut.
func cutLayers(d Drawing) map[Layer]bool {
	out := map[Layer]bool{}
	for _, e := range d.Entities {
		if PenOf(e.Layer).Cut {
			out[e.Layer] = true
		}
	}
	return out
}

func TestEveryFittingHasItsLayer(t *testing.T) {
	pl := plate.New(fitted())
	require.Equal(t, []plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar, plan.PartWearRing, plan.PartCarrier, plan.PartPad}, AllPartsOf(pl.Plan))
	for part, want := range map[plan.Part][]Layer{
		plan.PartBase:      {WearRing, ScrewPilots, EndStops, Clamp, Dust, Fence, Registration, Seats, Pivot, Outline},
		plan.PartTurntable: {PocketBody, PocketRim, KnockOut, EndStops, Clamp, CarrierHoles, Registration},
		plan.PartCollar:    {Screws, ScrewHeads, Registration, Bore},
		plan.PartWearRing:  {Outline, Bore, Seats},
		plan.PartCarrier:   {Outline, PocketBody, KnockOut, Screws},
		plan.PartPad:       {Outline, PocketBody, Screws},
	} {
		got := cutLayers(Part(pl, part, AsAtDrill))
		for _, l := range want {
			assert.True(t, got[l], "%s has %s", part, l)
		}
	}
	assert.False(t, cutLayers(Part(pl, plan.PartPad, AsAtDrill))[KnockOut], "the catch goes right through the pad")
}

func TestAPlainPlateHasNoneOfThem(t *testing.T) {
	pl := plate.New(plan.Default())
	for _, part := range AllPartsOf(pl.Plan) {
		for l := range cutLayers(Part(pl, part, AsAtDrill)) {
			assert.NotContains(t, []Layer{
				KnockOut, ScrewPilots, ScrewHeads, EndStops, Clamp, Dust, Fence, Registration, WearRing, CarrierHoles,
			}, l)
		}
	}
}

// The pockets and bores are as wide as the hardware and its allowance.
func TestHolesHaveTheirAllowances(t *testing.T) {
	pl := plate.New(fitted())
	radius := func(part plan.Part, l Layer) float64 {
		shapes, _ := on(Part(pl, part, AsAtDrill), l)
		require.NotEmpty(t, shapes, "%s in %s", l, part)
		return shapes[0].(Circle).Radius
	}
	p := pl.Plan
	assert.InDelta(t, (p.Catch.BodyDiameter+p.Catch.BodyAllowance)/2, radius(plan.PartTurntable, PocketBody), same)
	assert.InDelta(t, (p.Catch.BodyDiameter+p.Catch.BodyAllowance)/2, radius(plan.PartCarrier, PocketBody), same)
	assert.InDelta(t, (p.Turntable.PivotBore+0.1)/2, radius(plan.PartTurntable, Pivot), same)
	assert.InDelta(t, (p.Turntable.PivotBore-0.05)/2, radius(plan.PartBase, Pivot), same)
	assert.InDelta(t, 1.4, radius(plan.PartBase, ScrewPilots), same)
	assert.InDelta(t, p.Collar.Screws.Diameter/2, radius(plan.PartCollar, Screws), same)
	assert.InDelta(t, 4.5, radius(plan.PartCollar, ScrewHeads), same)

	p.Making.ClearanceFrom = plan.FromTurntable
	small := plate.New(p)
	table, _ := on(Part(small, plan.PartTurntable, AsAtDrill), Outline)
	bore, _ := on(Part(small, plan.PartCollar, AsAtDrill), Bore)
	assert.InDelta(t, p.Collar.Clearance, 2*(bore[0].(Circle).Radius-table[0].(Circle).Radius), same)
	assert.InDelta(t, p.Turntable.Diameter, 2*bore[0].(Circle).Radius, same)
}

func TestDepthsOfLayers(t *testing.T) {
	p := fitted()
	pl := plate.New(p)
	for _, c := range []struct {
		part plan.Part
		l    Layer
		want float64 // 0: through
		why  string
	}{
		{plan.PartBase, Outline, 0, "cut out"},
		{plan.PartBase, Seats, p.Seat.Depth, "the cylinder: the drill's point is not the router's"},
		{plan.PartBase, ScrewPilots, 12, ""},
		{plan.PartBase, WearRing, 1.5, "the ring lies flush"},
		{plan.PartWearRing, Seats, 0, "drilled through it"},
		{plan.PartTurntable, PocketBody, 13.5, "the whole catch sits deeper by the recess's allowance"},
		{plan.PartTurntable, PocketRim, 1.5, "the flange and its allowance"},
		{plan.PartTurntable, KnockOut, 0, ""},
		{plan.PartCollar, ScrewHeads, 3, ""},
		{plan.PartPad, PocketBody, 0, ""},
	} {
		assert.InDelta(t, c.want, DepthOf(pl, c.part, c.l).MM, same, "%s %s: %s", c.part, c.l, c.why)
	}
	p.Turntable.Thickness = 9
	thin := plate.New(p)
	assert.True(t, DepthOf(thin, plan.PartTurntable, PocketBody).Through(), "the catch is longer than the part is thick")
	assert.InDelta(t, 13.5-9-2, DepthOf(thin, plan.PartCarrier, PocketBody).MM, same, "and goes on into the carrier")
	p.Seat.Form, p.Seat.CountersinkAngle, p.Seat.Diameter, p.Seat.Depth = plan.Countersunk, 90, 5, 0
	assert.InDelta(t, 2.5, DepthOf(plate.New(p), plan.PartBase, Seats).MM, same, "a 90 degree cone is half as deep as its mouth is wide")
}

func TestLayersNamedWithTheirDepth(t *testing.T) {
	assert.Equal(t, Layer("SEATS-6_00MM"), Seats.At(Depth{6}))
	assert.Equal(t, Layer("OUTLINE-THROUGH"), Outline.At(Depth{}))
	assert.Equal(t, Seats, Seats.At(Depth{6}).Kind())
	assert.Equal(t, Seats, Seats.Kind())
	assert.Equal(t, PenOf(Seats).Colour, PenOf(Seats.At(Depth{6})).Colour, "drawn in the same pen")

	pl := plate.New(fitted())
	deep := info
	deep.Depths = true
	for _, part := range AllPartsOf(pl.Plan) {
		plain, named := PartSheet(pl, part, info), PartSheet(pl, part, deep)
		require.Len(t, named.Entities, len(plain.Entities))
		for i, e := range named.Entities {
			assert.Equal(t, plain.Entities[i].Layer, e.Layer.Kind())
			assert.Equal(t, PenOf(e.Layer).Cut, strings.Contains(string(e.Layer), depthMark), "only what is cut has a depth: %s", e.Layer)
		}
	}
}

// The table on a sheet lists every layer of its drawing, and no other.
func TestTheLayerTableListsWhatIsThere(t *testing.T) {
	pl := plate.New(fitted())
	for _, part := range AllPartsOf(pl.Plan) {
		sheet := PartSheet(pl, part, info)
		listed := map[string]bool{}
		for _, x := range lettered(sheet) {
			listed[x.Text] = true
		}
		for _, p := range Pens {
			shapes, _ := on(Part(pl, part, AsAtDrill), p.Layer)
			if p.Layer != Lettering {
				assert.Equal(t, len(shapes) > 0, listed[string(p.Layer)], "%s in %s", p.Layer, part)
			}
		}
		assert.False(t, listed["["], "no text is missing")
	}
}

// seam is how far apart (mm) the ends of two pieces of an outline may lie: the
// rounding of a file.
const seam = 1e-9

// Slots, straight and curved, are chains of lines and arcs that close.
func TestSlotsCloseWithoutGaps(t *testing.T) {
	pl := plate.New(fitted())
	checked := 0
	for i, f := range pl.Features {
		if f.Fitting == "" || f.Kind == plan.Hole {
			continue
		}
		ends := map[geom.Point]int{}
		count := func(p geom.Point) {
			for q := range ends {
				if q.Distance(p) <= seam {
					ends[q]++
					return
				}
			}
			ends[p] = 1
		}
		for _, e := range Part(pl, f.Part, AsAtDrill).Entities {
			if e.Item != (Item{FeatureItem, i}) {
				continue
			}
			switch s := e.Shape.(type) {
			case Line:
				count(s.A)
				count(s.B)
			case Arc:
				count(onArc(s, s.Start))
				count(onArc(s, s.Start+s.Sweep))
			}
		}
		require.Len(t, ends, 4, "%s %d: two sides and two ends", f.Fitting, f.Index)
		for p, n := range ends {
			assert.Equal(t, 2, n, "%s %d: two pieces meet at %v", f.Fitting, f.Index, p)
		}
		checked++
	}
	assert.Equal(t, 1+1+2*3+2, checked, "end stop, clamp, dust in three pieces on both sides of the wear ring, fence")
}

func onArc(a Arc, deg float64) geom.Point {
	sin, cos := math.Sincos(deg * math.Pi / 180)
	return a.Centre.Add(geom.Point{X: a.Radius * cos, Y: a.Radius * sin})
}
