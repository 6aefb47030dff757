package room

import (
	"math"
	"slices"

	"stopwright/detent/geom"
)

// Slack (mm) is how far a web may fall short of its rule and count as equal to
// it: that of the plan's checks.
const Slack = 1e-9

// sameTurn (degrees) is how near two turns may lie and still be one: rounding
// of a few turns added up.
const sameTurn geom.Angle = 1e-9

// GapFor returns the least angle between two holes of a ring whose centres are
// to be pitch mm apart: 2·asin(pitch/2R). No angle is enough on a ring smaller
// than that; the answer is then more than a full turn.
func GapFor(radius, pitch float64) geom.Angle {
	x := pitch / (2 * radius)
	if !(x <= 1) {
		return 2 * geom.FullTurn
	}
	return geom.FromRadians(2 * math.Asin(x))
}

// RingFor returns the least ring radius (mm) on which two holes the angle apart
// are pitch mm from centre to centre: pitch/(2 sin(apart/2)). It is infinite
// where they share their place.
func RingFor(apart geom.Angle, pitch float64) float64 {
	return pitch / geom.Chord(1, apart)
}

// SmallestRing returns the least ring radius (mm) on which the seats of all
// stops are pitch mm from centre to centre. It is 0 for fewer than two stops.
func SmallestRing(stops []geom.Angle, pitch float64) float64 {
	least := LeastGap(Places(stops))
	if least >= geom.FullTurn {
		return 0
	}
	return RingFor(least, pitch)
}

// Places brings turns to [0, 360), in order, each place once.
func Places(turns []geom.Angle) []geom.Angle {
	out := make([]geom.Angle, len(turns))
	for i, t := range turns {
		out[i] = t.Turn()
	}
	slices.Sort(out)
	out = slices.CompactFunc(out, func(a, b geom.Angle) bool { return (a - b).Abs() <= sameTurn })
	if n := len(out); n > 1 && out[0]+geom.FullTurn-out[n-1] <= sameTurn {
		out = out[:n-1]
	}
	return out
}

// LeastGap returns the least angle between neighbours on a circle, of places in
// order in [0, 360): a full turn for fewer than two.
func LeastGap(places []geom.Angle) geom.Angle {
	n := len(places)
	if n < 2 {
		return geom.FullTurn
	}
	least := places[0] + geom.FullTurn - places[n-1]
	for i := 1; i < n; i++ {
		least = min(least, places[i]-places[i-1])
	}
	return least
}

// afterWidestGap turns places so that the widest gap lies between the last and
// the first: they then run on from the first, some of them beyond 360.
func afterWidestGap(places []geom.Angle) []geom.Angle {
	n := len(places)
	if n == 0 {
		return nil
	}
	first, widest := 0, places[0]+geom.FullTurn-places[n-1]
	for i := 1; i < n; i++ {
		if gap := places[i] - places[i-1]; gap > widest+sameTurn {
			first, widest = i, gap
		}
	}
	out := append(slices.Clone(places[first:]), places[:first]...)
	for i := n - first; i < n; i++ {
		out[i] += geom.FullTurn
	}
	return out
}

// RadiusStep is the step (mm) to which a proposed ring radius is rounded: one
// that can be set on a trammel.
const RadiusStep = 0.5

// RoundUp brings a radius up to the next step. What lies a hair above a step
// counts as on it: a quarter of the slack of a web, since a chord is at most
// twice its radius.
func RoundUp(radius float64) float64 {
	return math.Ceil((radius-Slack/4)/RadiusStep) * RadiusStep
}
