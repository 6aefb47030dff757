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

// near is how far (mm) a distance reckoned two ways may differ: rounding at the
// size of a plate.
const near = 1e-9

func fitting(pl *plate.Plate, kind plate.Fitting) []plate.Feature {
	var out []plate.Feature
	for _, f := range pl.Features {
		if f.Fitting == kind {
			out = append(out, f)
		}
	}
	return out
}

func TestAPlateAsUsualHasNoFittings(t *testing.T) {
	for _, f := range plate.New(plan.Default()).Features {
		assert.Empty(t, f.Fitting)
	}
}

// The pin, turned with the table, meets the slot's round end when the table has
// gone Beyond past its travel, and is inside the slot before: reckoned here by
// turning the pin's middle with sines and cosines.
func TestAnEndStopEndsTheTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Arrangement.PositiveTurn = plan.Sense(rapid.SampledFrom([]string{"clockwise", "counterclockwise"}).Draw(t, "sense"))
		p.Travel = plan.Span{From: rapid.Float64Range(-120, -1).Draw(t, "from"), To: rapid.Float64Range(1, 120).Draw(t, "to")}
		s := plan.Slider{
			Diameter: rapid.Float64Range(2, 12).Draw(t, "pin"), Radius: rapid.Float64Range(30, 90).Draw(t, "radius"),
			Azimuth: rapid.Float64Range(-360, 360).Draw(t, "azimuth"),
			Play:    rapid.Float64Range(0, 1).Draw(t, "play"), Beyond: rapid.Float64Range(2, 10).Draw(t, "beyond"),
		}
		p.Making.EndStops = s
		pl := plate.New(p)
		slot := fitting(pl, plate.EndStopSlot)[0]
		require.Equal(t, plan.PartBase, slot.Part)
		sense := 1.0
		if p.Arrangement.PositiveTurn == plan.Counterclockwise {
			sense = -1
		}
		room := func(turn float64) float64 {
			az := (s.Azimuth + sense*turn) * math.Pi / 180
			pin := geom.Point{X: s.Radius * math.Sin(az), Y: s.Radius * math.Cos(az)}
			return slot.Half - s.Diameter/2 - slot.Core.DistanceToPoint(pin)
		}
		for _, end := range []float64{p.Travel.From - s.Beyond, p.Travel.To + s.Beyond} {
			assert.InDelta(t, 0, room(end), near, "the pin touches at %v", end)
			inward := 0.5
			if end > 0 {
				inward = -inward
			}
			assert.Greater(t, room(end+inward), -near, "and is free before")
			assert.Less(t, room(end-2*inward), 1e-3, "and not beyond")
		}
	})
}

// Dust slots keep the web rule from every seat and from the balls' path, and
// leave their bridges, whatever the catches and the travel.
func TestDustSlotsKeepClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		p.Making.Dust = plan.DustSlots{
			Width: rapid.Float64Range(2, 12).Draw(t, "width"), Bridge: rapid.Float64Range(5, 30).Draw(t, "bridge"),
			Side: plan.Side(rapid.SampledFrom([]string{"inside", "outside", "both"}).Draw(t, "side")),
		}
		p.Travel = plan.Span{From: rapid.Float64Range(-360, 0).Draw(t, "from"), To: rapid.Float64Range(1, 360).Draw(t, "to")}
		p.Stops = []plan.Stop{{Angle: p.Travel.From}, {Angle: p.Travel.To}}
		if rapid.Bool().Draw(t, "second catch") {
			p.Catches = append(p.Catches, plan.Placement{Name: "B", Radius: 105, Azimuth: rapid.Float64Range(-360, 360).Draw(t, "azimuth")})
		}
		pl := plate.New(p)
		slots := fitting(pl, plate.DustSlot)
		require.NotEmpty(t, slots)
		for i, f := range slots {
			assert.Equal(t, pl.SeatsPart, f.Part)
			assert.Equal(t, i, f.Index)
			assert.LessOrEqual(t, float64(f.Core.(geom.Arc).Sweep), 90+near)
			for k, s := range pl.Seats {
				assert.GreaterOrEqual(t, f.Clear(s.Centre, p.Seat.Mouth()/2), p.Rules.Web-near, "seat %d", k)
			}
			for _, track := range pl.Tracks {
				assert.GreaterOrEqual(t, f.Core.DistanceToArc(track.Path)-f.Half, p.Rules.Web-near)
			}
			for _, g := range slots[:i] {
				assert.GreaterOrEqual(t, f.Between(g), min(p.Making.Dust.Bridge, 2*p.Rules.Web+p.Seat.Mouth())-near, "a bridge, or the ring between two rows")
			}
		}
	})
}

// A wear ring would cover slots beside the seats: they lie beside the ring.
func TestDustSlotsLieBesideAWearRing(t *testing.T) {
	p := plan.Default()
	p.Travel = plan.Span{From: -40, To: 40}
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Radius: 80, Azimuth: 10})
	p.Making.Dust = plan.DustSlots{Width: 6, Side: plan.Both, Bridge: 20}
	p.Making.WearRing.Width = 20
	var radii []float64
	for _, f := range fitting(plate.New(p), plate.DustSlot) {
		radii = append(radii, f.Core.(geom.Arc).Radius)
	}
	assert.Equal(t, []float64{80 - 10 - 2 - 3, 105 + 10 + 2 + 3}, radii, "one ring under both tracks, one slot on either side")
}

