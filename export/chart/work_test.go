package chart_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// The order of work is that of the operations: the relief is drilled before the
// seat, and the outline is cut after all holes.
func TestOrderOfWork(t *testing.T) {
	p := plantest.Equal(4)
	p.Seat.Form, p.Seat.ReliefDiameter, p.Seat.Depth = plan.Drilled, 2.5, 5
	steps := strings.Join(textsOf(chart.Pages(chartOf(t, p), drawing.A4)[0]), " ")
	before := -1
	for _, step := range []string{"Mark each", "Bore the pivot", "right through at each mark", "then set the depth stop", "Clamp the part and drill", "Gauge each", "outline last"} {
		at := strings.Index(steps, step)
		require.GreaterOrEqual(t, at, 0, step)
		assert.Greater(t, at, before, step)
		before = at
	}
}
