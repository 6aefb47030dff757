package plate

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
)

// TestBetter: a good pull home counts first, then a push that is comfortable,
// then the share that comes back.
func TestBetter(t *testing.T) {
	p := plan.Default()
	p.Turntable.Diameter = 2000 // so that torque (N·m) at the rim is push (N)
	choice := func(centring, holding, drag float64) SeatChoice {
		return SeatChoice{Hold: Hold{Clicks: true, Centring: centring, Holding: holding, Drag: drag}}
	}
	for _, c := range []struct {
		why  string
		a, b SeatChoice
	}{
		{"three times the drag over less, though it pushes harder", choice(3, 69, 1), choice(2.99, 5, 1)},
		{"of two that pull home too little, the one with more", choice(2, 69, 1), choice(1.9, 5, 1)},
		{"a comfortable push over a harder one, though less comes back", choice(6, 59, 1), choice(50, 59.1, 1)},
		{"of two hard ones, the easier", choice(6, 70, 1), choice(50, 70.1, 1)},
		{"of two good and easy ones, that of which more comes back", choice(11, 19, 1), choice(12, 22, 1)}, // 10/20, 11/23
		{"of two that give all back, that which holds harder", choice(20, 20, 0), choice(10, 10, 0)},
	} {
		t.Run(c.why, func(t *testing.T) {
			assert.True(t, better(p, c.a, c.b))
			assert.False(t, better(p, c.b, c.a))
			assert.False(t, better(p, c.a, c.a))
		})
	}
}
