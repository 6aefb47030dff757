package cutline

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/squares"
)

// Mark is where a trial cut crossed one board that lay still along the fence.
type Mark struct {
	Lean geom.Angle
	X    float64 // along the board, + right, from anywhere on it, mm
}

// Found is what marks say about where tool and fence are, mm.
type Found struct {
	Line
	Datum float64   // where on the board's own scale the pivot lies
	Left  []float64 // one a mark: measured less fitted

	Judged                bool // the two standard errors mean something
	OffsetStd, FenceStd   float64
	OffsetGain, FenceGain float64 // their standard errors for marks true to 1 mm
}

// WeakGain is the most that an error of the marks may grow on its way to the
// offset and the fence for the angles to be far enough apart: a mark a tenth of
// a millimetre off then tells the line to a millimetre. Common practice, no
// source.
const WeakGain = 10

// Weak reports whether the angles are too close together to tell where the tool
// and the fence are.
func (f Found) Weak() bool { return math.Max(f.OffsetGain, f.FenceGain) > WeakGain }

// Find fits datum + offset/cos lean + fence·tan lean to marks by least squares,
// with standard errors from what is left over where there are more marks than
// the three unknowns. Marks beyond [Steepest] are left out: their Left is 0. It
// is false for marks at fewer than three angles, or where the angles cannot tell
// the unknowns apart, as at -30, 0 and 30 they can but at ±30 alone they cannot.
func Find(marks []Mark) (Found, bool) {
	var rows [][]float64
	var xs []float64
	var from []int
	for i, m := range marks {
		if Crosses(m.Lean) {
			rows, xs, from = append(rows, row(m.Lean)), append(xs, m.X), append(from, i)
		}
	}
	fit, ok := squares.Of(rows, xs)
	if !ok {
		return Found{}, false
	}
	f := Found{
		Line:       Line{Offset: fit.Coef[1], Fence: fit.Coef[2]},
		Datum:      fit.Coef[0],
		Left:       make([]float64, len(marks)),
		OffsetGain: math.Sqrt(fit.Cov[1][1]), FenceGain: math.Sqrt(fit.Cov[2][2]),
	}
	for k, i := range from {
		f.Left[i] = fit.Left[k]
	}
	f.OffsetStd, f.Judged = fit.Std(1)
	f.FenceStd, _ = fit.Std(2)
	return f, true
}

func row(lean geom.Angle) []float64 {
	offset, fence := law(lean)
	return []float64{1, offset, fence}
}

// MarkNext returns which of the leans to mark next, as an index: the one after
// which offset and fence are known best. It is false where none has a crossing.
func MarkNext(marks []Mark, leans []geom.Angle) (int, bool) {
	// Marks that cannot tell the unknowns apart yet are helped by three that
	// weigh next to nothing.
	const hint = 1e-3
	rows := [][]float64{{hint, 0, 0}, {0, hint, 0}, {0, 0, hint}}
	for _, m := range marks {
		if Crosses(m.Lean) {
			rows = append(rows, row(m.Lean))
		}
	}
	fit, ok := squares.Of(rows, make([]float64, len(rows)))
	if !ok {
		return 0, false
	}
	best, least := -1, math.Inf(1)
	for i, a := range leans {
		if !Crosses(a) {
			continue
		}
		r := row(a)
		after := 0.0 // variance of offset and fence with this mark added
		for _, k := range [2]int{1, 2} {
			pull := 0.0
			for j := range r {
				pull += fit.Cov[k][j] * r[j]
			}
			after += fit.Cov[k][k] - pull*pull/(1+fit.Spread(r))
		}
		if after < least-1e-9*math.Abs(least) || best < 0 {
			best, least = i, after
		}
	}
	return best, best >= 0
}
