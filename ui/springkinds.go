package ui

import (
	"stopwright/detent/ball"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// springKind is a way to know a spring, with the fields it takes.
type springKind struct {
	key    string // of its name
	wire   bool   // it asks for the wire's material
	fields []springField
	make   func(r *springReader) (ball.Spring, error)
}

// springField is a field of a way to know a spring.
type springField struct {
	key   string                  // of its name
	unit  string                  // of the plan's fields, or N/mm; empty: a plain number
	first func(plan.Plan) float64 // what stands in it at first
}

// perMM is the unit of a spring's rate.
const perMM = "N/mm"

func always(x float64) func(plan.Plan) float64 { return func(plan.Plan) float64 { return x } }

// springKinds are the ways, the one that takes least first. What a coil begins
// with is a spring for a 6 mm ball.
var springKinds = []springKind{
	{
		key: "spring.readings",
		fields: []springField{
			{"spring.out.first", millimetres, func(p plan.Plan) float64 { return p.Catch.Protrusion }},
			{"spring.force.first", newtons, func(p plan.Plan) float64 { return p.Catch.FreeForce }},
			{"spring.out.second", millimetres, always(0)},
			{"spring.force.second", newtons, func(p plan.Plan) float64 { return p.Catch.FlushForce }},
		},
		make: func(r *springReader) (ball.Spring, error) {
			l, err := ball.Measured(ball.Reading{Length: r.at(0), Force: r.at(1)}, ball.Reading{Length: r.at(2), Force: r.at(3)})
			if err != nil {
				return ball.Spring{}, err
			}
			return l.Fitted(r.travel, r.travel)
		},
	},
	{
		key: "spring.rated",
		fields: []springField{
			{"spring.rate", perMM, func(p plan.Plan) float64 { return springOf(p).Rate() }},
			{"spring.preload", newtons, func(p plan.Plan) float64 { return p.Catch.FreeForce }},
		},
		make: func(r *springReader) (ball.Spring, error) { return ball.SpringFromRate(r.at(0), r.at(1), r.travel) },
	},
	{
		key: "spring.coil", wire: true,
		fields: []springField{
			{"spring.wire", millimetres, always(0.6)},
			{"spring.outside", millimetres, always(5)},
			{"spring.turns", "", always(10)},
			{"spring.free", millimetres, always(14)},
			{"spring.fitted", millimetres, always(10)},
		},
		make: func(r *springReader) (ball.Spring, error) {
			l, err := r.coil().Loose(r.at(3))
			if err != nil {
				return ball.Spring{}, err
			}
			return l.Fitted(r.at(4), r.travel)
		},
	},
}

// closedEnds are the turns that do not give, one at either end of a spring with
// squared ends.
const closedEnds = 2

// springOf returns the spring of the plan's catch.
func springOf(p plan.Plan) ball.Spring {
	return ball.Spring{Free: p.Catch.FreeForce, Flush: p.Catch.FlushForce, Travel: p.Catch.Protrusion}
}

// springReader reads the fields of a spring, and keeps what is wrong with each.
type springReader struct {
	travel float64 // mm
	values []float64
	wire   stock.Wire
	err    error // of the first field that cannot be read
}

func (r *springReader) at(i int) float64 { return r.values[i] }

// coil returns the coil of which the wire, the outside and all turns were
// measured.
func (r *springReader) coil() ball.Coil {
	return ball.Coil{Wire: r.at(0), Mean: r.at(1) - r.at(0), ActiveTurns: r.at(2) - closedEnds, Modulus: r.wire.Modulus.Typical}
}

// readSpring reads a text in a field's unit.
func (w *Window) readSpring(f springField, text string) (float64, error) {
	switch f.unit {
	case millimetres:
		return w.units().ReadLength(text)
	case newtons:
		return measure.ParseForce(text)
	case perMM:
		return measure.ParseRate(text)
	}
	return measure.ParseNumber(text)
}
