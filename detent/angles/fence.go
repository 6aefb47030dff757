package angles

import (
	"math"
	"slices"

	"stopwright/detent/geom"
)

// readingTolerance, in degrees, is how far an angle read from a fence may lie
// from a polygon's mitre and be taken for it: half the last digit of a reading
// to a tenth, and far less than half the 0.3° between the mitres of 23 and 24
// sides.
const readingTolerance = 0.05

// stepTolerance, in degrees, is how far one of two steps may differ from the
// other and be called equal: what typing 25.71 for 180/7 leaves.
const stepTolerance = 0.02

// FromFence recognises an angle that was read from the fence, where from square
// is meant: 67.5, as a protractor laid along the fence shows for a mitre of
// 22.5. It returns the angle from square with the number of sides of the frame
// it mitres. The rule:
//
//   - the angle is between 45° and 90°, either way; and
//   - 90° less the angle is the mitre of a frame of 3 to 24 sides, within 0.05°,
//     but the angle itself is none (60° is that of 3 sides, and is left alone);
//     and
//   - the plan's other stops do not account for it. They do where it lies midway
//     between the stops next to it (72 between 0 and 144), or carries on the equal
//     steps of the three stops next to it on one side (67.5 after 0, 22.5, 45).
//
// others are the angles of the plan's other stops on both sides, in any order,
// the angle's own other side left out. It is a hint, never a fault: some stops
// beyond 45° are meant so.
func FromFence(a geom.Angle, others []geom.Angle) (square geom.Angle, sides int, ok bool) {
	if a.Abs() <= 45 || a.Abs() >= 90 {
		return 0, 0, false
	}
	if _, is := frame(a.Abs()); is {
		return 0, 0, false
	}
	sides, ok = frame(90 - a.Abs())
	if !ok || inSeries(a, others) {
		return 0, 0, false
	}
	return geom.Angle(math.Copysign(Mitre(sides).Degrees(), a.Degrees())), sides, true
}

// frame returns the sides of the frame that an angle mitres.
func frame(a geom.Angle) (sides int, ok bool) {
	n := int(math.Round(180 / a.Degrees()))
	return n, n >= MinSides && n <= MaxSides && (a-Mitre(n)).Abs() <= readingTolerance
}

// inSeries reports whether an angle goes with the steps of the stops next to it.
func inSeries(a geom.Angle, others []geom.Angle) bool {
	sorted := slices.Clone(others)
	slices.Sort(sorted)
	at, _ := slices.BinarySearch(sorted, a)
	end := at
	for end < len(sorted) && sorted[end] == a { // the same stop again explains nothing
		end++
	}
	below, above := sorted[:at], sorted[end:]
	slices.Reverse(below)
	equal := func(d, e geom.Angle) bool { return (d.Abs() - e.Abs()).Abs() <= stepTolerance }
	carriesOn := func(s []geom.Angle) bool {
		return len(s) >= 3 && equal(s[0]-a, s[1]-s[0]) && equal(s[1]-s[0], s[2]-s[1])
	}
	midway := len(below) > 0 && len(above) > 0 && equal(a-below[0], above[0]-a)
	return midway || carriesOn(below) || carriesOn(above)
}
