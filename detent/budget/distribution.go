package budget

import (
	"cmp"
	"math"
	"slices"
)

// Distribution is the distribution of a [Sum], symmetric about 0. Make one with
// [Sum.Distribution]; it does not change.
//
// It is held as a Fourier series. The characteristic function of a sum is the
// product of its terms', and for a sum that cannot go beyond ±W its values at
// kπ/W are the coefficients of the density's cosine series on that span: exact
// but for where the series is cut off.
type Distribution struct {
	reach float64   // W
	waves []float64 // of the characteristic function, at kπ/W for k from 1
}

const (
	// cutoff is how small the coefficients have become where the series ends:
	// what is left out moves a probability by less.
	cutoff = 1e-8
	// mostWaves ends it anyway. Only a sum of one large term and very small
	// ones gets there; its probabilities are then true to 1e-6.
	mostWaves = 1000
)

// Distribution works out the distribution of the sum.
func (s Sum) Distribution() Distribution {
	terms := slices.Clone(s)
	reach := 0.0
	for i := range terms {
		terms[i].Size = math.Abs(terms[i].Size)
		reach += terms[i].Size * terms[i].Shape.reach()
	}
	d := Distribution{reach: reach}
	if reach == 0 {
		return d
	}
	// Terms that are alike are worked out once.
	slices.SortFunc(terms, func(a, b Term) int {
		return cmp.Or(cmp.Compare(a.Shape, b.Shape), cmp.Compare(a.Size, b.Size))
	})
	for k := 1; k <= mostWaves; k++ {
		z := float64(k) * math.Pi / reach
		value, ceiling := 1.0, 1.0
		var wave, below float64
		for i, t := range terms {
			if i == 0 || t != terms[i-1] {
				wave, below = t.Shape.wave(t.Size*z), t.Shape.ceiling(t.Size*z)
			}
			value *= wave
			ceiling *= below
		}
		d.waves = append(d.waves, value)
		if ceiling < cutoff {
			break
		}
	}
	return d
}

// Within returns the probability that the error is no larger than x either way.
func (d Distribution) Within(x float64) float64 {
	switch {
	case x < 0:
		return 0
	case x >= d.reach:
		return 1
	}
	p, _ := d.at(x)
	return min(max(p, 0), 1)
}

// Density returns the probability density at x. It is 0 beyond the reach, and
// where there is no error at all.
func (d Distribution) Density(x float64) float64 {
	if math.Abs(x) >= d.reach {
		return 0
	}
	_, density := d.at(math.Abs(x))
	return max(density, 0)
}

// at returns the probability of being within ±x, and the density there. The
// sines and cosines of the multiples of an angle follow from those of the angle
// by turning on.
func (d Distribution) at(x float64) (within, density float64) {
	sin1, cos1 := math.Sincos(math.Pi * x / d.reach)
	sin, cos := 0.0, 1.0
	within, density = x/d.reach, 0.5
	for k, c := range d.waves {
		sin, cos = sin*cos1+cos*sin1, cos*cos1-sin*sin1
		within += 2 / math.Pi * c * sin / float64(k+1)
		density += c * cos
	}
	return within, density / d.reach
}

// HalfWidth returns how far to either side of 0 the share p (0 to 1) of all
// errors lies: the interval that is both the shortest and symmetric, since the
// distribution is. Outside its range p is taken at the end of it.
func (d Distribution) HalfWidth(p float64) float64 {
	if p <= 0 || d.reach == 0 {
		return 0
	}
	low, high := 0.0, d.reach
	x := d.reach / 2
	// Newton's steps where they stay between the bounds, halving where not.
	for range 60 {
		within, density := d.at(x)
		if within < p {
			low = x
		} else {
			high = x
		}
		next := x + (p-within)/(2*density)
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		if math.Abs(next-x) <= 1e-12*d.reach {
			return next
		}
		x = next
	}
	return x
}
