package room

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// sweepStep is the step of the simulation, degrees.
const sweepStep = 0.001

// simulated turns the table in small steps and notes, for each ball and seat,
// the turns at which the ball comes nearest to the seat's axis with its centre
// over the mouth: the local minima of the distance, the ends of the travel aside.
func simulated(s Sweep) map[[2]int][]float64 {
	out := map[[2]int][]float64{}
	steps := int(math.Round((s.To - s.From).Degrees() / sweepStep))
	for b, ball := range s.Balls {
		for i, seat := range s.Seats {
			at := geom.Polar(seat.Radius, seat.Place)
			dist := func(k int) float64 {
				turn := s.From + geom.Angle(float64(k)*sweepStep)
				return geom.Polar(ball.Radius, ball.Place+turn).Distance(at)
			}
			before, here := dist(0), dist(1)
			for k := 1; k < steps; k++ {
				after := dist(k + 1)
				found := here < s.Mouth/2 && here <= before && here < after
				before, here = here, after
				if found {
					out[[2]int{b, i}] = append(out[[2]int{b, i}], s.From.Degrees()+float64(k)*sweepStep)
				}
			}
		}
	}
	return out
}

// A table turned in steps of a thousandth of a degree clicks where the exact list
// says, and nowhere else but at stops.
func TestSweepAgainstSimulation(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	clicks, atStops := 0, 0
	for range 16 {
		s := Sweep{Mouth: 4.5, Same: 1e-6, From: geom.Angle(-r.IntN(100)), To: geom.Angle(1 + r.IntN(100))}
		s.From, s.To = s.From-0.0005, s.To+0.0003 // no click just at an end
		radii := []float64{60, 61.5, 63, 64.6, 90}
		for range 2 + r.IntN(3) {
			s.Balls = append(s.Balls, Hole{geom.Angle(r.IntN(24) * 15), radii[r.IntN(5)]})
		}
		for range 2 + r.IntN(6) {
			stop, c := geom.Angle(r.IntN(12)*15-60), r.IntN(len(s.Balls))
			s.Stops = append(s.Stops, stop)
			s.Seats = append(s.Seats, Hole{s.Balls[c].Place + stop, s.Balls[c].Radius})
		}
		want := simulated(s)
		got := map[[2]int][]float64{}
		s.Clicks(func(c FalseClick) {
			key := [2]int{c.Ball, c.Seat}
			got[key] = append(got[key], c.Turn.Degrees())
		})
		wanted := func(turn float64) bool {
			for _, stop := range s.Stops {
				if (stop - geom.Angle(turn)).Wrap().Abs() < sweepStep {
					return true
				}
			}
			return false
		}
		for key, turns := range want {
			var false1 []float64
			for _, turn := range turns {
				if wanted(turn) {
					atStops++
				} else {
					false1 = append(false1, turn)
				}
			}
			require.Len(t, got[key], len(false1), "ball %d, seat %d of %+v", key[0], key[1], s)
			for i := range false1 {
				clicks++
				require.InDelta(t, false1[i], got[key][i], sweepStep)
			}
		}
		for key := range got {
			require.Contains(t, want, key)
		}
	}
	assert.Greater(t, clicks, 5)
	assert.Greater(t, atStops, 5)
}

// Within reach of a click the ball is over the mouth, and beyond it is not.
func TestReach(t *testing.T) {
	for _, q := range []float64{0, 1, 2.2} {
		w := reachOf(60, 60+q, 2.25)
		at := geom.Polar(60+q, 0)
		assert.InDelta(t, 2.25, geom.Polar(60, w).Distance(at), tiny)
	}
	assert.InDelta(t, 180, reachOf(0.5, 0.5, 2.25).Degrees(), tiny, "a ring smaller than the mouth is over it all round")
}

// A ring just the mouth's radius off is passed by: the ball then only touches the
// rim. A hair nearer it drops.
func TestSweepPastARingBeside(t *testing.T) {
	const mouth, hair = 2.25, 1e-6
	for _, side := range []float64{-1, 1} {
		clicks := func(off float64) (n int) {
			s := Sweep{
				Balls: []Hole{{0, 60}}, Seats: []Hole{{30, 60 + side*off}}, Stops: []geom.Angle{0},
				From: -60, To: 60, Mouth: 2 * mouth, Same: 1e-6,
			}
			s.Clicks(func(FalseClick) { n++ })
			return n
		}
		assert.Zero(t, clicks(mouth))
		assert.Equal(t, 1, clicks(mouth-hair))
	}
}

func TestSweepOverSeveralTurns(t *testing.T) {
	s := Sweep{
		Balls: []Hole{{0, 60}, {90, 60}}, Seats: []Hole{{0, 60}}, Stops: []geom.Angle{0},
		From: -360, To: 360, Mouth: 4.5, Same: 1e-6,
	}
	var turns []geom.Angle
	s.Clicks(func(c FalseClick) {
		assert.Equal(t, 1, c.Ball)
		assert.Equal(t, geom.Angle(90), c.Off)
		turns = append(turns, c.Turn)
	})
	assert.Equal(t, []geom.Angle{-90, 270}, turns, "and the stop itself, at -360, 0 and 360, is wanted")
	s.Stops = nil
	n := 0
	s.Clicks(func(c FalseClick) {
		assert.Equal(t, -1, c.Stop)
		assert.False(t, c.PullsOff())
		n++
	})
	assert.Equal(t, 5, n, "without stops every click is false, at both ends of the travel too")
}
