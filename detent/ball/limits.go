package ball

import (
	"errors"
	"fmt"
	"strings"
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
	var problems []error
	for _, q := range qs {
		if q.value >= q.lo && q.value <= q.hi {
			continue
		}
		text := fmt.Sprintf("%s is %g, must be %g to %g %s", q.name, q.value, q.lo, q.hi, q.unit)
		problems = append(problems, errors.New(strings.TrimSpace(text)))
	}
	return errors.Join(problems...)
}
