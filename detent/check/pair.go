package check

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// pair is the least material a check found beside one seat, and what is on the
// other side of it: another seat, or else a feature.
type pair struct {
	web     float64
	seat    int // -1: a feature
	feature int
	found   bool
}

// pairs keeps the worst pair of each seat.
type pairs []pair

// offer keeps p for seat i if it is worse than what is kept already.
func (ps pairs) offer(i int, p pair) {
	if !ps[i].found || p.web < ps[i].web {
		p.found = true
		ps[i] = p
	}
}

// report makes one finding a seat, and one for two seats that are each other's
// worst.
func (ps pairs) report(pl *plate.Plate, limit float64, report func(Finding)) {
	for i, p := range ps {
		switch {
		case !p.found:
		case p.seat < 0:
			report(Finding{
				Angles: anglesOf(pl, i), Seats: []int{i}, Features: []int{p.feature},
				Value: p.web, Limit: limit, Unit: mm,
			})
		case p.seat < i && ps[p.seat].found && ps[p.seat].seat == i:
			// Told already, with the other seat first.
		default:
			report(Finding{
				Angles: anglesOf(pl, i, p.seat), Seats: []int{i, p.seat},
				Value: p.web, Limit: limit, Unit: mm,
			})
		}
	}
}

// sayPair gives the sentence of a finding that pairs.report made.
func sayPair(pl *plate.Plate, f Finding) (string, words.Args) {
	args := seatArgs(pl, f)
	if len(f.Features) > 0 {
		args["Feature"] = pl.Features[f.Features[0]]
		return "feature", args
	}
	b := pl.Seats[f.Seats[1]]
	args["B"], args["AngleB"] = b.Tag, words.Deg(b.Angle)
	return "seat", args
}

// seatArgs returns the words about the seat a finding is about, and about the
// material it found.
func seatArgs(pl *plate.Plate, f Finding) words.Args {
	a := pl.Seats[f.Seats[0]]
	return words.Args{
		"A": a.Tag, "AngleA": words.Deg(a.Angle),
		"Left": words.MM(f.Value), "Overlap": words.MM(-f.Value), "Limit": words.MM(f.Limit),
	}
}

// inf is more material than any plate has.
var inf = math.Inf(1)
