package geom

import "math/big"

// oracleBits is the working precision of the oracle: four times that of a
// float64, so that its own rounding never shows.
const oracleBits = 212

// bigSinCos returns sine and cosine of an angle in degrees from their power
// series in wide arithmetic. It shares nothing with the code under test: no
// reduction to a quarter turn, no call of package math.
func bigSinCos(degrees float64) (sin, cos float64) {
	x := wide().SetFloat64(degrees)
	x.Mul(x, bigPi())
	x.Quo(x, wide().SetInt64(180))
	square := wide().Mul(x, x)

	s, c := wide(), wide()
	term := wide().SetInt64(1) // x^k / k!, with the series' alternating sign
	for k := int64(0); k < 200; k += 2 {
		c.Add(c, term)
		odd := wide().Mul(term, x)
		s.Add(s, odd.Quo(odd, wide().SetInt64(k+1)))
		term.Mul(term, square)
		term.Quo(term, wide().SetInt64((k+1)*(k+2)))
		term.Neg(term)
	}
	sin, _ = s.Float64()
	cos, _ = c.Float64()
	return sin, cos
}

// bigPi returns pi by Machin's formula, 16 atan(1/5) - 4 atan(1/239).
func bigPi() *big.Float {
	a := bigAtanInverse(5)
	b := bigAtanInverse(239)
	a.Mul(a, wide().SetInt64(16))
	b.Mul(b, wide().SetInt64(4))
	return a.Sub(a, b)
}

// bigAtanInverse returns atan(1/n) from its power series.
func bigAtanInverse(n int64) *big.Float {
	power := wide().Quo(wide().SetInt64(1), wide().SetInt64(n))
	square := wide().SetInt64(n * n)
	sum := wide()
	for k := int64(1); k < 200; k += 2 {
		term := wide().Quo(power, wide().SetInt64(k))
		if k%4 == 3 {
			term.Neg(term)
		}
		sum.Add(sum, term)
		power.Quo(power, square)
	}
	return sum
}

func wide() *big.Float { return new(big.Float).SetPrec(oracleBits) }
