package plan_test

import (
	"bytes"
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/plan"
)

// randomPlan draws a valid plan: every number of it is drawn from the ranges
// table, so both ends occur.
func randomPlan(t *rapid.T) plan.Plan {
	number := func(lo, hi float64) float64 {
		// A -0 would be read back as 0, which is equal but not the same to
		// require.Equal.
		return rapid.Float64Range(lo, hi).Draw(t, "number") + 0
	}
	text := func() string { return rapid.StringN(0, 30, -1).Draw(t, "text") }
	sample := func(words ...string) string { return rapid.SampledFrom(words).Draw(t, "word") }
	whether := func() bool { return rapid.Bool().Draw(t, "whether") }
	some := func(most int) int { return rapid.IntRange(0, most).Draw(t, "number of items") }
	size := func() float64 { return number(0.1, 10000) }
	small := func() float64 { return number(0.1, 100) }
	turn := func() float64 { return number(-360, 360) }
	place := func() float64 { return number(-10000, 10000) }
	orZero := func(x float64) float64 {
		if whether() {
			return 0
		}
		return x
	}
	ordered := func(lo, hi float64) (from, to float64) {
		from = number(lo, hi)
		return from, number(from, hi)
	}

	p := plan.Default()
	p.Title, p.Notes = text(), text()
	p.Arrangement.CatchIn = plan.Part(sample("turntable", "base"))
	p.Arrangement.PositiveTurn = plan.Sense(sample("clockwise", "counterclockwise"))
	p.Turntable = plan.Turntable{
		Diameter: size(), Thickness: size(), Material: text(), PivotBore: orZero(size()),
		GuidedBy: plan.Guide(sample("pivot", "collar")), RadialPlay: number(0, 50), BearingRadius: orZero(size()),
	}
	if p.Base.Thickness, p.Base.Material = size(), text(); whether() {
		p.Base.Width, p.Base.Depth = size(), size()
	} else {
		p.Base.Shape, p.Base.Diameter = plan.Disc, size()
	}
	if whether() {
		p.Collar = &plan.Collar{
			Clearance: number(max(-5, 0.101-p.Turntable.Diameter), 50), OutsideDiameter: size(), Thickness: size(), Material: text(),
			Screws: plan.Screws{Count: some(360), Circle: size(), Diameter: small(), Start: turn()},
		}
	}
	p.FaceGap = number(-5, 50)
	p.Catch = plan.Catch{
		BallDiameter: small(), Protrusion: small(), FreeForce: number(0, 1000), FlushForce: number(0, 1000),
		BodyDiameter: small(), BodyLength: small(), FlangeDiameter: orZero(small()), FlangeThickness: small(),
		RecessAllowance: number(-5, 50),
	}
	p.Catch.BodyAllowance = number(max(-5, 0.101-p.Catch.BodyDiameter), 50)
	p.Catches = nil
	for i := range 1 + some(5) {
		p.Catches = append(p.Catches, plan.Placement{Name: fmt.Sprint(i, text()), Azimuth: turn(), Radius: size()})
	}
	p.Seat = plan.Seat{
		Form: plan.Form(sample("drilled", "countersunk")), Diameter: small(), Depth: number(0, 100),
		DrillPoint: number(60, 180), CountersinkAngle: number(30, 150), ReliefDiameter: orZero(small()), Chamfer: number(0, 50),
	}
	p.Travel.From, p.Travel.To = ordered(-360, 360)
	for range some(6) {
		s := plan.Stop{Angle: turn(), BothSides: whether(), Label: text()}
		for _, c := range p.Catches[:some(len(p.Catches))] {
			s.Catches = append(s.Catches, c.Name)
		}
		p.Stops = append(p.Stops, s)
	}
	for range some(6) {
		f := plan.Feature{Part: plan.Part(sample("turntable", "base", "collar")), Label: text()}
		switch f.Kind = plan.Kind(sample("hole", "slot", "arc_slot")); f.Kind {
		case plan.Hole:
			f.X, f.Y, f.Diameter = place(), place(), size()
		case plan.Slot:
			f.X, f.Y, f.X2, f.Y2, f.Width = place(), place(), place(), place(), size()
		case plan.ArcSlot:
			f.Radius, f.Width = size(), size()
			f.From, f.To = ordered(-360, 360)
		}
		p.Features = append(p.Features, f)
	}
	p.Making = plan.Making{
		ClearanceFrom: plan.ClearanceFrom(sample("collar", "both")), KnockOut: orZero(small()),
		Pivot:  plan.PivotFit{Turntable: number(0, 50), Base: number(0, 50)},
		Screws: plan.ScrewHoles{Size: text(), Pilot: orZero(small()), PilotDepth: number(0, 100), Head: orZero(small()), HeadDepth: small()},
		Dust:   plan.DustSlots{Width: orZero(small()), Side: plan.Side(sample("inside", "outside", "both")), Bridge: number(1, 1000)},
		Fence:  plan.FenceSlots{Width: orZero(small()), Length: size(), Spacing: size(), Y: place()},
		EndStops: plan.Slider{
			Diameter: orZero(small()), Radius: orZero(size()), Azimuth: turn(), Play: number(0, 10), Beyond: number(0, 45),
		},
		Registration: plan.Registration{Diameter: orZero(small()), Distance: orZero(size())},
		WearRing:     plan.WearRing{Width: orZero(size()), Thickness: small(), Material: text()},
		Carrier: plan.Carrier{
			Width: orZero(size()), Length: size(), Thickness: small(), PadThickness: orZero(small()),
			Screw: small(), Pilot: small(), Spacing: size(), Material: text(),
		},
	}
	p.Making.Clamp = p.Making.EndStops
	if p.Collar != nil && p.Collar.Clearance/2 > p.Turntable.Diameter-0.101 {
		p.Making.ClearanceFrom = plan.FromCollar
	}
	p.Rules = plan.Rules{Web: number(0, 100), Edge: number(0, 100)}
	p.Shop = plan.Shop{
		Method:    sample("hand-drill", "pillar-drill", "pillar-drill-guided", "router", "router-tight", "measured"),
		SeatError: number(0, 50), CatchError: number(0, 50), Friction: number(0, 1.5), TableFriction: number(0, 1.5),
		Load: number(0, 1000), StockWidth: size(), Target: number(0, 360), Humidity: plan.Humidity{MadeAt: number(0, 100)},
	}
	p.Shop.Humidity.Low, p.Shop.Humidity.High = ordered(0, 100)
	if whether() {
		reference := turn()
		p.Shop.Reference = &reference
	}
	if whether() {
		p.Router = &plan.Router{
			Units: sample("mm", "inch"), SafeHeight: small(), Approach: small(), DepthPerPass: small(), Peck: orZero(small()),
			Feed: number(1, 30000), PlungeFeed: number(1, 30000), Rapid: number(1, 30000), Spindle: some(60000),
			Cutter: small(), CutterLength: small(), DrillTo: orZero(small()), Breakthrough: number(0, 100),
			SpoilBoard: number(0, 100), Canned: whether(), ToolChange: sample("m6", "pause"),
		}
	}
	if whether() {
		p.Tool = &plan.Tool{
			Offset: place(), Fence: place(), Turning: plan.Turning(sample("tool", "fence")), Kerf: number(0, 100),
			FenceLength: size(), FenceThickness: size(), FenceScrew: number(0.1, 100), FenceInset: size(),
		}
		if whether() {
			underside := number(0, 10000)
			p.Tool.FenceUnderside, p.Tool.Reach, p.Tool.FenceOpening = &underside, size(), size()
		}
		for range some(4) {
			p.Tool.Marks = append(p.Tool.Marks, plan.Mark{Angle: turn(), X: place()})
		}
	}
	for range some(4) {
		date := fmt.Sprintf("%04d-%02d-%02d", some(9999), 1+some(11), 1+some(27))
		p.Readings = append(p.Readings, plan.Reading{
			Angle: turn(), Measured: turn(), Approach: sample("", "clockwise", "counterclockwise"),
			Method: text(), Date: sample("", date),
		})
		p.AsDrilled = append(p.AsDrilled, plan.AsDrilled{Angle: turn(), Catch: text(), X: place(), Y: place()})
	}
	return p
}

func TestSaveThenLoadIsTheSamePlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		require.NoError(t, plan.Validate(p))
		var first, second bytes.Buffer
		require.NoError(t, plan.Encode(&first, p))
		back, err := plan.Decode(bytes.NewReader(first.Bytes()))
		require.NoError(t, err)
		require.Equal(t, p, back)
		require.True(t, plan.Equal(p, back))
		require.NoError(t, plan.Encode(&second, back))
		require.Equal(t, first.String(), second.String())
		require.Equal(t, p, p.Clone())
	})
}

// TestOneBadNumberIsNamed spoils one number of a random plan.
func TestOneBadNumberIsNamed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		var numbers []reflect.Value
		leaves(reflect.ValueOf(&p), "", func(_ string, leaf reflect.Value) {
			if leaf.Kind() == reflect.Float64 {
				numbers = append(numbers, leaf)
			}
		})
		rapid.SampledFrom(numbers).Draw(t, "which").SetFloat(math.NaN())
		var ps plan.Problems
		require.ErrorAs(t, plan.Validate(p), &ps)
		require.Len(t, ps, 1)
		require.EqualValues(t, "NaN", ps[0].Value)
	})
}

func FuzzDecode(f *testing.F) {
	for _, text := range []string{
		minimal, fileText(f, exampleFile), fileText(f, provedFile), fileText(f, canonicalFile),
		"", "{}", "[]", "\uFEFF{}", `{"format": "stopwright", "version": 3}`, `{"stops": [{"angle": 1e999}, {"angle": -0}]}`,
		`{"a": "\ud83d\ude00\n", "a": null, "b": [true, false, [[]], {}]}`, "\x7fELF", strings.Repeat(`{"a":`, 30),
	} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := plan.Decode(bytes.NewReader(data))
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		require.NoError(t, plan.Validate(p))
		text := encoded(t, p)
		back := decoded(t, text)
		require.Equal(t, p, back)
		require.Equal(t, text, encoded(t, back))
	})
}
