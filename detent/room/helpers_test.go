package room

import (
	"context"
	"iter"
	"math/rand/v2"

	"stopwright/detent/geom"
)

// tiny (mm and degrees) is the rounding of a few turns and chords at some
// 100 mm.
const tiny = 1e-9

// head is a problem on a plate with room for rings from 15 to 111 mm.
func head(stops ...geom.Angle) Problem {
	p := Problem{Stops: stops, From: -60, To: 60, Mouth: 4.5, Web: 2, Pocket: 11.5, Own: 90}
	for r := 15.0; r <= 111; r += RadiusStep {
		p.Radii = append(p.Radii, r)
	}
	return p
}

// both lists angles on both sides of 0.
func both(angles ...geom.Angle) []geom.Angle {
	out := []geom.Angle{}
	for _, a := range angles {
		out = append(out, a)
		if a != 0 {
			out = append(out, -a)
		}
	}
	return out
}

// divisions lists n equal divisions of a full turn.
func divisions(n int) []geom.Angle {
	out := make([]geom.Angle, n)
	for i := range out {
		out[i] = geom.FullTurn * geom.Angle(i) / geom.Angle(n)
	}
	return out
}

// first returns the first of a sequence.
func first(s iter.Seq[Answer]) (Answer, bool) {
	for a := range s {
		return a, true
	}
	return Answer{}, false
}

// fewest returns the first answer with the fewest catches.
func fewest(find func(context.Context, int) iter.Seq[Answer], ctx context.Context) (Answer, bool) {
	for k := 2; k <= MaxCatches; k++ {
		if a, ok := first(find(ctx, k)); ok {
			return a, true
		}
	}
	return Answer{}, false
}

// randomStops draws n stops in order, on a grid of hundredths of a degree so
// that equal gaps are common, from a range of degrees.
func randomStops(r *rand.Rand, n int, from, to float64) []geom.Angle {
	var out []geom.Angle
	for len(out) < n {
		a := geom.Angle(from) + geom.Angle(r.IntN(int((to-from)*4)))/4
		out = append(out, a)
	}
	return out
}

// everyDeal calls yield with every way to deal n stops to k catches, until it
// returns false.
func everyDeal(n, k int, yield func(of []int) bool) {
	of := make([]int, n)
	for {
		if !yield(of) {
			return
		}
		i := 0
		for ; i < n && of[i] == k-1; i++ {
			of[i] = 0
		}
		if i == n {
			return
		}
		of[i]++
	}
}
