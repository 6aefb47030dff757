package export_test

import (
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export"
)

// Plans at the ends of what is allowed are still plans: each must come out as
// every kind of file.
func TestPlansAtTheEndsOfTheirRangesAreExported(t *testing.T) {
	for name, change := range map[string]func(p *plan.Plan){
		"no stop":                  func(p *plan.Plan) { p.Stops = nil },
		"no travel":                func(p *plan.Plan) { p.Travel = plan.Span{} },
		"a full turn but rounding": func(p *plan.Plan) { p.Catches[0].Azimuth, p.Travel = 152.3, plan.Span{To: 360} },
		"least body bore allowed":  func(p *plan.Plan) { p.Catch.BodyDiameter, p.Catch.BodyAllowance = 5.2, -5 },
		"parts of 10 m":            func(p *plan.Plan) { p.Base.Width, p.Base.Depth, p.Turntable.Diameter = 10000, 10000, 10000 },
		"parts of 0.1 mm":          func(p *plan.Plan) { p.Base.Width, p.Base.Depth, p.Turntable.Diameter = 0.1, 0.1, 0.1 },
		"every fitting as large as may be": func(p *plan.Plan) {
			most := plan.Slider{Diameter: 100, Radius: 10000, Azimuth: 360, Play: 10, Beyond: 45}
			p.Making = plan.Making{
				ClearanceFrom: plan.FromBoth, KnockOut: 100, Pivot: plan.PivotFit{Turntable: 50, Base: 50},
				Screws: plan.ScrewHoles{Pilot: 100, PilotDepth: 100, Head: 100, HeadDepth: 100},
				Dust:   plan.DustSlots{Width: 100, Side: plan.Both, Bridge: 1000}, EndStops: most, Clamp: most,
				Fence:        plan.FenceSlots{Width: 100, Length: 10000, Spacing: 10000, Y: 10000},
				Registration: plan.Registration{Diameter: 100, Distance: 10000}, WearRing: plan.WearRing{Width: 10000, Thickness: 100},
				Carrier: plan.Carrier{Width: 10000, Length: 10000, Thickness: 100, PadThickness: 100, Screw: 100, Pilot: 100, Spacing: 10000},
			}
		},
		"every fitting as small as may be": func(p *plan.Plan) {
			least := plan.Slider{Diameter: 0.1, Radius: 0.1, Play: 10}
			p.Making = plan.Making{
				ClearanceFrom: plan.FromTurntable, KnockOut: 0.1, Screws: plan.ScrewHoles{Pilot: 0.1, Head: 0.1, HeadDepth: 0.1},
				Dust: plan.DustSlots{Width: 0.1, Side: plan.Both, Bridge: 1}, EndStops: least, Clamp: least,
				Fence:        plan.FenceSlots{Width: 0.1, Length: 0.1, Spacing: 0.1},
				Registration: plan.Registration{Diameter: 0.1, Distance: 0.1}, WearRing: plan.WearRing{Width: 0.1, Thickness: 0.1},
				Carrier: plan.Carrier{Width: 0.1, Length: 0.1, Thickness: 0.1, PadThickness: 0.1, Screw: 0.1, Pilot: 0.1, Spacing: 0.1},
			}
			p.Travel = plan.Span{}
		},
	} {
		t.Run(name, func(t *testing.T) {
			p := plan.Default()
			p.Stops = []plan.Stop{{Angle: 0}}
			change(&p)
			require.NoError(t, plan.Validate(p))
			r := detent.Solve(p)
			require.NoError(t, r.Encode(io.Discard, words.English()))
			q := in(t.TempDir())
			for _, f := range export.Formats {
				if f.Refuses(r, q) != nil { // a router's cutter need not fit every hole that can be drawn
					*f.Path(&q) = ""
				}
			}
			_, err := export.Export(r, q)
			require.NoError(t, err)
		})
	}
}
