package drawing_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// touching is how near (mm) the ball must come to what it rests on, and how far
// it may reach into it: rounding.
const touching = 1e-6

// However the table is turned the drawn ball touches what is drawn below it,
// and nothing drawn reaches into it.
func TestTheBallOfASectionTouchesItsSeat(t *testing.T) {
	for why, change := range map[string]func(*plan.Seat){
		"a drilled seat":         func(*plan.Seat) {},
		"right through":          func(s *plan.Seat) { s.Depth = 0 },
		"a shallow flat floor":   func(s *plan.Seat) { s.Depth, s.DrillPoint = 0.6, 180 },
		"a chamfer":              func(s *plan.Seat) { s.Chamfer = 0.4 },
		"a relief hole":          func(s *plan.Seat) { s.ReliefDiameter = 2 },
		"a countersink":          func(s *plan.Seat) { s.Form, s.Depth = plan.Countersunk, 0 },
		"a countersink's relief": func(s *plan.Seat) { s.Form, s.Depth, s.ReliefDiameter = plan.Countersunk, 0, 1.5 },
	} {
		p := plan.Default()
		change(&p.Seat)
		pl := plate.New(p)
		for _, offset := range []float64{0, 0.4, -1.1, 2, -3.5} {
			d := drawing.Section(pl, 0, offset)
			ball, ok := sectionBall(d)
			require.True(t, ok, why)
			near := math.Inf(1)
			for _, e := range d.Entities {
				line, ok := e.Shape.(drawing.Line)
				if !ok || e.Layer != drawing.Outline || line.A.Y > 0 || line.B.Y > 0 {
					continue // the catch's own part
				}
				near = min(near, geom.Segment{A: line.A, B: line.B}.DistanceToPoint(ball.Centre))
			}
			assert.GreaterOrEqual(t, near, ball.Radius-touching, "%s, %v mm off", why, offset)
			if pl.Clicks[0].At(offset).Rest.String() != "housing" {
				assert.LessOrEqual(t, near, ball.Radius+touching, "%s, %v mm off", why, offset)
			}
		}
	}
}

func sectionBall(d drawing.Drawing) (drawing.Circle, bool) {
	for _, e := range d.Entities {
		if c, ok := e.Shape.(drawing.Circle); ok && e.Item.Kind == drawing.BallItem {
			return c, true
		}
	}
	return drawing.Circle{}, false
}
