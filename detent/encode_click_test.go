package detent_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// clickRounding is how far a number of the report may be off the one reckoned by
// hand, in its own unit: a few roundings.
const clickRounding = 1e-9

// threeFourFive is a plan with balls of 10 mm over seats of 8 mm, whose numbers
// are those of a triangle of 3, 4 and 5: at home the ball sinks 2 mm.
func threeFourFive(edits ...func(*plan.Plan)) plan.Plan {
	p := plan.Default()
	p.Catch.BallDiameter, p.Catch.Protrusion = 10, 4 // a spring of 8 to 20 N
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 8, Depth: 6, DrillPoint: 118, CountersinkAngle: 90}
	p.Catches = []plan.Placement{{Name: "in", Radius: 60}, {Name: "out", Azimuth: 90, Radius: 100}}
	p.Shop.Friction, p.Shop.Load = 0, 10
	p.Shop.SeatError, p.Shop.CatchError, p.Turntable.RadialPlay = 0, 0, 0
	p.Turntable.BearingRadius = 80
	p.Base.Material, p.Turntable.Material = "yellow-birch", "sugar-maple"
	for _, edit := range edits {
		edit(&p)
	}
	return p
}

func clicksOf(t *testing.T, p plan.Plan) []map[string]any {
	t.Helper()
	var out []map[string]any
	for _, c := range items(decode(t, p)["click"]) {
		out = append(out, c.(map[string]any))
	}
	return out
}

func TestReportOfEachCatch(t *testing.T) {
	const (
		riding = 20 - 12*0.2/4
		seated = 20 - 12*2.2/4
		load   = 10 * 9.80665
	)
	// The harder a spring is pushed in the harder it presses, but here the angle
	// falls faster: out of the stop it is hardest at home.
	clicks := clicksOf(t, threeFourFive())
	require.Len(t, clicks, 2)
	for i, arm := range []float64{0.060, 0.100} {
		want := map[string]float64{
			"drop": 2, "contact_angle": math.Atan2(4, 3) * 180 / math.Pi, "play": 0, "play_angle": 0,
			"seated_force": seated, "riding_force": riding,
			"holding_torque": arm * seated * 4 / 3, "centring_torque": arm * seated * 4 / 3,
			"drag_torque":   0.2 * (load - seated - riding) * 0.080,
			"capture_angle": 2 * math.Asin(4/(2000*arm)) * 180 / math.Pi,
			"dead_band":     0,
			"track_dent":    5 - math.Sqrt(25-riding*100/(math.Pi*5600)), // a mean pressure of 56 N/mm²
		}
		got := clicks[i]
		assert.Equal(t, []string{"in", "out"}[i], got["catch"])
		delete(got, "catch")
		require.Len(t, got, len(want))
		for key, x := range want {
			assert.InDelta(t, x, got[key], clickRounding, key)
		}
	}
}

func TestReportOfALooseBall(t *testing.T) {
	// Its housing lets the ball sink 1 mm: r - 1 = 4 over the face, and it meets
	// the rim 3 mm out, when it is 4 - 3 = 1 mm off the middle.
	c := clicksOf(t, threeFourFive(func(p *plan.Plan) { p.FaceGap = 3 }))[1]
	assert.InDelta(t, 1, c["drop"], clickRounding)
	assert.InDelta(t, 1, c["play"], clickRounding)
	assert.InDelta(t, 1/100.0*180/math.Pi, c["play_angle"], clickRounding)
	assert.InDelta(t, math.Atan2(3, 4)*180/math.Pi, c["contact_angle"], clickRounding)
	assert.InDelta(t, 8, c["seated_force"], clickRounding, "the ball is all the way out")
	assert.InDelta(t, 0.100*8*3/4, c["centring_torque"], clickRounding)
}

// TestReportSaysNullForWhatMeansNothing lists the numbers that are there all the
// same, besides the drag.
func TestReportSaysNullForWhatMeansNothing(t *testing.T) {
	home := []string{"drop", "contact_angle", "play", "play_angle", "seated_force"}
	face := []string{"riding_force", "capture_angle", "track_dent"}
	for _, c := range []struct {
		why   string
		edit  func(*plan.Plan)
		there []string
	}{
		{"locked", func(p *plan.Plan) { p.Shop.Friction = 0.75 }, append(home, face...)},
		{"fallen in", func(p *plan.Plan) { p.Seat.Diameter = 10 }, face},
		{"out of reach", func(p *plan.Plan) { p.FaceGap = 4 }, nil},
		{"a track that misses the mouth", func(p *plan.Plan) { p.Shop.SeatError = 5 }, append([]string{"holding_torque", "centring_torque"}, append(home, face...)...)},
		{"a material of which nothing is known", func(p *plan.Plan) { p.Base.Material = "ebony" }, append([]string{
			"holding_torque", "centring_torque", "dead_band", "riding_force", "capture_angle",
		}, home...)},
		{"a ball that would sink into the face beyond its half", func(p *plan.Plan) {
			p.Catch.FlushForce, p.Catch.BallDiameter, p.Seat.Diameter = 1000, 0.3, 0.2
		}, append([]string{"holding_torque", "centring_torque", "dead_band", "riding_force", "capture_angle"}, home...)},
	} {
		t.Run(c.why, func(t *testing.T) {
			got := clicksOf(t, threeFourFive(c.edit))[0]
			var there []string
			for key, x := range got {
				if x != nil {
					there = append(there, key)
				}
			}
			assert.ElementsMatch(t, append([]string{"catch", "drag_torque"}, c.there...), there)
			assert.Len(t, got, 13, "the keys are there all the same")
		})
	}
}

func TestTrackDentIsInThePartWithTheSeats(t *testing.T) {
	riding := 20 - 12*0.2/4
	for _, c := range []struct {
		why      string
		part     plan.Part
		material string
		hardness float64
	}{
		{"in the base", plan.PartTurntable, "yellow-birch", 5600},
		{"in the turntable", plan.PartBase, "sugar-maple", 6400},
		{"the middle of a range", plan.PartTurntable, "Birch plywood", (4000 + 5600) / 2},
	} {
		t.Run(c.why, func(t *testing.T) {
			got := clicksOf(t, threeFourFive(func(p *plan.Plan) {
				p.Arrangement.CatchIn = c.part
				if c.part == plan.PartTurntable {
					p.Base.Material = c.material
				} else {
					p.Turntable.Material = c.material
				}
			}))[0]
			assert.InDelta(t, 5-math.Sqrt(25-riding*100/(math.Pi*c.hardness)), got["track_dent"], clickRounding)
		})
	}
	ringed := clicksOf(t, threeFourFive(func(p *plan.Plan) {
		p.Base.Material = "yellow-birch"
		p.Making.WearRing.Width, p.Making.WearRing.Material = 24, "sugar-maple"
	}))[0]
	assert.InDelta(t, 5-math.Sqrt(25-riding*100/(math.Pi*6400)), ringed["track_dent"], clickRounding, "in the wear ring that the ball runs on")
}
