package ui

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/check"
)

func TestAFixIsOfThePlanAsItIs(t *testing.T) {
	p := withStops(0, 36)
	p.Seat.Diameter = p.Catch.BallDiameter + 1
	first := detent.Solve(p)
	at := -1
	for i, f := range first.Findings {
		if check.FixOf(first.Plate, f) != nil {
			at = i
		}
	}
	require.GreaterOrEqual(t, at, 0, "a seat that swallows the ball is mended by another drill")

	var f fixes
	fix := f.fix(first, at)
	assert.Same(t, fix, f.fix(first, at), "worked out once")

	p.Catch.BallDiameter, p.Catch.BodyDiameter = 12, 14
	p.Seat.Diameter = 13
	second := detent.Solve(p)
	for i, finding := range second.Findings {
		want, got := check.FixOf(second.Plate, finding), f.fix(second, i)
		require.Equal(t, want == nil, got == nil, finding.ID)
		if want != nil {
			assert.Equal(t, want.Apply(p), got.Apply(p), "%s: of the new plan, not of the old", finding.ID)
		}
	}
}
