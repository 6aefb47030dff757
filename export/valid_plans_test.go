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
