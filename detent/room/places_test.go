package room

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
)

func TestInTravel(t *testing.T) {
	for _, c := range []struct {
		why      string
		from, to geom.Angle
		stops    []geom.Angle
		want     []geom.Angle
		of       []int
	}{
		{"as typed where they lie within the travel", -60, 60, []geom.Angle{31.6, -31.6, 0}, []geom.Angle{-31.6, 0, 31.6}, []int{2, 0, 1}},
		{"as typed without end stops", -360, 360, []geom.Angle{6, -6}, []geom.Angle{-6, 6}, []int{1, 0}},
		{"brought back a full turn", -60, 60, []geom.Angle{350, 10}, []geom.Angle{-10, 10}, []int{0, 1}},
		{"the same place twice", -360, 360, []geom.Angle{180, -180}, []geom.Angle{180}, []int{0, 0}},
		{"all round", 0, 360, []geom.Angle{0, 90, 180, 270}, []geom.Angle{0, 90, 180, 270}, []int{0, 1, 2, 3}},
		{"out of reach they count from the travel's start", 0, 10, []geom.Angle{-10, 20}, []geom.Angle{20, 350}, []int{1, 0}},
		{"none", 0, 10, nil, nil, nil},
	} {
		got := Problem{From: c.from, To: c.to, Stops: c.stops}.inTravel()
		assert.Equal(t, c.want, got.turns, c.why)
		assert.Equal(t, c.of, got.of, c.why)
	}
}
