package scale

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// What stands on a scale, mm from its edge, for a table of usual size; smaller
// on a small one.
const (
	degreeTick  = 4.0
	fiveTick    = 6.0
	tenTick     = 8.0
	halfTick    = 3.0
	quarterTick = 2.0
	numberSize  = 2.5
	numberMid   = tenTick + 1.2 + numberSize/2
	stopTip     = numberMid + numberSize/2 + 1
	stopFoot    = stopTip + 2.4
	stopHalf    = 0.9 // half the width of a stop's mark
	labelFrom   = stopFoot + 1
	labelSize   = 2.2
	labelMost   = 34.0
	rimMargin   = 2.0

	vernierGap   = 0.5 // rim to vernier, for the table to turn
	vernierTick  = 4.0
	vernierFive  = 6.0
	vernierWidth = 16.0
	vernierEdge  = 4.0 // past its last line
)

// usual is the least radius of a table on which marks have their usual size, mm.
const usual = 60.0

// size returns the factor by which marks are smaller on a small table.
func (d dial) size() float64 { return math.Min(1, d.radius/usual) }

// tick returns the length of a graduation, mm at usual size: the rounder its
// number, the longer.
func tick(reading float64) float64 {
	switch whole := func(of float64) bool { return math.Mod(reading, of) == 0 }; {
	case whole(10):
		return tenTick
	case whole(5):
		return fiveTick
	case whole(1):
		return degreeTick
	case whole(0.5):
		return halfTick
	}
	return quarterTick
}

// numbered reports whether a graduation bears its number.
func numbered(reading float64) bool { return math.Mod(reading, 10) == 0 }

// number returns a graduation's number, as it is written in the language of the
// sheets.
func (d dial) number(reading float64) string { return d.words.Decimal(measure.Trim(reading, 2)) }

// stop is a stop as it is marked.
type stop struct {
	reading float64
	label   string // "": none
}

// engraved returns what is engraved beside a stop, the best first: its label if
// it fits a width whole, mm, and its angle.
func (d dial) engraved(s stop, size, width float64) []string {
	angle := d.number(s.reading)
	if s.label == "" || drawing.StrokeWidth(s.label, size) > width {
		return []string{angle}
	}
	return []string{s.label, angle}
}

// stops lists the plan's stops, numbered as the graduations are.
func (d dial) stops() []stop {
	var out []stop
	for _, s := range d.plate.Stops {
		out = append(out, stop{d.wrapped(s.Angle.Degrees()), s.Label})
	}
	return out
}

// wrapped returns a reading as the graduations count it, where they go right
// round and a stop lies beyond them.
func (d dial) wrapped(reading float64) float64 {
	if !d.whole {
		return reading
	}
	lo := d.reading(d.lo) - d.vernier.Step.Degrees()/2
	return lo + geom.Angle(reading-lo).Turn().Degrees()
}

// vernierMark is one line of the vernier.
type vernierMark struct {
	at     geom.Angle // from the index, the way numbers grow; negative on the other side
	length float64    // mm at usual size
	number string     // "": none
}

// vernierMarks lists the lines of the vernier on the sides that the travel has.
func (d dial) vernierMarks() []vernierMark {
	v := d.vernier
	all := []vernierMark{{0, tenTick, "0"}}
	for k := 1; k <= v.Lines; k++ {
		m := vernierMark{v.Line(k), vernierTick, ""}
		if name, long := v.name(k); long {
			m.length, m.number = vernierFive, name
		}
		if d.plus {
			all = append(all, m)
		}
		if m.at = -m.at; d.minus {
			all = append(all, m)
		}
	}
	return all
}

// name returns the number at line k, in tenths of a degree or in minutes, and
// whether it bears one: every fifth tenth, every quarter of a degree.
func (v Vernier) name(k int) (string, bool) {
	value := v.Value(k).Degrees()
	tenths, minutes := value*10, value*60
	if whole(v.Step.Degrees() * 10 / float64(v.Lines)) {
		return measure.Trim(tenths, 0), whole(tenths / 5)
	}
	return measure.Trim(minutes, 0), whole(minutes / 15)
}

// whole reports whether a number is one but for rounding.
func whole(x float64) bool { return math.Abs(x-math.Round(x)) < 1e-9 }
