package ball

import (
	"strings"

	"stopwright/assets/words"
)

// The ranges in which the formulas stay clear of overflow and of rounding that
// would show. Whatever a workshop can hold lies well inside them.
const (
	leastSize   = 1e-3 // mm
	mostSize    = 1e5  // mm
	mostForce   = 1e6  // N
	mostRatio   = 10   // a coefficient of friction
	leastAngle  = 1    // degrees
	mostModulus = 1e7  // MPa
)

// slack is by how much a length (mm) may miss a limit through rounding: a gap
// of 0.3 mm under a protrusion of 0.1 + 0.2 is no gap.
const slack = 1e-9

// quantity is a number with the range it may have, end points included.
type quantity struct {
	name   string
	value  float64
	lo, hi float64
	unit   string // empty: a plain number
}

func size(name string, mm float64) quantity { return quantity{name, mm, leastSize, mostSize, "mm"} }

func sizeOrZero(name string, mm float64) quantity { return quantity{name, mm, 0, mostSize, "mm"} }

func force(name string, n float64) quantity { return quantity{name, n, 0, mostForce, "N"} }

// check returns an error that names every quantity out of its range, or nil.
// NaN and infinities always are.
func check(qs ...quantity) error {
	var wrong problems
	for _, q := range qs {
		if !(q.value >= q.lo && q.value <= q.hi) {
			wrong = append(wrong, q)
		}
	}
	if len(wrong) == 0 {
		return nil
	}
	return &words.Error{Saying: wrong}
}

// problems are quantities out of their range.
type problems []quantity

// In says one a line.
func (p problems) In(c *words.Catalogue) string {
	lines := make([]string, len(p))
	for i, q := range p {
		args := words.Args{"Name": c.Text("quantity." + q.name), "Value": q.value, "Low": q.lo, "High": q.hi, "Unit": q.unit}
		key := "quantity.is"
		switch q.unit {
		case "":
			key = "quantity.is.plain"
		case "turns", "degrees":
			args["Unit"] = c.Text("quantity.unit." + q.unit)
		}
		lines[i] = c.Text(key, args)
	}
	return strings.Join(lines, "\n")
}

// refuse returns an error that says a text.
func refuse(key string, args words.Args) error {
	return &words.Error{Saying: words.Phrase{Key: key, Args: args}}
}
