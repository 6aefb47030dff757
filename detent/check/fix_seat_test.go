package check

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// mend returns what is offered for the first finding of an id, in words, and the
// plan it makes; empty when nothing is.
func mend(t *testing.T, p plan.Plan, id string) (says string, after plan.Plan) {
	t.Helper()
	pl := plate.New(p)
	found := only(Run(pl), id)
	require.NotEmpty(t, found, "%s fires", id)
	fix := FixOf(pl, found[0])
	if fix == nil {
		return "", p
	}
	after = fix.Apply(p)
	require.Empty(t, only(Run(plate.New(after)), id), "%s is mended", id)
	return words.English().Text(fix.Key, fix.Args), after
}

// level is a spring that presses alike at every height, under a table that does
// not rub.
func level(p *plan.Plan) {
	pressing(10)(p)
	p.Shop.TableFriction = 0
}

func TestSeatFixesSayWhatTheyChange(t *testing.T) {
	for _, c := range []struct {
		why  string
		plan plan.Plan
		id   string
		says string
	}{
		// With a level spring and no drag the share that comes back is
		// tan(α-φ)/tan(α+φ): largest at 45°, a mouth of 6/√2 = 4.243 mm. Of
		// 44.4° and 45.8° the first is nearer, and number 19, of 4.216 mm, nearer
		// still.
		{"a mouth of 0.99 of the ball", at0(seat(0.99*6, 6, 118), standsOut(3), level), "ball-locks", "Drill 4.2 mm instead of 5.94 mm"},
		{"the shop has number drills", at0(seat(0.228*25.4, 6, 118), standsOut(3), level, rubbing(0.3)), "ball-locks", "Drill 4.22 mm instead of 5.79 mm"},
		// Where the table drags too much for that, the steepest seat that lets go
		// with twice the friction: asin(a/3) + atan(0.4) < 90°, a < 2.785.
		{"a heavy table", at0(seat(0.99*6, 6, 118), standsOut(3), weighing(300)), "ball-locks", "Drill 5.5 mm instead of 5.94 mm"},
		// From 3·√2 = 4.243 mm on the ball rests at 45°, and cut a tenth larger it
		// must not sink over 1 mm: (mouth + 0.1)/2 - 3·(√2 - 1).
		{"a countersink is not drilled", at0(countersink(5.5, 0), gap(1), level), "ball-short", "Countersink to 4.3 mm instead of 5.5 mm"},
		{"only as deep as it must be", at0(seat(4.5, 0.8, 180)), "seat-bottoms", "1.5 mm deep"},
		{"a whole step is not rounded up", at0(func(p *plan.Plan) { p.Catch.BallDiameter, p.Catch.Protrusion = 10, 4 }, seat(8, 1.5, 180)), "seat-bottoms", "2 mm deep"},
		{"half a millimetre stays under the point", at0(seat(4.5, 17, 118)), "drill-breaks-through", "16 mm deep"}, // 18 - 1.35 - 0.5
		{"a flat floor", at0(seat(4.5, 18.3, 180)), "drill-breaks-through", "17.5 mm deep"},
		{"half the seat, rounded up to half a millimetre", at0(sharp), "dust-trapped", "Relief hole 2.5 mm"},
		{"half the seat exactly", at0(seat(4, 6, 118)), "dust-trapped", "Relief hole 2 mm"},

		{"no drill seats a ball that reaches a twentieth of a millimetre", at0(sharp, gap(1.95)), "ball-short", ""},
		{"a part too thin for a seat as deep as the ball needs", at0(seat(4.5, 0.8, 180), func(p *plan.Plan) { p.Base.Thickness = 1 }), "seat-bottoms", ""},
		{"a countersink to its tip cannot be less deep", at0(countersink(37, 0)), "drill-breaks-through", ""},
		{"a relief hole in a part that opens downwards lets dust in", otherWayUp(at0(sharp)), "dust-trapped", ""},
		{"a relief hole on which the ball would rest", at0(seat(4.5, 0.7, 180)), "dust-trapped", ""},
		{"a seat too small for a smaller hole", at0(seat(0.4, 6, 118)), "dust-trapped", ""},
		{"what the gap takes no seat gives back", at0(sharp, gap(3)), "ball-cannot-reach", ""},
	} {
		t.Run(c.why, func(t *testing.T) {
			says, _ := mend(t, c.plan, c.id)
			assert.Equal(t, c.says, says)
		})
	}
}

// A seat that mends one thing must not break another.
func TestSeatFixesKeepTheRules(t *testing.T) {
	// Two seats of 4 mm with a web of 2 mm and no more, of a ball that locks in
	// them: narrower ones only.
	tight := build([]float64{0, turnFor(4 + web)}, seat(4, 6, 118), func(p *plan.Plan) {
		p.Catch.BallDiameter = 4.02
		p.Catch.Protrusion = 3
	})
	_, after := mend(t, tight, "ball-locks")
	assert.Less(t, after.Seat.Diameter, 4.0)
	assert.Empty(t, only(Run(plate.New(after)), "web-thin"))

	// A larger ball would like a larger seat, and has no room for it.
	crowded := build([]float64{0, turnFor(4.5 + web)}, sharp, func(p *plan.Plan) {
		p.Catch.BallDiameter = 20
		p.Shop.Load = 3
	}, pressing(15))
	require.NotEmpty(t, only(Run(plate.New(crowded)), "will-not-centre"))
	says, _ := mend(t, crowded, "will-not-centre")
	assert.Empty(t, says)
	alone := crowded
	alone.Stops = alone.Stops[:1]
	_, after = mend(t, alone, "will-not-centre")
	assert.Greater(t, after.Seat.Diameter, 4.5)
}

// Whatever is offered for a hold is judged by the catches that drop there.
func TestSeatFixesForAPairAreReckonedWithBoth(t *testing.T) {
	p := build(nil, stiff(40), across, both)
	says, after := mend(t, p, "stop-stiff")
	require.NotEmpty(t, says)
	push := plate.New(after).Holds[0].Push(after)
	assert.LessOrEqual(t, push, 60.0)
	assert.Greater(t, push, 50.0, "held as hard as a hand may leave it: nothing rubs here")
}
