package ball

import "math"

// JankaArea is the projected area (mm²) at which side hardness is read: a ball
// of 11.28 mm pressed in to half its diameter (Wood Handbook, FPL-GTR-190).
const JankaArea = 100

// Dent is the mark a ball presses into wood.
type Dent struct {
	Radius float64 // of its outline at the face, mm
	Depth  float64 // mm
}

// TrackDent estimates the dent of a ball of a diameter (mm, over 0) pressed on
// wood of a side hardness (N, over 0) with a force (N, 0 or more). It takes the
// mean pressure of the hardness test, hardness/100 mm², for that under any
// ball: an estimate, for the first press only; a ball that runs over the same
// track again and again goes deeper. It is false where the ball would go in
// beyond its half, and where diameter or hardness is not over 0.
func TrackDent(force, ballDiameter, hardness float64) (Dent, bool) {
	if ballDiameter <= 0 || hardness <= 0 {
		return Dent{}, false
	}
	r := ballDiameter / 2
	radius := math.Sqrt(max(force, 0) * JankaArea / (math.Pi * hardness))
	if radius > r+slack {
		return Dent{}, false
	}
	radius = min(radius, r)
	return Dent{radius, r - math.Sqrt((r-radius)*(r+radius))}, true
}
