package ui

import (
	"strings"

	"stopwright/detent/measure"
	"stopwright/detent/stock"
	"stopwright/ui/units"
)

// stockItem is one thing that a maker can buy, or a figure to reckon with.
type stockItem struct {
	kind  string // what it is: the key of its name without "stock.kind."
	name  string
	says  string  // its chief figure
	sold  string  // what it is called without a unit; "": nothing else
	mm    float64 // its diameter; 0: it has none
	facts []stockFact
	uses  []stockUse
}

// stockFact is one figure, and where it is from.
type stockFact struct {
	name, value string
	stock.Evidence
}

// stockUse is a field of the plan that an item can set: a number, or a text.
type stockUse struct {
	field  string // its generic path
	number float64
	text   string
}

// The kinds of stock, in the order they are listed.
const (
	drillStock  = "drill"
	ballStock   = "ball"
	screwStock  = "screw"
	pointStock  = "point"
	coneStock   = "countersink"
	woodStock   = "wood"
	rubbedStock = "friction"
	wireStock   = "wire"
)

var stockKinds = []string{drillStock, ballStock, screwStock, pointStock, coneStock, woodStock, rubbedStock, wireStock}

// stockItems lists all there is, kind by kind.
func (w *Window) stockItems() []stockItem {
	var all []stockItem
	for _, list := range [][]stockItem{
		w.drillStock(), w.ballStock(), w.screwStock(), w.pointStock(), w.materialStock(), w.frictionStock(), w.wireStock(),
	} {
		all = append(all, list...)
	}
	return all
}

func (w *Window) drillStock() []stockItem {
	var out []stockItem
	for _, d := range stock.Drills() {
		size := w.bothSizes(d.MM)
		out = append(out, stockItem{
			kind: drillStock, name: w.soldAs(d.System, d.Designation), says: size, sold: d.Designation, mm: d.MM,
			facts: []stockFact{{w.words.Text("stock.diameter"), size, d.Evidence}},
			uses:  holes(d.MM, "seat.diameter", "seat.relief_diameter", "turntable.pivot_bore", selectedHole),
		})
	}
	return out
}

func (w *Window) ballStock() []stockItem {
	grade := stock.BallGrades()[0]
	var out []stockItem
	for _, b := range stock.Balls() {
		size := w.bothSizes(b.MM)
		out = append(out, stockItem{
			kind: ballStock, name: w.soldAs(b.System, b.Designation), says: size, sold: b.Designation, mm: b.MM,
			facts: []stockFact{
				{w.words.Text("stock.diameter"), size, b.Evidence},
				{w.words.Text("stock.ball.one"), w.figure(grade.OneBall*1000, "µm"), grade.Evidence},
				{w.words.Text("stock.ball.batch"), w.figure(grade.OneBatch*1000, "µm"), grade.Evidence},
			},
			uses: holes(b.MM, "catch.ball_diameter"),
		})
	}
	return out
}

// selectedHole stands for the feature that is selected on the plate.
const selectedHole = "features[].diameter"

// holes are fields that a diameter can set.
func holes(mm float64, fields ...string) []stockUse {
	var uses []stockUse
	for _, f := range fields {
		uses = append(uses, stockUse{field: f, number: mm})
	}
	return uses
}

// soldAs returns how a size is asked for at the counter.
func (w *Window) soldAs(system stock.System, designation string) string {
	switch system {
	case stock.Metric:
		return w.decimal(designation) + " mm"
	case stock.Fraction:
		return designation + `"`
	}
	return w.words.Text("stock."+system.String()) + " " + designation
}

// bothSizes returns a length in mm and in inches, to what can be measured.
func (w *Window) bothSizes(mm float64) string {
	both := []string{units.Style{}.Length(mm), units.Style{Lengths: units.Inches}.Length(mm)}
	return w.decimal(both[0]) + " = " + w.decimal(both[1])
}

// figure writes a number with a unit.
func (w *Window) figure(x float64, unit string) string {
	return strings.TrimSpace(w.decimal(measure.Trim(x, plainDecimals)) + " " + unit)
}

// span writes a value, or the range it has, times a factor, with a unit.
func (w *Window) span(v stock.Value, factor float64, decimals int, unit string) string {
	num := func(x float64) string { return w.decimal(measure.Trim(x*factor, decimals)) }
	if num(v.Low) == num(v.High) {
		return strings.TrimSpace(num(v.Typical) + " " + unit)
	}
	return strings.TrimSpace(num(v.Low) + "–" + num(v.High) + " " + unit)
}
