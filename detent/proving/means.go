package proving

import (
	"math"
	"slices"
)

// mean is what the readings of one stop come to.
type mean struct {
	stop, count int
	mean        float64 // of the residuals, play taken out
	sum         [3]float64
	squares     [3]float64
	n           [3]int  // by way, from Backwards
	least       float64 // standard error of the mean that repeated readings show; 0: none were
}

type meansOf struct {
	stops []mean // by stop
	play  Value
}

// means gathers the readings by stop and takes out the play: half of what the
// two ways differ by, over the stops that were measured from both.
func means(p Plate, readings []Reading) meansOf {
	var all meansOf
	at := map[int]int{}
	for _, r := range readings {
		if r.Stop < 0 || r.Stop >= len(p.Stops) || r.Way < Backwards || r.Way > Onwards {
			continue
		}
		i, known := at[r.Stop]
		if !known {
			i = len(all.stops)
			at[r.Stop] = i
			all.stops = append(all.stops, mean{stop: r.Stop})
		}
		m := &all.stops[i]
		m.sum[r.Way+1] += r.Residual
		m.squares[r.Way+1] += r.Residual * r.Residual
		m.n[r.Way+1]++
		m.count++
	}
	slices.SortFunc(all.stops, func(a, b mean) int { return a.stop - b.stop })
	once := spreadOf(all.stops)
	half, known := playOf(all.stops)
	all.play = half
	all.play.Is = math.Abs(half.Is)
	if !known {
		half.Is = 0
	}
	for i := range all.stops {
		m := &all.stops[i]
		m.mean = (m.sum[0] + m.sum[1] + m.sum[2] - half.Is*float64(m.n[2]-m.n[0])) / float64(m.count)
		m.least = once / math.Sqrt(float64(m.count))
	}
	return all
}

// spreadOf returns the standard error of one reading, from those that repeat
// another of the same stop and way; 0 where none does.
func spreadOf(stops []mean) float64 {
	sum, free := 0.0, 0
	for _, m := range stops {
		for w, n := range m.n {
			if n > 1 {
				sum += math.Max(0, m.squares[w]-m.sum[w]*m.sum[w]/float64(n))
				free += n - 1
			}
		}
	}
	if free == 0 {
		return 0
	}
	return math.Sqrt(sum / float64(free))
}

// bothWays reports whether a stop was measured from both sides.
func (m mean) bothWays() bool { return m.n[0] > 0 && m.n[2] > 0 }

// playOf returns half of what readings from one side exceed those from the
// other by.
func playOf(stops []mean) (Value, bool) {
	var halves []float64
	for _, m := range stops {
		if m.bothWays() {
			halves = append(halves, (m.sum[2]/float64(m.n[2])-m.sum[0]/float64(m.n[0]))/2)
		}
	}
	n := float64(len(halves))
	if n == 0 {
		return Value{}, false
	}
	v := Value{Known: true, Judged: n > 1}
	for _, h := range halves {
		v.Is += h / n
	}
	if v.Judged {
		for _, h := range halves {
			v.Std += (h - v.Is) * (h - v.Is)
		}
		v.Std = math.Sqrt(v.Std / (n - 1) / n)
	}
	return v, true
}
