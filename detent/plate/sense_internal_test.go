package plate

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

func TestClockwiseIsTheSameTurnSeenFromAbove(t *testing.T) {
	p := plan.Default()
	for _, turn := range []geom.Angle{0, 36, -22.5} {
		p.Arrangement.PositiveTurn = plan.Clockwise
		assert.Equal(t, turn, Clockwise(p, turn))
		p.Arrangement.PositiveTurn = plan.Counterclockwise
		assert.Equal(t, -turn, Clockwise(p, turn))
	}
}

func TestASliderWithoutARadiusStandsHalfwayToTheInnermostRing(t *testing.T) {
	p := plan.Default()
	p.Catches = []plan.Placement{{Name: "A", Radius: 105}, {Name: "B", Radius: 80}}
	assert.Equal(t, 40.0, sliderRadius(p, plan.Slider{}))
	assert.Equal(t, 55.0, sliderRadius(p, plan.Slider{Radius: 55}), "or where it is told to")
}
