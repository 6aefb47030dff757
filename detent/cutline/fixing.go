package cutline

import (
	"math"

	"stopwright/detent/geom"
)

// Body is the fence as a piece of wood: a straight bar behind its face.
type Body struct {
	Length    float64 // along x, half to either side of the pivot, mm
	Thickness float64 // behind the face, mm
	Inset     float64 // of the fixing screws from the two ends, mm
}

// Corners returns the bar's corners at zero: the face's left and right end, then
// the back's right and left.
func (l Line) Corners(b Body) [4]geom.Point {
	h, back := b.Length/2, l.Fence+b.Thickness
	return [4]geom.Point{{X: -h, Y: l.Fence}, {X: h, Y: l.Fence}, {X: h, Y: back}, {X: -h, Y: back}}
}

// Screws returns where the two fixing screws fall: in the middle of the bar, an
// inset from either end.
func (l Line) Screws(b Body) [2]geom.Point {
	x, y := math.Max(0, b.Length/2-b.Inset), l.Fence+b.Thickness/2
	return [2]geom.Point{{X: -x, Y: y}, {X: x, Y: y}}
}

// Nearest and Farthest return how near the bar comes to the pivot, and how far
// out it reaches, mm.
func (l Line) Nearest(b Body) float64 {
	if l.Fence <= 0 && l.Fence+b.Thickness >= 0 {
		return 0
	}
	return math.Min(math.Abs(l.Fence), math.Abs(l.Fence+b.Thickness))
}

// Farthest is the other end of what Nearest says.
func (l Line) Farthest(b Body) float64 {
	return math.Hypot(b.Length/2, math.Max(math.Abs(l.Fence), math.Abs(l.Fence+b.Thickness)))
}

// Adjust returns how long (mm) a slotted hole must be for a screw of a diameter
// so that what it fixes can be moved by move mm, and by twice its standard error
// more, to either side of where it is now. It is rounded up to half a
// millimetre.
func Adjust(diameter, move, std float64) float64 {
	const step, slack = 0.5, 1e-9 // mm; a length that a rule shows, and rounding
	room := math.Abs(move) + 2*std
	return math.Ceil((diameter+2*room-slack)/step) * step
}

// EndMove returns how far (mm) the end of a fence that is arm mm from its other
// fixing moves when it is turned by an angle.
func EndMove(arm float64, turn geom.Angle) float64 { return arm * math.Tan(turn.Radians()) }
