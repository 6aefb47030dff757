package room

import (
	"math"

	"stopwright/detent/geom"
)

// span is the least and the greatest turn of one catch's stops.
type span struct{ first, last geom.Angle }

func spans(stops []geom.Angle, of []int, k int) []span {
	out := make([]span, k)
	seen := make([]bool, k)
	for i, t := range stops {
		c := of[i]
		if !seen[c] {
			out[c], seen[c] = span{t, t}, true
		}
		out[c].last = t // stops are in order
	}
	return out
}

// sectors returns places for catches of one ring so that no ball enters another
// catch's sector within the travel, and false where a turn has no room for that.
// What is left over is shared out evenly, so that the balls lift the table
// evenly.
//
// Catch j and the next one, k, must be D apart where each ball stays clear of the
// other's seats: D > to - first(k), D > last(j) - from, by the reach of a ball
// over a mouth; and their nearest seats and their pockets must not meet.
func (p Problem) sectors(radius float64, of []span) ([]geom.Angle, bool) {
	k := len(of)
	if k == 1 {
		return []geom.Angle{0}, true
	}
	reach := reachOf(radius, radius, min(p.Mouth/2, radius))
	pocket := GapFor(radius, p.Pocket)
	seat := GapFor(radius, p.pitch())
	apart := make([]geom.Angle, k) // from catch j to the next
	left := geom.FullTurn
	for j := range of {
		a, b := of[j], of[(j+1)%k]
		apart[j] = max(p.To-b.first+reach, a.last-p.From+reach, a.last-b.first+seat, pocket)
		left -= apart[j]
	}
	if left < 0 {
		return nil, false
	}
	return evenly(apart), true
}

// evenly returns places of catches in a circle, each at least apart[j] from the
// next and as evenly as that allows, in whole degrees where there is room for
// the rounding.
func evenly(apart []geom.Angle) []geom.Angle {
	k := len(apart)
	share := level(apart)
	out := make([]geom.Angle, k)
	for j := 1; j < k; j++ {
		out[j] = out[j-1] + max(apart[j-1], share)
	}
	round := make([]geom.Angle, k)
	for j := 1; j < k; j++ {
		round[j] = geom.Angle(math.Round(out[j].Degrees()))
		if round[j]-round[j-1] < apart[j-1] {
			return out
		}
	}
	if geom.FullTurn-round[k-1] < apart[k-1] {
		return out
	}
	return round
}

// level returns the angle to which all gaps can be widened at least, so that
// together they make a full turn.
func level(apart []geom.Angle) geom.Angle {
	rest, count := geom.FullTurn, len(apart)
	share := rest / geom.Angle(count)
	for range apart {
		rest, count = geom.FullTurn, 0
		for _, a := range apart {
			if a > share {
				rest -= a
			} else {
				count++
			}
		}
		if count == 0 {
			return share
		}
		share = rest / geom.Angle(count)
	}
	return share
}
