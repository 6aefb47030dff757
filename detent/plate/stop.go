package plate

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Stop is one angle at which the table rests: a stop of the plan, or the other
// side of one.
type Stop struct {
	Angle    geom.Angle
	Label    string
	Index    int   // of the plan's stop
	Mirrored bool  // the side the plan's both_sides adds
	Catches  []int // into the plan's catches, those that drop together
	Seats    []int // into the plate's seats, those that serve it
}

// StopsOf lists a plan's stops with their other sides, in the plan's order, and
// without their seats.
func StopsOf(p plan.Plan) []Stop { return expand(p) }

// expand lists the plan's stops with their other sides, in the plan's order.
func expand(p plan.Plan) []Stop {
	byName := make(map[string]int, len(p.Catches))
	for i, c := range p.Catches {
		byName[c.Name] = i
	}
	first := []int{0}
	out := make([]Stop, 0, 2*len(p.Stops))
	for i, s := range p.Stops {
		angle := geom.Angle(s.Angle) + 0 // a typed -0 is 0
		catches := first
		if len(s.Catches) > 0 {
			catches = make([]int, len(s.Catches))
			for k, name := range s.Catches {
				catches[k] = byName[name]
			}
		}
		out = append(out, Stop{Angle: angle, Label: s.Label, Index: i, Catches: catches})
		if s.BothSides && angle != 0 {
			out = append(out, Stop{Angle: -angle, Label: s.Label, Index: i, Mirrored: true, Catches: catches})
		}
	}
	return out
}

// linkSeats tells every stop which seats serve it.
func linkSeats(stops []Stop, seats []Seat) {
	n := 0
	for _, s := range stops {
		n += len(s.Catches)
	}
	links := make([]int, 0, n)
	for i := range stops {
		n := len(stops[i].Catches)
		stops[i].Seats = links[len(links) : len(links) : len(links)+n]
		links = links[:len(links)+n]
	}
	for i, s := range seats {
		for _, v := range s.Serves {
			if t := &stops[v.Stop]; len(t.Seats) == 0 || t.Seats[len(t.Seats)-1] != i {
				t.Seats = append(t.Seats, i)
			}
		}
	}
}
