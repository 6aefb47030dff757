package squares

import "math"

// Within95 returns how many standard errors to either side hold the truth 95
// times in 100, when the standard error itself was judged from so many free
// readings: the two-sided point of Student's distribution. With 1 free reading
// it is 12.7, with 4 it is 2.8, with very many 1.96. It is infinite for none.
func Within95(free int) float64 { return Within(0.95, free) }

// Within is Within95 for another share of the times, above 0 and at most
// 0.999999.
func Within(share float64, free int) float64 {
	if free < 1 {
		return math.Inf(1)
	}
	lo, hi := 0.0, 1e6 // above the 6·10^5 of one free reading at the greatest share
	for range 100 {
		mid := (lo + hi) / 2
		if inside(mid, free) < share {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

// manyFree is so many free readings that Student's distribution is the normal
// one to a few parts in ten thousand.
const manyFree = 2000

// inside returns the chance that Student's t lies within ±t, by the finite sums
// of Abramowitz and Stegun, 26.7.3 and 26.7.4.
func inside(t float64, free int) float64 {
	if free > manyFree {
		return math.Erf(t / math.Sqrt2)
	}
	theta := math.Atan(t / math.Sqrt(float64(free)))
	sin, cos := math.Sincos(theta)
	term, sum := 1.0, 0.0
	if free%2 == 0 {
		for k := 0; k < free; k += 2 {
			sum += term
			term *= cos * cos * float64(k+1) / float64(k+2)
		}
		return sin * sum
	}
	term = cos
	for k := 1; k < free; k += 2 {
		sum += term
		term *= cos * cos * float64(k+1) / float64(k+2)
	}
	return 2 / math.Pi * (theta + sin*sum)
}
