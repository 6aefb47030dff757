package plate

import (
	"math"
	"slices"

	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// leastSeatDrill (mm) is the smallest drill proposed for a seat: a thinner one
// wanders in wood. Common practice, no source.
const leastSeatDrill = 1

// seatDrills returns the drills among which a seat is looked for: the metric
// ones, and the series of the plan's own drill if that is another.
func seatDrills(s plan.Seat) []stock.Drill {
	own, _ := stock.NearestDrill(s.Diameter)
	isOwn := math.Abs(own.MM-s.Diameter) <= stock.SameSize
	return slices.DeleteFunc(stock.Drills(), func(d stock.Drill) bool {
		fits := d.System == stock.Metric || isOwn && d.System == own.System
		return !fits || d.MM < leastSeatDrill
	})
}
