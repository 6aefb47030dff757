// Package coupon makes a test piece: a ladder of seats, of bores for the catch's
// body and of recesses for its flange, a little smaller and larger than those of
// the plan, to be cut from the same board with the same tools. What fits there is
// put back into the plan by [Apply].
package coupon

import (
	"math"
	"slices"

	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// Kind is what a row of the coupon tries.
type Kind string

// The kinds of row, in their order from the top.
const (
	Seat   Kind = "seat"
	Bore   Kind = "bore"
	Recess Kind = "recess"
)

// Rung is one hole of a row.
type Rung struct {
	// Value is what the plan would hold: the seat's diameter, the body's
	// allowance or the recess's, mm.
	Value float64
	// Size is what is cut and lettered: a diameter, or a recess's depth, mm.
	Size float64
	// Chosen says that it is the plan's own.
	Chosen bool
}

// Row is one ladder, from the smallest.
type Row struct {
	Kind  Kind
	Rungs []Rung
}

// The ladders: how many rungs, and how far apart, mm. Steps of a tenth are those
// of metric drills, and about the least that a fit in wood tells apart: common
// practice, no source.
const (
	rungs      = 7
	seatStep   = 0.1
	bodyStep   = 0.1
	recessStep = 0.2
)

// The least that is cut, mm, as the plan's own least sizes are.
const leastSize = 0.1

// Rows returns the ladders of a plan. A catch without a flange, or one that
// stands clear of its recess, has no row of recesses.
func Rows(p plan.Plan) []Row {
	c := p.Catch
	rows := []Row{
		{Seat, seats(p.Seat)},
		{Bore, around(c.BodyAllowance, bodyStep, func(v float64) float64 { return c.BodyDiameter + v })},
	}
	if c.FlangeDiameter > 0 && c.FlangeThickness+c.RecessAllowance > 0 {
		all := around(c.RecessAllowance, recessStep, func(v float64) float64 { return c.FlangeThickness + v })
		rows = append(rows, Row{Recess, slices.DeleteFunc(all, func(r Rung) bool {
			return protrusion(c, r.Value) < leastSize && !r.Chosen
		})})
	}
	return rows
}

// protrusion returns how far the ball stands out with another recess: as much
// less as that is deeper.
func protrusion(c plan.Catch, recess float64) float64 {
	return c.Protrusion + c.RecessAllowance - recess
}

// around returns the plan's own value with as many on either side; fewer where
// size leaves nothing to cut.
func around(own, step float64, size func(float64) float64) []Rung {
	var out []Rung
	for i := -rungs / 2; i <= rungs/2; i++ {
		v := own
		if i != 0 {
			v = math.Round((own+float64(i)*step)*1e6) / 1e6 // as one would type it
		}
		if s := size(v); i == 0 || s >= leastSize {
			out = append(out, Rung{v, s, i == 0})
		}
	}
	return out
}

// seats returns the plan's own seat among others: drilled ones of the nearest
// metric drills, countersunk ones in steps.
func seats(s plan.Seat) []Rung {
	own := Rung{s.Diameter, s.Diameter, true}
	if s.Form != plan.Drilled {
		return around(s.Diameter, seatStep, func(v float64) float64 { return v })
	}
	out := []Rung{own}
	for _, d := range stock.DrillsNear(s.Diameter, rungs, stock.Metric) {
		if math.Abs(d.MM-s.Diameter) >= stock.SameSize {
			out = append(out, Rung{Value: d.MM, Size: d.MM})
		}
	}
	slices.SortFunc(out, func(a, b Rung) int {
		if a.Size < b.Size {
			return -1
		}
		return 1
	})
	return out
}

// Apply puts what fitted into a plan: a value of a row's rungs. A catch that sits
// deeper or higher shows less or more of its ball: that follows.
func Apply(p *plan.Plan, k Kind, value float64) {
	switch k {
	case Seat:
		p.Seat.Diameter = value
	case Bore:
		p.Catch.BodyAllowance = value
	case Recess:
		p.Catch.Protrusion = math.Round(protrusion(p.Catch, value)*1e6) / 1e6
		p.Catch.RecessAllowance = value
	}
}
