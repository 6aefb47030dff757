package check

import (
	"math"

	"stopwright/detent/plan"
)

// tool gives the plan a tool with its line on the pivot, changed by an edit.
func tool(edit func(*plan.Tool)) func(*plan.Plan) {
	return func(p *plan.Plan) {
		t := plan.NewTool()
		edit(&t)
		p.Tool = &t
	}
}

func fence(y float64) func(*plan.Plan) { return tool(func(t *plan.Tool) { t.Fence = y }) }

// underside is a fence across the middle at a height over the base.
func underside(h float64) func(*plan.Plan) {
	return tool(func(t *plan.Tool) { t.FenceUnderside = &h })
}

// tableTop is the height of the turntable's top in a plan of build: 0.2 mm of gap
// and 18 mm of plywood.
const tableTop = 18.2

// collared gives the plan a collar as thick as said, 10 mm wide all round.
func collared(thick float64) func(*plan.Plan) {
	return func(p *plan.Plan) {
		c := plan.NewCollar(p.Turntable)
		c.OutsideDiameter, c.Thickness, c.Clearance, c.Screws.Count = disc+20, thick, 0, 0
		p.Collar = &c
	}
}

// wide is an opening of 2·(20 + 1.5·√2) mm at 45 degrees: a fence 20 mm thick on
// the pivot, cut by a blade 3 mm wide that passes through it.
var wide = 2 * (20 + 1.5*math.Sqrt2)

func opening(w float64) func(*plan.Plan) {
	return tool(func(t *plan.Tool) { t.FenceThickness, t.FenceOpening = 20, w })
}

// stock is the width at which a target of 22.5 degrees accepts a gap of as much.
const stock = 20.0

func accepting(p *plan.Plan) { p.Shop.Target, p.Shop.StockWidth = 22.5, stock }

// toolCases are about the tool's line and the fence.
var toolCases = map[string][]fixture{
	"fence-clash": {
		{"no tool given", build([]float64{0}), nil},
		{"a fence whose height is not given counts as clear", build([]float64{0}, fence(0)), nil},
		{"just clear of the turntable", build([]float64{0}, underside(tableTop)), nil},
		{"lower within the slack", build([]float64{0}, underside(tableTop-within)), nil},
		{
			"a hair lower", build([]float64{0, 30}, underside(tableTop-hair)),
			[]expected{{
				Finding{Angles: angles(0, 30), Value: tableTop - hair, Limit: tableTop, Unit: mm},
				"The fence's underside is 18.2 mm over the base, and the turntable's top 18.2 mm: the table cannot turn under it.",
			}},
		},
		{
			"lower, but behind the turntable",
			build([]float64{0}, underside(0), func(p *plan.Plan) { p.Tool.Fence = disc / 2 }), nil,
		},
		{
			"lower, and a hair inside it", build([]float64{0}, underside(5), func(p *plan.Plan) { p.Tool.Fence = disc/2 - hair }),
			[]expected{{
				Finding{Angles: angles(0), Value: 5, Limit: tableTop, Unit: mm},
				"The fence's underside is 5 mm over the base, and the turntable's top 18.2 mm: the table cannot turn under it.",
			}},
		},
		{
			"lower, with its back on the near side", build([]float64{0}, underside(5), func(p *plan.Plan) { p.Tool.Fence = -disc/2 - 18 }), nil,
		},
		{"over a collar no higher", build([]float64{0}, collared(25), underside(25)), nil},
		{
			"over a collar that stands higher than the turntable", build([]float64{0}, collared(25), underside(20)),
			[]expected{{
				Finding{Angles: angles(0), Value: 20, Limit: 25, Unit: mm},
				"The fence's underside is 20 mm over the base, and the collar's top 25 mm: they meet.",
			}},
		},
		{
			"a fence too short to reach the collar", build([]float64{0}, collared(25), underside(20), func(p *plan.Plan) { p.Tool.FenceLength = 300 }), nil,
		},
		{"an opening as wide as needed", build([]float64{45, -45}, opening(wide)), nil},
		{
			"an opening a hair narrower", build([]float64{45, -45, 120}, travel(-360, 360), opening(wide-hair)),
			[]expected{{
				Finding{Angles: angles(45, -45, 120), Value: wide, Limit: wide - hair, Unit: mm},
				"The tool sweeps an opening of 44.24 mm in the fence, which has 44.24 mm.",
			}},
		},
		{"no opening: the tool cuts its own", build([]float64{45}, opening(0)), nil},
	},

	"wander-over-target": {
		{"no tool given", build([]float64{0, 45}, accepting), nil},
		{"as far as the target lets it", build([]float64{0, 45}, accepting, fence(stock)), nil},
		{"farther within the slack", build([]float64{0, 45}, accepting, fence(stock+within)), nil},
		{
			"a hair farther", build([]float64{0, 45}, accepting, fence(stock+hair)),
			[]expected{{
				Finding{Angles: angles(0, 45), Value: stock + hair, Limit: stock, Unit: mm},
				"From stop 0° to stop 45° the cut wanders 20 mm along the fence; the target accepts 20 mm.",
			}},
		},
		{
			"the tool off the pivot by so much that no fence mends it",
			build([]float64{-45, 0, 45}, accepting, tool(func(t *plan.Tool) { t.Offset = 50 })),
			[]expected{{
				Finding{Angles: angles(-45, 0), Value: 50 * (math.Sqrt2 - 1), Limit: stock, Unit: mm},
				"From stop -45° to stop 0° the cut wanders 20.71 mm along the fence; the target accepts 20 mm.",
			}},
		},
		{"one stop does not wander", build([]float64{45}, accepting, fence(300)), nil},
		{"a stop too steep for a crossing does not count", build([]float64{0, 86}, accepting, fence(300)), nil},
		{"a target of half a right angle sets no limit", build([]float64{0, 45}, fence(300), target(45)), nil},
	},
}
