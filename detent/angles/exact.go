package angles

import (
	"math/big"
	"strconv"

	"stopwright/detent/geom"
)

// exact returns an angle as the decimal it is shown as, so that a tenth is a
// tenth and sums of steps come out as a person reckons them.
func exact(a geom.Angle) *big.Rat {
	r, ok := new(big.Rat).SetString(strconv.FormatFloat(a.Degrees(), 'g', -1, 64))
	if !ok {
		return new(big.Rat) // NaN or infinite: callers have refused those
	}
	return r
}

// along returns from + (to-from)·i/n, rounded once.
func along(from, to *big.Rat, i, n int64) geom.Angle {
	r := new(big.Rat).Sub(to, from)
	r.Mul(r, big.NewRat(i, n))
	x, _ := r.Add(r, from).Float64()
	return geom.Angle(x)
}
