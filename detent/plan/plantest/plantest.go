// Package plantest holds plans, for tests only, that several packages are tested
// with.
package plantest

import (
	"fmt"

	"stopwright/detent/plan"
)

// Arrangements are the four ways to arrange a plate.
var Arrangements = []plan.Arrangement{
	{CatchIn: plan.PartTurntable, PositiveTurn: plan.Clockwise},
	{CatchIn: plan.PartTurntable, PositiveTurn: plan.Counterclockwise},
	{CatchIn: plan.PartBase, PositiveTurn: plan.Clockwise},
	{CatchIn: plan.PartBase, PositiveTurn: plan.Counterclockwise},
}

// Equal is the default plan with n stops evenly round the full turn, from 0.
func Equal(n int) plan.Plan {
	p := plan.Default()
	p.Title = fmt.Sprintf("%d equal stops", n)
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360 * float64(i) / float64(n)})
	}
	return p
}
