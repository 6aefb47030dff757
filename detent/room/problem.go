package room

import (
	"math"
	"slices"

	"stopwright/detent/geom"
)

var inf = math.Inf(1)

// Problem is what is to find room on a plate.
type Problem struct {
	Stops    []geom.Angle // turns, in any order; those a full turn apart are one
	From, To geom.Angle   // the travel, From not above To

	Mouth  float64 // diameter of a seat, mm, above 0
	Web    float64 // least material between two seats, mm, at least 0
	Pocket float64 // least centre distance of two catches, mm

	Own   float64   // the ring radius there is, mm
	Radii []float64 // ring radii the parts have room for, mm, in order; Own among them where it is one
}

// pitch is the least centre distance of two seats, mm.
func (p Problem) pitch() float64 { return p.Mouth + p.Web }

// atLeast returns the radii there are from a least one up: the plan's own first
// where it is large enough, since a ring that can stay is the smaller change.
func (p Problem) atLeast(radius float64) []float64 {
	start, _ := slices.BinarySearch(p.Radii, radius-Slack/4)
	out := slices.Clone(p.Radii[start:])
	if i := slices.Index(out, p.Own); i > 0 {
		out = slices.Insert(slices.Delete(out, i, i+1), 0, p.Own)
	}
	return out
}

// stops returns the stops of an answer in the problem's order, by the catch of
// each place and by how it is moved, if any is.
func (p Problem) stops(at places, catch []int, moved []geom.Angle) []Stop {
	out := make([]Stop, len(p.Stops))
	for i, t := range p.Stops {
		k := at.of[i]
		out[i] = Stop{Turn: t, Was: t, Catch: catch[k]}
		if moved != nil && moved[k] != at.turns[k] {
			out[i].Turn = onStep(t - at.turns[k] + moved[k])
		}
	}
	return out
}

// Kind is a way of making room.
type Kind string

// The kinds.
const (
	OneRing    Kind = "one-ring"    // all stops on one ring and catch
	SharedRing Kind = "shared-ring" // several catches on one ring
	Rings      Kind = "rings"       // several rings of one catch each
	Mixed      Kind = "mixed"       // several rings, some of several catches
	Divided    Kind = "divided"     // equal divisions, each hole serving several stops
	Nearest    Kind = "nearest"     // one ring and catch, stops moved as little as does
)

// Answer is one way of making room. What it leaves open is how the catches lie
// to the parts: those of one group may be turned together, and groups against
// each other.
type Answer struct {
	Kind    Kind
	Catches []Catch
	Stops   []Stop  // one for each of the problem's, in its order
	Web     float64 // least material between two seats, mm, whichever way groups are turned; infinite when there is one seat
}

// Catch is one catch of an answer, by its place with the table at zero.
type Catch struct {
	Hole
	Group int // catches with one number keep their places to each other
}

// Stop is one stop of an answer and the catch that drops there.
type Stop struct {
	Turn  geom.Angle // where the table rests
	Was   geom.Angle // where it was asked to: another turn only for Nearest
	Catch int        // into the answer's catches
}

// Seats returns the seats that an answer's stops need, one for each place.
func (a Answer) Seats() []Hole {
	out := make([]Hole, 0, len(a.Stops))
	for _, s := range a.Stops {
		c := a.Catches[s.Catch]
		out = append(out, Hole{Place: (c.Place + s.Turn).Turn(), Radius: c.Radius})
	}
	slices.SortFunc(out, func(p, q Hole) int {
		switch {
		case p.Radius != q.Radius && p.Radius < q.Radius, p.Radius == q.Radius && p.Place < q.Place:
			return -1
		case p == q:
			return 0
		}
		return 1
	})
	return slices.CompactFunc(out, func(p, q Hole) bool { return p.Radius == q.Radius && (p.Place-q.Place).Abs() <= sameTurn })
}

// clean reports whether the table can be turned through the travel without a
// false click, as far as catches of one ring are concerned.
func (p Problem) clean(a Answer) bool {
	s := Sweep{Seats: a.Seats(), From: p.From, To: p.To, Mouth: p.Mouth, Same: sameWeb}
	for _, c := range a.Catches {
		s.Balls = append(s.Balls, c.Hole)
	}
	for _, t := range a.Stops {
		s.Stops = append(s.Stops, t.Turn)
	}
	found := false
	s.Clicks(func(FalseClick) { found = true })
	return !found
}

// sameWeb (mm) is how near two seat centres lie that are one hole, as plates
// reckon it.
const sameWeb = 1e-6

// ringWeb returns the least material between two seats of one ring, mm.
func (p Problem) ringWeb(a Answer) float64 {
	seats := a.Seats()
	least := inf
	for i := 0; i < len(seats); {
		k := i
		var places []geom.Angle
		for ; k < len(seats) && seats[k].Radius == seats[i].Radius; k++ {
			places = append(places, seats[k].Place)
		}
		if len(places) > 1 {
			least = min(least, geom.Chord(seats[i].Radius, LeastGap(places))-p.Mouth)
		}
		i = k
	}
	return least
}