// Dust slots run as far as the balls: past either end of a short travel there
// is none.
func TestDustSlotsFollowTheTrack(t *testing.T) {
	p := plan.Default()
	p.Making.Dust.Width = 6
	p.Travel = plan.Span{From: -60, To: 60}
	slots := fitting(plate.New(p), plate.DustSlot)
	require.Len(t, slots, 2, "120 degrees are more than one slot's 90")
	first, last := slots[0].Core.(geom.Arc), slots[1].Core.(geom.Arc)
	assert.InDelta(t, 300, first.From.Degrees(), near)
	assert.InDelta(t, 60, (last.From + last.Sweep).Wrap().Degrees(), near)
	gap := first.End().Distance(last.Start()) - 6
	assert.InDelta(t, 20, gap, near, "the bridge is what is left between the round ends")

	p.Catches[0].Radius = 5
	assert.Empty(t, fitting(plate.New(p), plate.DustSlot), "no room on the pivot")
}

func TestFittingsOfAPlate(t *testing.T) {
	p := plan.Default()
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	p.Making.Fence = plan.FenceSlots{Width: 6, Length: 40, Spacing: 200, Y: 110}
	p.Making.Registration = plan.Registration{Diameter: 6, Distance: 120}
	p.Making.Carrier.Width = 24
	p.Making.Screws = plan.ScrewHoles{Pilot: 3, PilotDepth: 12}
	p.Catches[0].Azimuth = 90
	pl := plate.New(p)

	fence := fitting(pl, plate.FenceSlot)
	require.Len(t, fence, 2)
	assert.Equal(t, geom.Segment{A: geom.Point{X: -100, Y: 90}, B: geom.Point{X: -100, Y: 130}}, fence[0].Core)
	assert.Equal(t, 3.0, fence[0].Half)

	at := map[plan.Part]float64{}
	for _, f := range fitting(pl, plate.RegistrationPin) {
		at[f.Part] = max(at[f.Part], f.Core.(geom.Segment).A.Y)
	}
	assert.Equal(t, map[plan.Part]float64{
		plan.PartTurntable: 120, plan.PartBase: 120,
		plan.PartCollar: 155 + 8 + 3, // 120 is in its bore: outside its edge of 310 / 2
	}, at)

	screws := fitting(pl, plate.CarrierScrew)
	require.Len(t, screws, 2)
	assert.InDelta(t, 0, screws[0].Core.(geom.Segment).A.Distance(geom.Point{X: 105, Y: 17}), near, "across the radius of a catch on the right")
	assert.Equal(t, plan.PartTurntable, screws[0].Part)

	for _, f := range pl.Features {
		switch {
		case f.Screw && f.Part == plan.PartBase:
			assert.Equal(t, [2]float64{1.5, 12}, [2]float64{f.Half, f.Depth}, "the pilot")
		case f.Screw:
			assert.Equal(t, [2]float64{2.25, 0}, [2]float64{f.Half, f.Depth}, "the clearance hole")
		}
	}
}

func TestSizesOfTheFurtherParts(t *testing.T) {
	p := plan.Default()
	for _, part := range []plan.Part{plan.PartWearRing, plan.PartCarrier, plan.PartPad, plan.PartCollar} {
		assert.Zero(t, plate.ThicknessOf(p, part), part)
		assert.Zero(t, plate.OutlineOf(p, part), part)
		assert.Zero(t, plate.BoreOf(p, part), part)
		assert.Empty(t, plate.MaterialOf(p, part), part)
	}
	p.Catches = append(p.Catches, plan.Placement{Name: "B", Radius: 60})
	p.Making.WearRing.Width, p.Making.Carrier.Width, p.Making.Carrier.PadThickness = 20, 24, 2
	p.Making.Pivot = plan.PivotFit{Turntable: 0.1, Base: -0.05}
	assert.Equal(t, plate.Outline{Diameter: 230}, plate.OutlineOf(p, plan.PartWearRing))
	assert.Equal(t, 100.0, plate.BoreOf(p, plan.PartWearRing), "one ring under both tracks")
	assert.Equal(t, plate.Outline{Width: 50, Height: 24}, plate.OutlineOf(p, plan.PartPad))
	assert.Equal(t, 8.1, plate.BoreOf(p, plan.PartCarrier))
	assert.Equal(t, 8.1, plate.BoreOf(p, plan.PartTurntable))
	assert.Equal(t, 7.95, plate.BoreOf(p, plan.PartBase))
	assert.Equal(t, 18.0+2+12, plate.PocketRoom(p))
	p.Turntable.PivotBore = 0
	assert.Zero(t, plate.BoreOf(p, plan.PartBase), "no bore, no fit")
}
