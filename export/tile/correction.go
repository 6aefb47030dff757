package tile

import (
	"math"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// The lengths of the two bars on every sheet, mm: the longest round ones that
// fit on each paper.
const (
	BarX = 150.0 // across the paper
	BarY = 200.0 // up it
)

// Correction says what the bars of a sheet that was printed without a correction
// measure, mm; 0: as they should.
type Correction struct{ X, Y float64 }

// None reports whether there is nothing to correct.
func (c Correction) None() bool { return (c.X == 0 || c.X == BarX) && (c.Y == 0 || c.Y == BarY) }

// mostOff is how far a bar may be off, as a share of its length. Paper and feed
// come to a few parts in a thousand; more means that the page was fitted to the
// paper, or that something else than the bar was measured: common practice, no
// source.
const mostOff = 0.02

// offSlack lets a bar pass that is just as much off as it may be.
const offSlack = 1e-9

// Stretch returns what makes up for a printer: in each direction the bar's
// length over what it measures. A bar over 2 % off is an [*OffError].
func (c Correction) Stretch() (drawing.Stretch, error) {
	s := drawing.Stretch{X: 1, Y: 1}
	for _, bar := range [2]struct {
		axis             string
		length, measured float64
		to               *float64
	}{{"x", BarX, c.X, &s.X}, {"y", BarY, c.Y, &s.Y}} {
		if bar.measured == 0 {
			continue
		}
		if off := math.Abs(bar.measured/bar.length - 1); !(off <= mostOff+offSlack) {
			return drawing.Stretch{}, &OffError{bar.axis, bar.length, bar.measured}
		}
		*bar.to = bar.length / bar.measured
	}
	return s, nil
}

// NotMeasured returns the error for a bar that is said to measure nothing: the
// first is the one across the paper, the second the one up it.
func NotMeasured(bar int) error {
	if bar == 0 {
		return &OffError{"x", BarX, 0}
	}
	return &OffError{"y", BarY, 0}
}

// OffError means that a bar measures too far from its length for paper and feed
// to be the reason.
type OffError struct {
	Axis             string // "x" or "y"
	Length, Measured float64
}

func (e *OffError) Error() string { return e.In(words.English()) }

// In says what is wrong, and what to do, in the language of a catalogue.
func (e *OffError) In(c *words.Catalogue) string {
	return c.Text("tile.off", words.Args{
		"Bar": c.Text("tile.bar." + e.Axis), "Length": words.MM(e.Length), "Measured": words.MM(e.Measured),
		"Least": words.MM(e.Length * (1 - mostOff)), "Most": words.MM(e.Length * (1 + mostOff)),
	})
}
