package chart_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// texts lists the lettering of a chart in the order it is laid out.
func texts(pages []drawing.Page) []string {
	var out []string
	for _, p := range pages {
		for _, e := range p.Entities {
			if s, ok := e.Shape.(drawing.Text); ok {
				out = append(out, s.Text)
			}
		}
	}
	return out
}

// A trammel is set once for each ring: its seats stand together under its radius
// and the catches that run on it.
func TestOneTableARing(t *testing.T) {
	c := chartOf(t, mitres(plantest.Arrangements[0]))
	c.Sheets = c.Sheets[:1]
	require.True(t, c.Sheets[0].HoldsSeats())
	all := strings.Join(texts(chart.Pages(c, drawing.Papers[0])), "\n")
	// The tags also stand in the picture: the tables come after it.
	outer, inner := strings.Index(all, "Ring of radius 105 mm: catch A"), strings.Index(all, "Ring of radius 90 mm: catch B")
	require.Positive(t, outer)
	require.Greater(t, inner, outer)
	for _, tag := range []string{"A1", "A2", "A6"} {
		assert.Contains(t, all[outer:inner], "\n"+tag+"\n")
	}
	assert.Contains(t, all[inner:], "\nB1\n")
	assert.NotContains(t, all[outer:inner], "\nB1\n")

	one := chartOf(t, plantest.Equal(9))
	assert.NotContains(t, strings.Join(texts(chart.Pages(one, drawing.Papers[0])), "\n"), "Ring of radius", "one ring needs no title")
}
