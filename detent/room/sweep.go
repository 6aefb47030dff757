package room

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
)

// Hole is one seat, or one ball with the table at zero: its place and ring.
type Hole struct {
	Place  geom.Angle
	Radius float64 // mm
}

// Sweep is a table to be turned through its whole travel, to see where its balls
// drop.
type Sweep struct {
	Balls    []Hole
	Seats    []Hole
	Stops    []geom.Angle // turns at which the table is to rest
	From, To geom.Angle   // the travel
	Mouth    float64      // diameter of a seat, mm
	Same     float64      // mm along a ring within which two places are one
}

// FalseClick is a turn at which a ball passes right over a seat though no stop
// is wanted there.
type FalseClick struct {
	Ball, Seat int
	Turn       geom.Angle
	Stop       int        // the nearest stop; -1: there is none
	Off        geom.Angle // how far that stop is, at least 0; a full turn when there is none
	Reach      geom.Angle // within this angle to either side the ball sinks into the seat
}

// PullsOff reports whether the click is so near a stop that the ball is in the
// seat's mouth when the table rests there, and draws it away.
func (f FalseClick) PullsOff() bool { return f.Off < f.Reach }

// Clicks calls yield for every false click, by ball, then by ring, place and
// turn. A ball passes a seat when their rings differ by less than the mouth's
// radius, at the turn from the ball's place to the seat's, and a full turn on or
// back where the travel goes so far. At a stop a ball may drop into any seat:
// there the table is to rest.
//
// It takes time in proportion to the pairs of balls and seats on rings that near,
// times the logarithm of the number of stops.
func (s Sweep) Clicks(yield func(FalseClick)) {
	seats := make([]int, len(s.Seats))
	for i := range seats {
		seats[i] = i
	}
	slices.SortFunc(seats, func(a, b int) int {
		p, q := s.Seats[a], s.Seats[b]
		return cmp.Or(cmp.Compare(p.Radius, q.Radius), cmp.Compare(p.Place, q.Place), a-b)
	})
	stops := newStopIndex(s.Stops)
	mouth := s.Mouth / 2
	for b, ball := range s.Balls {
		start, _ := slices.BinarySearchFunc(seats, ball.Radius-mouth, func(i int, r float64) int { return cmp.Compare(s.Seats[i].Radius, r) })
		same := GapFor(ball.Radius, s.Same)
		ring, reach := math.Inf(-1), geom.Angle(0)
		for _, i := range seats[start:] {
			seat := s.Seats[i]
			if seat.Radius-ball.Radius >= mouth {
				break
			}
			if math.Abs(seat.Radius-ball.Radius) >= mouth-Slack {
				continue
			}
			if seat.Radius != ring {
				ring, reach = seat.Radius, reachOf(ball.Radius, seat.Radius, mouth)
			}
			turn := (seat.Place - ball.Place).Turn()
			stop, off := stops.nearest(turn)
			if stop >= 0 && off <= same {
				continue
			}
			for t := turn - 2*geom.FullTurn; t <= s.To+sameTurn; t += geom.FullTurn {
				if t >= s.From-sameTurn {
					yield(FalseClick{Ball: b, Seat: i, Turn: t + 0, Stop: stop, Off: off, Reach: reach})
				}
			}
		}
	}
}

// reachOf returns how far to either side of a seat's place a ball on a ring of
// its own is over the mouth, by the cosine rule in half-angle form,
// 4·R·Q·sin²(w/2) = a² - (R - Q)²; the rings differ by less than a.
func reachOf(ring, seat, a float64) geom.Angle {
	q := math.Abs(ring - seat)
	sin2 := (a - q) * (a + q) / (4 * ring * seat)
	return geom.FromRadians(2 * math.Asin(math.Sqrt(min(1, sin2))))
}

// stopIndex finds the stop nearest a turn.
type stopIndex struct {
	at   []geom.Angle // in order, in [0, 360)
	stop []int
	last int // where the last one looked for would stand: turns come mostly in order
}

func newStopIndex(stops []geom.Angle) *stopIndex {
	ix := &stopIndex{stop: make([]int, len(stops)), at: make([]geom.Angle, len(stops))}
	for i := range stops {
		ix.stop[i] = i
	}
	slices.SortFunc(ix.stop, func(a, b int) int { return cmp.Or(cmp.Compare(stops[a].Turn(), stops[b].Turn()), a-b) })
	for k, i := range ix.stop {
		ix.at[k] = stops[i].Turn()
	}
	return ix
}

// nearest returns the stop nearest a turn in [0, 360), whole turns aside, and how
// far it is.
func (ix *stopIndex) nearest(turn geom.Angle) (stop int, off geom.Angle) {
	n := len(ix.at)
	if n == 0 {
		return -1, geom.FullTurn
	}
	k := ix.last
	if k > 0 && ix.at[k-1] >= turn {
		k = 0
	}
	if k+1 < n && ix.at[k+1] < turn { // not the next one either
		k, _ = slices.BinarySearch(ix.at, turn)
	} else if k < n && ix.at[k] < turn {
		k++
	}
	ix.last = k
	after, before := k%n, (k+n-1)%n
	up, down := (ix.at[after] - turn).Wrap().Abs(), (turn - ix.at[before]).Wrap().Abs()
	if up < down {
		return ix.stop[after], up
	}
	return ix.stop[before], down
}
