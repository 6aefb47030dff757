package chart_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/chart"
	"stopwright/export/drawing"
)

// A loose ball on a sharp rim stands √(r² - a²) + r over the face.
func TestLooseBall(t *testing.T) {
	p := plan.Default() // a 6 mm ball over a 4.5 mm drill
	over := func(mouth float64) float64 { return math.Sqrt(9-mouth*mouth/4) + 3 }
	l := chart.New(detent.Solve(p), drawing.Info{Words: words.English()}).Sheets[0].Loose
	assert.True(t, l.Rests)
	assert.InDelta(t, over(4.5), l.Reading, 1e-12)
	assert.InDelta(t, 6-over(4.5), l.Drop, 1e-12)
	assert.InDelta(t, over(4.5)-over(4.5+plate.Oversize), l.Band, 1e-12)

	p.Seat.Diameter, p.Seat.Depth = 6, 0
	l = chart.New(detent.Solve(p), drawing.Info{Words: words.English()}).Sheets[0].Loose
	assert.False(t, l.Rests, "a hole as wide as the ball")
	assert.Zero(t, l.Reading)
}
