package ball

import (
	"math"

	"stopwright/detent/geom"
)

// DeadBand is where a ball comes to rest in a seat that its track misses.
type DeadBand struct {
	// Rests is how far along the track, to either side of home, friction and
	// drag can hold the ball, mm; RestsAngle is the table's turn for it. 0 for
	// a ball that comes home exactly. The play is part of it.
	Rests      float64
	RestsAngle geom.Angle

	// Pulls is the farthest from home at which the ball still pulls itself
	// inwards, mm; PullsAngle is the table's turn for it. 0 where it nowhere
	// does: then Rests reaches to the mouth.
	Pulls      float64
	PullsAngle geom.Angle
}

// DeadBand returns where the ball rests if seat and track miss each other
// sideways (mm, either way) and the table resists turning with drag (N·m, 0 or
// more). It is false unless the ball clicks, and where the track misses the
// mouth.
//
// At t along the track the ball stands s = √(miss² + t²) from the seat's axis,
// on a slope of p = tan α·t/s. About to slide home it is held by the spring F
// from above, by its housing from the side, by the seat's push N at the angle α
// and by friction µN against the sliding. Up and down,
// N(cos α + µp/√(1+p²)) = F; along the track there is N(p·cos α - µ/√(1+p²))
// left to overcome the drag. Without a miss that is F·tan(α-φ).
func (c *Click) DeadBand(miss, drag float64) (DeadBand, bool) {
	q := math.Abs(miss)
	if c.state != Clicks || q >= c.seat.mouth {
		return DeadBand{}, false
	}
	b := bowl{Click: c, q: q, drag: drag / c.arm}
	rests, pulls := b.search()
	return DeadBand{
		Rests: rests, RestsAngle: c.turn(rests),
		Pulls: pulls, PullsAngle: c.turn(pulls),
	}, true
}

// bowl is the seat along a track that misses its axis.
type bowl struct {
	*Click
	q    float64 // the miss, mm
	drag float64 // at the ring, N
}

// along returns how far along the track the ball is at an offset from the axis.
func (b *bowl) along(s float64) float64 {
	return math.Sqrt(max((s-b.q)*(s+b.q), 0))
}

// pull returns the force (N) by which the ball at t along the track, in a span,
// is pulled home beyond what drag holds. Where it is over 0 the ball slides.
func (b *bowl) pull(span int, t float64) float64 {
	s := math.Hypot(b.q, t)
	c := b.seat.inSpan(span, s)
	p := c.sin / c.cos
	if b.q > 0 {
		p *= t / s
	}
	rub := b.setup.Friction / math.Sqrt(1+p*p)
	push := b.force(c.z) / (c.cos + rub*p)
	return push*(p*c.cos-rub) - b.drag
}

// search looks along the track for where the ball slides. Within a span the
// pull rises from home, then falls towards the mouth, so that its peak parts
// where the ball rests inside from where it rests outside.
func (b *bowl) search() (rests, pulls float64) {
	rests = b.along(b.seat.mouth)
	for i := range b.seat.spans {
		from, to := b.along(max(b.seat.spans[i].from, b.play)), b.along(b.seat.end(i))
		if from >= to {
			continue
		}
		pull := func(t float64) float64 { return b.pull(i, t) }
		top, at := peak(from, to, pull)
		if top <= 0 {
			continue
		}
		if pulls == 0 { // the first such span
			rests = edge(from, at, pull)
		}
		pulls = edge(to, at, pull)
	}
	return rests, pulls
}

// edge returns where, between an end of a span and the peak of the pull, the
// ball begins to slide: at the end itself if it slides there.
func edge(end, peak float64, pull func(float64) float64) float64 {
	if pull(end) > 0 {
		return end
	}
	rests, slides := end, peak
	for range 52 { // as many halvings as a number has binary digits
		if t := (rests + slides) / 2; pull(t) > 0 {
			slides = t
		} else {
			rests = t
		}
	}
	return slides
}
