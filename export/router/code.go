package router

import (
	"bytes"
	"math"
	"strings"

	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// The most decimals of a program's numbers. Half a step of the last one is
// 0.000005 mm or 0.0000127 mm: far below what a machine holds, with room for the
// places of an arc to add up.
const (
	decimalsMM   = 5
	decimalsInch = 6
	decimalsFeed = 2
)

// code writes the blocks of a program.
type code struct {
	out  bytes.Buffer
	unit measure.Unit
	feed string // in force
}

func newCode(set plan.Router) *code {
	c := &code{}
	if set.Units == plan.UnitsInch {
		c.unit = measure.Inch
	}
	return c
}

// block writes one line.
func (c *code) block(words ...string) {
	c.out.WriteString(strings.Join(words, " "))
	c.out.WriteByte('\n')
}

// comment writes a text as comments.
func (c *code) comment(text string) {
	for _, line := range comments(text) {
		c.block(line)
	}
}

// length returns a length in mm as a word of the program's unit.
func (c *code) length(letter string, mm float64) string {
	return letter + numeral(c.unit.FromMillimetres(mm), c.decimals())
}

// between returns the difference of two lengths as the program has them, so
// that it leads from the one exactly to the other.
func (c *code) between(letter string, from, to float64) string {
	return letter + numeral(c.rounded(to)-c.rounded(from), c.decimals())
}

// rounded returns a length as the program has it.
func (c *code) rounded(mm float64) float64 {
	scale := 1.0
	for range c.decimals() {
		scale *= 10
	}
	return math.Round(c.unit.FromMillimetres(mm)*scale) / scale
}

func (c *code) decimals() int {
	if c.unit == measure.Inch {
		return decimalsInch
	}
	return decimalsMM
}

// fed appends the feed (mm/min) to a block's words where it is not in force.
func (c *code) fed(words []string, feed float64) []string {
	f := "F" + numeral(c.unit.FromMillimetres(feed), decimalsFeed)
	if f == c.feed {
		return words
	}
	c.feed = f
	return append(words, f)
}

// numeral writes a number without the zeros that end its decimals, but always with
// a decimal point, as some controllers count whole numbers in thousandths.
func numeral(x float64, decimals int) string {
	s := measure.Trim(x, decimals)
	if !strings.Contains(s, ".") {
		s += ".0"
	}
	return s
}
