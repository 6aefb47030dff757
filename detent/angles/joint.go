package angles

import (
	"math"

	"stopwright/detent/geom"
)

// JointLength returns how long (mm) the mitre of a frame of n sides is, cut
// across stock of a width (mm): w/cos(180°/n), exact mathematics. n is at least
// [MinSides].
func JointLength(width float64, n int) float64 { return width / math.Cos(Mitre(n).Radians()) }

// CornerGap returns how wide (mm) a joint of a length (mm) gapes when both of its
// cuts are off by an angle: L·tan 2δ. It is false where the cuts are so far off
// that they do not meet at all.
func CornerGap(length float64, off geom.Angle) (float64, bool) { return gap(length, 2*off) }

// ClosingGap returns how wide (mm) the last joint of a frame of n sides gapes when
// all 2n cuts are off by an angle and the other joints are drawn shut: L·tan 2nδ.
// It is false where they do not meet at all.
func ClosingGap(length float64, n int, off geom.Angle) (float64, bool) {
	return gap(length, geom.Angle(2*n)*off)
}

func gap(length float64, open geom.Angle) (float64, bool) {
	if open.Abs() >= 90 {
		return 0, false
	}
	return length * math.Tan(open.Abs().Radians()), true
}

// AllowedOff returns how far off each cut may be so that the last joint of a
// frame of n sides gapes no wider than a gap (mm, 0 or more); with n of 1 so that
// a single corner does.
func AllowedOff(length float64, n int, gap float64) geom.Angle {
	return geom.FromRadians(math.Atan(gap/length)) / geom.Angle(2*n)
}
