package proving

import (
	"math"

	"stopwright/detent/squares"
)

// law is what the stops have in common.
type law struct {
	common, x, y, noise Value
	out                 []bool // by stop: left out
	strange             []float64
	judged              []bool
}

// says returns the residual that the law explains.
func (l law) says(row []float64) float64 {
	return l.common.Is + l.x.Is*row[1] + l.y.Is*row[2]
}

// findLaw fits the common error and the eccentricity to the stops' means, each
// stop counting once: what seats are off by themselves is mostly larger than
// what a repeated reading mends. The stop strangest to the rest is left out if
// it is beyond the limit, and all is fitted again, as often as is needed but for
// a quarter of the stops and [mostOut] at most; then what the readings do not prove of the
// eccentricity is taken to be none.
func findLaw(p Plate, stops []mean) law {
	n := len(stops)
	l := law{out: make([]bool, n), strange: make([]float64, n), judged: make([]bool, n)}
	rows := make([][]float64, n)
	for i, m := range stops {
		rows[i] = p.row(m.stop)
	}
	left := min(max(1, n/4), mostOut)
	for {
		columns := []int{0, 1, 2}
		f, ok := l.fit(rows, stops, columns)
		if !ok {
			columns = columns[:1]
			f, _ = l.fit(rows, stops, columns)
		}
		worst := f.strangest(stops)
		mayLeave := left > 0 && n >= leastToJudge
		if worst < 0 || !mayLeave {
			for weak := f.weakest(); weak > 0; weak = f.weakest() {
				columns = append(columns[:weak:weak], columns[weak+1:]...)
				f, _ = l.fit(rows, stops, columns)
			}
			worst = f.strangest(stops)
		}
		if worst < 0 || !mayLeave {
			l.take(f, rows, stops)
			return l
		}
		l.out[worst] = true
		left--
	}
}

// mostOut is how many stops are left out at most: so many are no longer single
// seats, and a large plate must not take long.
const mostOut = 20

// leastToJudge is how many stops must be measured before one of them can be
// called out: two that agree say nothing about a third.
const leastToJudge = 4

// fitted is a fit of some of the unknowns to the stops that are in.
type fitted struct {
	squares.Fit
	columns []int // 0 common, 1 and 2 the eccentricity along x and y
	stops   []int // of each of its readings
}

// fit fits the columns asked for. An eccentricity is fitted only where at least
// one reading is left over to judge it by.
func (l law) fit(rows [][]float64, stops []mean, columns []int) (fitted, bool) {
	f := fitted{columns: columns}
	var picked [][]float64
	var y []float64
	for i, row := range rows {
		if l.out[i] {
			continue
		}
		some := make([]float64, len(columns))
		for k, c := range columns {
			some[k] = row[c]
		}
		picked, y, f.stops = append(picked, some), append(y, stops[i].mean), append(f.stops, i)
	}
	var ok bool
	f.Fit, ok = squares.Of(picked, y)
	return f, ok && (len(columns) == 1 || f.Free > 0)
}

// strangest returns the stop farthest from the rest if it is beyond the limit;
// else -1.
func (f fitted) strangest(stops []mean) int {
	chance := 1 - 0.05/float64(len(f.stops))
	worst, most := -1, math.Max(strangeLimit, squares.Within(chance, f.Free-1))
	for k, i := range f.stops {
		if s, ok := f.Strange(k, stops[i].least); ok && math.Abs(s) > most {
			worst, most = i, math.Abs(s)
		}
	}
	return worst
}

// weakest returns the place among the columns of the eccentricity that is least
// proved, 0 where all are.
func (f fitted) weakest() int {
	weak, least := 0, math.Max(eccentricity, squares.Within95(f.Free))
	for k := 1; k < len(f.columns); k++ {
		std, _ := f.Std(k)
		proof := 0.0
		if math.Abs(f.Coef[k]) > leastOff {
			proof = math.Abs(f.Coef[k]) / std // may be infinite: exact readings
		}
		if proof <= least {
			weak, least = k, proof
		}
	}
	return weak
}

// take keeps what a fit found.
func (l *law) take(f fitted, rows [][]float64, stops []mean) {
	for k, c := range f.columns {
		v := Value{Is: f.Coef[k] + 0, Known: true}
		v.Std, v.Judged = f.Std(k)
		*[]*Value{&l.common, &l.x, &l.y}[c] = v
	}
	l.noise.Is, l.noise.Known = f.Noise()
	for k, i := range f.stops {
		l.strange[i], l.judged[i] = f.Strange(k, stops[i].least)
	}
	if !l.noise.Known {
		return
	}
	for i, out := range l.out {
		if !out {
			continue
		}
		row := make([]float64, len(f.columns))
		for k, c := range f.columns {
			row[k] = rows[i][c]
		}
		away := stops[i].mean - l.says(rows[i])
		s := math.Max(l.noise.Is, stops[i].least) * math.Sqrt(1+f.Spread(row))
		l.strange[i], l.judged[i] = math.Copysign(math.Min(math.Abs(away)/s, squares.Certain), away), true
	}
}
