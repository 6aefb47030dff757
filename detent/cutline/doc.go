// Package cutline holds the line a tool cuts along and the fence the work lies
// against: where they cross as the table turns, how far that crossing wanders,
// and what marks on a board say about where the two really are.
//
// The frame is that of whichever of the two stands still to the fence: pivot at
// the origin, x along the fence and + right, y + away from the operator, mm. The
// work lies between the operator and the fence. At zero the tool's line runs
// along y at x = offset, and the fence's face along x at y = fence.
//
// The lean of the tool is how far its line is turned clockwise from square to
// the fence, seen from above. Where the tool turns with the table the lean is
// the table's clockwise turn; where the fence does, it is the other way about.
//
// Plain numbers in, plain numbers out. Everything is exact mathematics unless a
// comment names a source.
package cutline
