package ui

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/check"
	"stopwright/detent/plan"
)

// What a maker has to be told before drilling is told in the list of checks, with
// the number that belongs to it, and what the window offers mends it.
func TestPlansThatWillNotClickAreTold(t *testing.T) {
	// The demonstration's ball: 6 mm, standing out 2, over seats of 4.5. It sinks
	// r - √(r² - a²) to rest on the rim.
	sinks := 3 - math.Sqrt(3*3-2.25*2.25)
	seat := func(p *plan.Plan, diameter, depth, point float64) {
		p.Seat.Form, p.Seat.Diameter, p.Seat.Depth, p.Seat.DrillPoint, p.Seat.ReliefDiameter = plan.Drilled, diameter, depth, point, 0
	}
	for _, c := range []struct {
		why          string
		change       func(*plan.Plan)
		id           string
		value, limit float64
		shown        []string // in the sentence
	}{
		{
			"a mouth of 0.99 of the ball, and a catch that lets the ball into it",
			func(p *plan.Plan) {
				seat(p, 0.99*6, 6, 118)
				p.Catch.Protrusion, p.FaceGap, p.Shop.Friction = 3, 0.2, 0.2
			},
			"ball-locks", (math.Asin(0.99) + math.Atan(0.2)) * 180 / math.Pi, 90,
			[]string{"93.2°", "90°"},
		},
		{
			"0.2 mm short of the rim", func(p *plan.Plan) { seat(p, 4.5, 6, 118); p.FaceGap = 2 - sinks + 0.2 },
			"ball-short", sinks - 0.2, sinks,
			[]string{"0.82 mm", "1.02 mm"},
		},
		{
			"a flat-bottomed seat 0.8 mm deep", func(p *plan.Plan) { seat(p, 4.5, 0.8, 180) },
			"seat-bottoms", 0.8, sinks,
			[]string{"0.8 mm", "1.02 mm"},
		},
		{
			"faces warped 1.8 mm apart", func(p *plan.Plan) { seat(p, 4.5, 6, 118); p.FaceGap = 1.8 },
			"ball-short", 0.2, sinks,
			[]string{"0.2 mm", "1.02 mm"},
		},
	} {
		t.Run(c.why, func(t *testing.T) {
			w := clicking(t, c.change)
			var told []*findingRow
			for _, r := range find[*findingRow](w.findings.list) {
				if r.Visible() && strings.Contains(r.text.Text, c.shown[0]) {
					told = append(told, r)
				}
			}
			require.Len(t, told, 1)
			for _, number := range c.shown {
				assert.Contains(t, told[0].text.Text, number)
			}
			var found check.Finding
			for _, f := range w.store.Report().Findings {
				if f.ID == c.id {
					found = f
				}
			}
			const exact = 1e-9
			assert.InDelta(t, c.value, found.Value, exact)
			assert.InDelta(t, c.limit, found.Limit, exact)
			assert.NotEqual(t, w.words.Text("checks.none"), w.findings.title.Text)

			// What the window offers, where it can mend it, leaves nothing wrong.
			if told[0].fix.Visible() {
				tap(told[0].fix)
				assert.NotContains(t, w.findingIDs(), c.id)
			}
		})
	}
}
