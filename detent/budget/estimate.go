package budget

import "math"

// Interval is a range of values.
type Interval struct{ Low, High float64 }

// Estimate is what the trials say of one output.
type Estimate struct {
	Mean float64
	Std  float64 // standard uncertainty
	histogram
}

// coverage is the share of the trials that an interval holds.
const coverage = 0.95

// Symmetric returns the interval with 2.5 % of the trials to either side of it:
// the probabilistically symmetric one of JCGM 101 7.7.2.
func (e Estimate) Symmetric() Interval {
	return Interval{e.Quantile((1 - coverage) / 2), e.Quantile((1 + coverage) / 2)}
}

// Shortest returns the shortest interval that holds 95 % of the trials, JCGM 101
// 7.7.4. Among equals it is the lowest.
func (e Estimate) Shortest() Interval { return e.shortest(coverage) }

// HalfWidth returns half the width of the symmetric interval.
func (e Estimate) HalfWidth() float64 {
	s := e.Symmetric()
	return (s.High - s.Low) / 2
}

// binCount is how many bins an output's histogram has. Within a bin trials
// count as evenly spread, which puts a quantile off by less than a bin's square:
// far less than the trials' own scatter.
const (
	binCount   = 4096
	fewestBins = 256
	mostBins   = 1 << 22 // of all outputs together: 32 MB
)

// binsFor returns how many bins each of n histograms has: fewer where there are
// many, so that they fit into memory.
func binsFor(n int) int {
	bins := binCount
	for bins > fewestBins && bins*n > mostBins {
		bins /= 2
	}
	return bins
}

// histogram counts values in bins of equal width.
type histogram struct {
	low, width float64
	counts     []uint32
	total      uint64
}

// newHistogram spans a range that a few trials have had, with a sixteenth more
// at either end. What falls outside later is counted in the end bins: that can
// only be a share that no interval depends on.
func newHistogram(low, high float64, bins int) histogram {
	margin := (high - low) / 16
	low, high = low-margin, high+margin
	return histogram{low: low, width: (high - low) / float64(bins), counts: make([]uint32, bins)}
}

// count adds a column of values.
func (h *histogram) count(column []float64) {
	h.total += uint64(len(column))
	if h.width == 0 {
		h.counts[0] += uint32(len(column))
		return
	}
	low, scale, last := h.low, 1/h.width, len(h.counts)-1
	for _, x := range column {
		i := int((x - low) * scale)
		h.counts[max(0, min(i, last))]++
	}
}

// add adds what another histogram of the same bins has counted.
func (h *histogram) add(other histogram) {
	h.total += other.total
	for i, n := range other.counts {
		h.counts[i] += n
	}
}

// Quantile returns the value that a share p (0 to 1) of the trials stay below.
func (h *histogram) Quantile(p float64) float64 {
	want := p * float64(h.total)
	below := 0.0
	for i, n := range h.counts {
		here := float64(n)
		if here > 0 && below+here >= want {
			return h.low + h.width*(float64(i)+max(0, want-below)/here)
		}
		below += here
	}
	return h.low + h.width*float64(len(h.counts))
}

// Below returns the share of the trials below x, 0 to 1.
func (h *histogram) Below(x float64) float64 {
	if h.width == 0 {
		if x < h.low {
			return 0
		}
		return 1
	}
	at := (x - h.low) / h.width
	below := 0.0
	for i, n := range h.counts {
		below += float64(n) * min(max(at-float64(i), 0), 1)
	}
	return below / float64(h.total)
}

// shortest goes through every bin as the interval's beginning, with its end
// running ahead.
func (h *histogram) shortest(p float64) Interval {
	want := p * float64(h.total)
	best := Interval{h.low, h.low + h.width*float64(len(h.counts))}
	held, end := 0.0, 0 // held: in the bins from begin up to end, end not counted
	for begin, n := range h.counts {
		for end < len(h.counts) && held+float64(h.counts[end]) < want {
			held += float64(h.counts[end])
			end++
		}
		if end == len(h.counts) {
			break
		}
		high := h.low + h.width*(float64(end)+(want-held)/float64(h.counts[end]))
		if low := h.low + h.width*float64(begin); high-low < best.High-best.Low {
			best = Interval{low, high}
		}
		held -= float64(n)
	}
	return best
}

// Bars returns the histogram in n bars of equal width (n at least 1), as
// densities, from the lowest trial to the highest: for a picture.
func (h *histogram) Bars(n int) (low, width float64, density []float64) {
	density = make([]float64, n)
	if h.width == 0 || h.total == 0 {
		return h.low, 0, density
	}
	per := float64(len(h.counts)) / float64(n)
	width = h.width * per
	for i, count := range h.counts {
		bar := min(int((float64(i)+0.5)/per), n-1)
		density[bar] += float64(count) / (float64(h.total) * width)
	}
	return h.low, width, density
}

// moments are the mean and the sum of squared differences from it of a number of
// values.
type moments struct{ n, mean, squares float64 }

// momentsOf goes through a column twice, so that nothing is lost where the mean
// is far larger than the differences.
func momentsOf(column []float64) moments {
	sum := 0.0
	for _, x := range column {
		sum += x
	}
	m := moments{n: float64(len(column))}
	m.mean = sum / m.n
	for _, x := range column {
		m.squares += (x - m.mean) * (x - m.mean)
	}
	return m
}

// plus returns the moments of two sets together (Chan, Golub and LeVeque, 1979).
func (m moments) plus(o moments) moments {
	n := m.n + o.n
	if n == 0 {
		return m
	}
	d := o.mean - m.mean
	return moments{n, m.mean + d*o.n/n, m.squares + o.squares + d*d*m.n*o.n/n}
}

// std returns the standard deviation, for n-1.
func (m moments) std() float64 {
	if m.n < 2 {
		return 0
	}
	return math.Sqrt(m.squares / (m.n - 1))
}
