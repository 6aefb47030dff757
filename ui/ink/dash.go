package ink

import "math"

// stripes is a pattern that repeats along a line: parts inked and parts left
// blank in turn. The zero stripes are ink throughout.
type stripes struct {
	pattern []float64 // drawn, left, drawn … before scaling, px
	scale   float64
	period  float64 // px, scaled
	rate    float64 // 1/period: this is asked for at every pixel, and dividing is slow
	ink     float64 // inked px in a period
}

// newStripes reads a pattern; one that has a negative or infinite part, or no
// length or no blank at all, is ink throughout.
func newStripes(pattern []float64) stripes {
	p := stripes{pattern: pattern, scale: 1}
	for i, v := range pattern {
		if !placeable(v) || v < 0 {
			return stripes{}
		}
		p.period += v
		if i%2 == 0 {
			p.ink += v
		}
	}
	if p.ink == p.period {
		return stripes{}
	}
	p.rate = 1 / p.period
	return p
}

// broken reports whether the pattern has blanks.
func (p *stripes) broken() bool { return p.period > 0 }

// first returns the length of the first inked part of a broken pattern, px.
func (p *stripes) first() float64 { return p.pattern[0] * p.scale }

// stretch scales the pattern.
func (p *stripes) stretch(k float64) {
	p.scale, p.period, p.rate, p.ink = p.scale*k, p.period*k, p.rate/k, p.ink*k
}

// dashesRound returns the pattern scaled so that a whole number of periods fills
// a closed line. A line too short for one period is unbroken.
func dashesRound(dash []float64, length float64) stripes {
	p := newStripes(dash)
	if !p.broken() {
		return p
	}
	n := math.Round(length / p.period)
	if n < 1 {
		return stripes{}
	}
	p.stretch(length / (n * p.period))
	return p
}

// dashesBetween returns the pattern scaled so that an open line begins and ends
// with the whole first dash, as a draughtsman draws it, so that its ends and
// corners are marked. A line too short for that is unbroken.
func dashesBetween(dash []float64, length float64) stripes {
	p := newStripes(dash)
	if !p.broken() {
		return p
	}
	n := math.Round((length - p.first()) / p.period)
	if n < 1 {
		return stripes{}
	}
	p.stretch(length / (n*p.period + p.first()))
	return p
}

// upTo returns how much is inked from 0 to s, px; negative for s below 0.
func (p *stripes) upTo(s float64) float64 {
	n := math.Floor(s * p.rate)
	rest := s - n*p.period
	sum := n * p.ink
	for i, v := range p.pattern {
		v *= p.scale
		if i%2 == 0 {
			sum += min(v, rest)
		}
		if rest -= v; rest <= 0 {
			break
		}
	}
	return sum
}

// along says which parts of a stroke are inked, by the distance s along it and
// t across it (px): those between its ends, in stripes.
type along struct {
	lo, hi float64 // the ends
	mitre  float64 // by how much each end draws in for each px across
	square Px      // the unit vector square to the stripes, X along and Y across
	stripes
}

// cover returns the inked share of a pixel that is as long as given along s: 1,
// but more or less where s is measured on the inside or outside of a bend.
func (a *along) cover(s, t, pixel float64) float64 {
	from := max(s-pixel/2, a.lo+a.mitre*t)
	to := min(s+pixel/2, a.hi-a.mitre*t)
	length := to - from
	if length <= 0 {
		return 0
	}
	if a.broken() {
		mid := (from+to)/2*a.square.X + t*a.square.Y
		length = a.upTo(mid+length/2) - a.upTo(mid-length/2)
	}
	return length / pixel
}

// upright and leaning are square to dashes and to hatching.
var (
	upright = Px{1, 0}
	leaning = Px{math.Sqrt2 / 2, -math.Sqrt2 / 2}
)
