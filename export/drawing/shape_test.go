package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
)

// planeSlack (mm, degrees) allows for a few roundings of numbers below 1000.
const planeSlack = 1e-9

func TestFromAzimuth(t *testing.T) {
	for _, c := range []struct {
		azimuth geom.Angle
		want    float64
		why     string
	}{
		{0, 90, "away from the operator is up the sheet"},
		{90, 0, "clockwise from there is to the right"},
		{180, 270, "towards the operator"},
		{-90, 180, "to the left"},
		{90.5, 359.5, "just below the axis: still in one turn"},
		{450, 0, "more than a turn"},
	} {
		assert.Equal(t, c.want, FromAzimuth(c.azimuth), c.why)
	}
}

func TestArcOfRunsTheOtherWayRound(t *testing.T) {
	a := geom.Arc{Radius: 105, From: -60, Sweep: 90}
	got, ok := ArcOf(a).(Arc)
	assert.True(t, ok)
	assert.Equal(t, Arc{Radius: 105, Start: 60, Sweep: 90}, got)
	first, last := got.Ends()
	samePlace(t, a.End(), first, "clockwise's end is anticlockwise's start")
	samePlace(t, a.Start(), last, "")
}

func TestArcOfAWholeTurnIsACircle(t *testing.T) {
	assert.Equal(t, Circle{Radius: 60}, ArcOf(geom.Arc{Radius: 60, From: 12, Sweep: 360}))
	assert.IsType(t, Arc{}, ArcOf(geom.Arc{Radius: 60, Sweep: 359.999}), "just short of it")
}

func samePlace(t *testing.T, want, got geom.Point, why string) {
	t.Helper()
	assert.InDelta(t, want.X, got.X, planeSlack, "x: %s", why)
	assert.InDelta(t, want.Y, got.Y, planeSlack, "y: %s", why)
}
