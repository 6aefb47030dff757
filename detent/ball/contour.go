package ball

import (
	"errors"
	"math"
)

// Contour is a seat as the ball's centre feels it: how high the centre stands
// at every sideways offset from the seat's axis. It does not change once made,
// and may be used from several goroutines.
type Contour struct {
	r      float64 // ball
	mouth  float64
	pieces []piece
	spans  []span // from the axis to the mouth, without gaps
}

// span is a range of offsets over which the same piece is touched, up to where
// the next span begins.
type span struct {
	from  float64
	piece int // -1: nothing is touched
}

// NewContour returns the contour of a seat for a ball of a diameter (0.001 to
// 100,000 mm). It fails where a value is out of the range its comment gives,
// and names all that are.
func NewContour(ballDiameter float64, s Seat) (*Contour, error) {
	if err := errors.Join(check(size("ball diameter", ballDiameter)), s.check()); err != nil {
		return nil, err
	}
	c := &Contour{r: ballDiameter / 2, mouth: s.Mouth()}
	ps := pieces{list: make([]piece, 0, 6), r: c.r, relief: s.Relief / 2}
	if s.Form == Countersunk {
		ps.countersunk(s)
	} else {
		ps.drilled(s)
	}
	c.pieces = ps.list
	c.trace()
	return c, nil
}

// Mouth returns the radius of the seat at the face, mm.
func (c *Contour) Mouth() float64 { return c.mouth }

// At returns where the ball lies when its centre is offset (mm, either way)
// from the seat's axis and nothing but the seat holds it up. The height is
// continuous, unless the ball falls in. The angle jumps where the ball passes
// from one thing to another; there it is that of the side away from the axis.
// It is false where the ball touches nothing: see [Contour.FallsIn].
func (c *Contour) At(offset float64) (Contact, bool) {
	s := math.Abs(offset)
	t := c.touch(s)
	if t.rest == Nothing {
		return Contact{}, false
	}
	return t.contact(s, c.r), true
}

// touch returns the contact at s, 0 or more.
func (c *Contour) touch(s float64) touch {
	if !(s < c.mouth) {
		return touch{Face, c.r, 0, 1}
	}
	i := len(c.spans) - 1
	for i > 0 && c.spans[i].from > s {
		i--
	}
	return c.inSpan(i, s)
}

// inSpan returns the contact at s, which lies in the span or, through rounding,
// just beside it.
func (c *Contour) inSpan(i int, s float64) touch {
	if c.spans[i].piece < 0 {
		return touch{rest: Nothing}
	}
	return c.pieces[c.spans[i].piece].at(s, c.r)
}

// end returns where a span ends.
func (c *Contour) end(i int) float64 {
	if i+1 < len(c.spans) {
		return c.spans[i+1].from
	}
	return c.mouth
}

// FallsIn reports whether the seat swallows the ball: somewhere between home
// and mouth a wall as wide as the ball or wider stands beside its equator, and
// nothing on it can lift the ball out. A sharp-edged hole does where its
// diameter reaches the ball's, unless its floor keeps the centre over the edge.
func (c *Contour) FallsIn() bool {
	for _, s := range c.spans {
		if s.piece < 0 {
			return true
		}
		if p := &c.pieces[s.piece]; !p.slope && p.rho-s.from >= c.r-slack {
			return true
		}
	}
	return false
}

// FloorClearance returns how much nearer the floor could be before it lifts the
// ball off what it rests on at home, mm; where negative, the floor holds the
// ball up by as much, and a seat that much deeper frees it. The floor is the
// drill's or the nose's, with the edge of a relief hole in it. It is false for
// a seat without a floor and for one that holds the ball by its floor only.
func (c *Contour) FloorClearance() (float64, bool) {
	wall, floor := math.Inf(-1), math.Inf(-1)
	for i := range c.pieces {
		p := &c.pieces[i]
		if p.from > 0 || p.to < 0 {
			continue
		}
		z := p.at(0, c.r).z
		if p.floor {
			floor = max(floor, z)
		} else {
			wall = max(wall, z)
		}
	}
	if math.IsInf(wall, 0) || math.IsInf(floor, 0) {
		return 0, false
	}
	return wall - floor, true
}
