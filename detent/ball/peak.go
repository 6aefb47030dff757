package ball

// looks is how many steps a range is searched in. A force over an edge falls,
// rises and falls again at most, as the angle's fall and the spring's growing
// push take turns; 16 steps tell those apart.
const looks = 16

// narrowings by the golden ratio bring a step down to a millionth of itself.
// Near its top the force is level, so that it is then right to a part in 1e12.
const narrowings = 30

// peak returns the greatest value of f from lo to hi, and where.
func peak(lo, hi float64, f func(float64) float64) (value, at float64) {
	value, at = f(lo), lo
	step := (hi - lo) / looks
	for k := 1; k <= looks; k++ {
		if s := lo + float64(k)*step; f(s) > value {
			value, at = f(s), s
		}
	}
	const golden = 0.6180339887498949
	a, b := max(lo, at-step), min(hi, at+step)
	p, q := b-golden*(b-a), a+golden*(b-a)
	fp, fq := f(p), f(q)
	for range narrowings {
		if fp > fq {
			b, q, fq = q, p, fp
			p = b - golden*(b-a)
			fp = f(p)
		} else {
			a, p, fp = p, q, fq
			q = a + golden*(b-a)
			fq = f(q)
		}
	}
	if s := (a + b) / 2; f(s) > value {
		value, at = f(s), s
	}
	return value, at
}
