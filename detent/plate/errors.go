package plate

import (
	"math"
	"slices"

	"stopwright/detent/budget"
	"stopwright/detent/geom"
)

// Cause is what makes a stop miss its angle.
type Cause int

// The causes.
const (
	SeatPlace  Cause = iota // where the seat's centre lands
	CatchPlace              // where the catch's centre lands
	GuidePlay               // how far the pivot or the collar lets the table lie off
	BallRest                // play of the ball, or how far off friction lets it rest
	Causes
)

var causeNames = [...]string{"seat", "catch", "guide", "rest"}

// String returns the cause as a word fit for a key.
func (c Cause) String() string { return causeNames[c] }

// ErrorPart is one independent error of a stop: its cause, and how it is spread,
// in degrees of the table's turn.
type ErrorPart struct {
	Cause Cause
	budget.Term
}

// StopError is how far off a stop may be, to either side.
type StopError struct {
	Parts      []ErrorPart
	Worst      geom.Angle
	Std        geom.Angle
	Interval95 geom.Angle // holds 95 of 100 plates
}

// Sum returns the parts without their causes.
func (e StopError) Sum() budget.Sum {
	s := make(budget.Sum, len(e.Parts))
	for i, p := range e.Parts {
		s[i] = p.Term
	}
	return s
}

// Share returns which part of the variance, 0 to 1, has a cause.
func (e StopError) Share(c Cause) float64 {
	s, total := e.Sum(), 0.0
	for i, p := range e.Parts {
		if p.Cause == c {
			total += s.Share(i)
		}
	}
	return total
}

// newStopError works out what the parts come to.
func newStopError(parts []ErrorPart) StopError {
	e := StopError{Parts: parts}
	s := e.Sum()
	e.Worst, e.Std = geom.Angle(s.Worst()), geom.Angle(s.Std())
	e.Interval95 = geom.Angle(s.Distribution().HalfWidth(0.95))
	return e
}

// pull is how one catch moves the table: by Turn degrees for every mm that seat
// or catch lie off along the ring.
type pull struct {
	catch int
	turn  float64
}

// leverage is how the catches that drop together turn errors of place into
// errors of angle.
type leverage struct {
	pulls []pull     // by their catches' places
	seats []pull     // by their seats': catches that lie on each other have one for both
	guide float64    // degrees for every mm that the table lies off the pivot
	rest  geom.Angle // how far off the table may rest, to either side
}

// leverageOf works out one set of catches. Catches that drop together settle
// between what each of them wants as springs of one stiffness do, by least
// squares: with arms R, the turn is ΣR·off/ΣR². For a single catch that is
// off/R, and for two across from each other the mean, on which the table's own
// shift has no effect.
func (pl *Plate) leverageOf(h Hold) leverage {
	squares := 0.0
	for _, c := range h.Catches {
		r := pl.Plan.Catches[c].Radius
		squares += r * r
	}
	var l leverage
	var x, y float64
	for _, c := range h.Catches {
		place := pl.Plan.Catches[c]
		turn := geom.FromRadians(place.Radius / squares).Degrees()
		l.pulls = append(l.pulls, pull{c, turn})
		if k := pl.holeOf(l, c); k >= 0 {
			l.seats[k].turn += turn
		} else {
			l.seats = append(l.seats, pull{c, turn})
		}
		sin, cos := geom.Angle(place.Azimuth).SinCos()
		x, y = x+turn*cos, y-turn*sin
		if home, ok := pl.Clicks[c].Home(); ok {
			l.rest = max(l.rest, home.PlayAngle)
		}
	}
	if h.HasDead {
		l.rest = max(l.rest, h.Dead)
	}
	if l.guide = math.Hypot(x, y); l.guide < balanced*l.pulls[0].turn {
		l.guide = 0
	}
	return l
}

// holeOf returns which of a leverage's seats is also that of a catch, -1 if none.
func (pl *Plate) holeOf(l leverage, catch int) int {
	at := func(c int) geom.Point {
		place := pl.Plan.Catches[c]
		return geom.Polar(place.Radius, geom.Angle(place.Azimuth))
	}
	return slices.IndexFunc(l.seats, func(p pull) bool {
		return p.catch == catch || at(p.catch).Distance(at(catch)) <= Coincide
	})
}

// balanced is the share of one catch's pull below which what is left of several
// is rounding: they stand evenly round the plate.
const balanced = 1e-12

// parts lists what is off at a stop. Parts of no size are left out.
func (pl *Plate) parts(l leverage) []ErrorPart {
	list := partList{}
	for _, p := range l.seats {
		list.add(SeatPlace, budget.Disc, p.turn*pl.Plan.Shop.SeatError)
	}
	for _, p := range l.pulls {
		list.add(CatchPlace, budget.Disc, p.turn*pl.Plan.Shop.CatchError)
	}
	pl.addRest(&list, l)
	return list.parts
}

// addRest adds what is off anew every time the table comes to rest.
func (pl *Plate) addRest(list *partList, l leverage) {
	list.add(GuidePlay, budget.Disc, l.guide*TableShift(pl.Plan))
	list.add(BallRest, budget.Rectangular, l.rest.Degrees())
}

type partList struct{ parts []ErrorPart }

func (l *partList) add(c Cause, shape budget.Shape, degrees float64) {
	if degrees != 0 {
		l.parts = append(l.parts, ErrorPart{c, budget.Term{Shape: shape, Size: math.Abs(degrees)}})
	}
}
