package chart_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// TestLooseBall reckons what calipers read over a ball of 6 mm by Pythagoras.
func TestLooseBall(t *testing.T) {
	rim := func(mouth float64) float64 { return 3 + math.Sqrt(9-mouth*mouth/4) }
	cone := func(mouth float64) float64 { return 3 + 3*math.Sqrt2 - mouth/2 } // of 90°
	for _, c := range []struct {
		why           string
		set           func(s *plan.Seat)
		rests         bool
		reading, band float64
		says          string
	}{
		{
			"on the rim; a seat of 4.6 mm lets it down by the band", func(*plan.Seat) {}, true, rim(4.5), rim(4.5) - rim(4.6),
			"⌀6 mm in a seat sinks 1.02 mm; calipers from face to its top 4.98 mm ± 0.06 mm: go, else no go",
		},
		{
			"in a cone", func(s *plan.Seat) { s.Form = plan.Countersunk }, true, cone(4.5), 0.05,
			"⌀6 mm in a seat sinks 1.01 mm; calipers from face to its top 4.99 mm ± 0.05 mm: go, else no go",
		},
		{
			"on a flat floor, which says nothing of the width", func(s *plan.Seat) { s.Depth, s.DrillPoint = 0.8, 180 }, true, 5.2, 0,
			"⌀6 mm in a seat sinks 0.8 mm; calipers from face to its top 5.2 mm",
		},
		{
			"so wide that a larger drill would swallow it", func(s *plan.Seat) { s.Diameter = 5.95 }, true, rim(5.95), 0,
			"⌀6 mm in a seat sinks 2.61 mm; calipers from face to its top 3.39 mm",
		},
		{"swallowed", func(s *plan.Seat) { s.Diameter = 6 }, false, 0, 0, "⌀6 mm falls into the seats"},
	} {
		t.Run(c.why, func(t *testing.T) {
			p := plantest.Equal(9)
			c.set(&p.Seat)
			ch := chartOf(t, p)
			l := ch.Sheets[0].Loose
			assert.Equal(t, 6.0, l.Ball)
			assert.Equal(t, c.rests, l.Rests)
			assert.InDelta(t, c.reading, l.Reading, exact)
			assert.InDelta(t, c.band, l.Band, exact)
			if c.rests {
				assert.InDelta(t, 6-c.reading, l.Drop, exact)
			}
			assert.Contains(t, lettered(ch), c.says)

			table := string(csvOf(t, ch))
			for _, row := range []string{"\nSinks below the face (mm),", "\nFace to its top (mm),"} {
				assert.Equal(t, c.rests, strings.Contains(table, row))
			}
		})
	}
}

// TestLooseBallIsGaugedWhereTheSeatsAre: the other part's sheet has no seats.
func TestLooseBallIsGaugedWhereTheSeatsAre(t *testing.T) {
	for _, a := range plantest.Arrangements {
		for _, s := range chartOf(t, mitres(a)).Sheets {
			one := chartOf(t, mitres(a)).Only(s.Part)
			assert.Equal(t, s.HoldsSeats(), strings.Contains(lettered(one), "⌀6 mm in a seat"))
			assert.Equal(t, s.HoldsSeats(), strings.Contains(string(csvOf(t, one)), "Loose ball (mm),6.000"))
		}
	}
}

// lettered returns all that is lettered on the pages of a chart, wrapped lines
// joined again.
func lettered(c chart.Chart) string {
	var all []string
	for _, page := range chart.Pages(c, drawing.A4) {
		all = append(all, textsOf(page)...)
	}
	return strings.Join(all, " ")
}
