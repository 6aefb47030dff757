package proving

import (
	"math"

	"stopwright/detent/squares"
)

// Need is something that further readings would tell.
type Need int

// The needs, from the one to meet first.
const (
	MoreStops Need = iota // too few stops to tell a bad seat from a common error
	Repeat                // a seat is out by one reading only: read it again before mending it
	BothWays              // no stop was measured from both sides: play is not known
	WiderArc              // a ring off the pivot cannot be told from a common error
)

// Advice is what to measure next, and where.
type Advice struct {
	Need Need
	Stop int // into the plate's stops; -1: any
}

// wide is by how much the standard error of the common error may grow when an
// eccentricity is fitted with it, for the two to be told apart. Common practice
// in judging nearly alike unknowns, no source.
const wide = 3.0

func advise(p Plate, all meansOf, d Diagnosis) []Advice {
	var out []Advice
	measured := make([]bool, len(p.Stops))
	both := false
	for _, m := range all.stops {
		measured[m.stop] = true
		both = both || m.bothWays()
	}
	next := nextStop(p, all.stops, measured)
	if len(all.stops) < leastToJudge+1 && next >= 0 {
		out = append(out, Advice{MoreStops, next})
	}
	for _, s := range d.Seats {
		if s.Out && s.Readings == 1 {
			out = append(out, Advice{Repeat, s.Stop})
		}
	}
	if !both {
		out = append(out, Advice{BothWays, all.stops[0].stop})
	}
	known := d.EccentricX.Known && d.EccentricY.Known
	if len(all.stops) > leastToJudge && !known && narrow(p, all.stops) && next >= 0 {
		out = append(out, Advice{WiderArc, next})
	}
	return out
}

// narrow reports whether the stops lie over so short an arc that an eccentricity
// and a common error look alike.
func narrow(p Plate, stops []mean) bool {
	rows := make([][]float64, len(stops))
	for i, m := range stops {
		rows[i] = p.row(m.stop)
	}
	f, ok := squares.Of(rows, make([]float64, len(rows)))
	return !ok || math.Sqrt(f.Cov[0][0]*float64(len(rows))) > wide
}

// nextStop returns the stop, of those not measured yet, after which the common
// error and the eccentricity are told apart best; -1 where all are measured.
func nextStop(p Plate, stops []mean, measured []bool) int {
	const hint = 1e-3 // so that unknowns that nothing tells of yet have an end
	rows := [][]float64{{hint, 0, 0}, {0, hint, 0}, {0, 0, hint}}
	for _, m := range stops {
		rows = append(rows, p.row(m.stop))
	}
	f, ok := squares.Of(rows, make([]float64, len(rows)))
	if !ok {
		return -1
	}
	best, most := -1, 0.0
	for i := range p.Stops {
		if measured[i] {
			continue
		}
		// The reading whose outcome is least foreseen tells most.
		if spread := f.Spread(p.row(i)); spread > most*(1+1e-9) {
			best, most = i, spread
		}
	}
	return best
}
