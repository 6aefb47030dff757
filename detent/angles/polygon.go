package angles

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"stopwright/detent/geom"
)

// A frame's sides, from the least there can be to more than are cut in earnest.
const (
	MinSides = 3
	MaxSides = 24
)

// Mitre returns the mitre of a frame of n equal sides, from square: half of the
// turn from one side to the next, 180°/n (exact mathematics). n is at least 1.
func Mitre(n int) geom.Angle { return geom.Angle(180 / float64(n)) }

// ParseSides reads how many sides frames are to have: numbers from [MinSides] to
// [MaxSides] and ranges of them, as in "3-8, 12", "3 to 8" or "5 6 8". They come
// back in order, each once. The error says what is wrong with which part.
func ParseSides(text string) ([]int, error) {
	text = strings.NewReplacer("–", "-", "−", "-", "…", "-", "to", "-", ",", " ", ";", " ").Replace(text)
	for strings.Contains(text, " -") || strings.Contains(text, "- ") {
		text = strings.NewReplacer(" -", "-", "- ", "-").Replace(text)
	}
	var sides []int
	for _, part := range strings.Fields(text) {
		first, last, isRange := strings.Cut(part, "-")
		if !isRange {
			last = first
		}
		from, fromOK := parseSide(first)
		to, toOK := parseSide(last)
		if !fromOK || !toOK {
			return nil, &SidesError{part}
		}
		for n := min(from, to); n <= max(from, to); n++ {
			sides = append(sides, n)
		}
	}
	if len(sides) == 0 {
		return nil, &SidesError{}
	}
	slices.Sort(sides)
	return slices.Compact(sides), nil
}

func parseSide(text string) (n int, ok bool) {
	n, err := strconv.Atoi(text)
	return n, err == nil && n >= MinSides && n <= MaxSides
}

// SidesError reports a number of sides that is none, or out of range.
type SidesError struct{ Text string } // empty: nothing is given

// Error says what is wrong and what would be understood.
func (e *SidesError) Error() string {
	what := "no number of sides"
	if e.Text != "" {
		what = fmt.Sprintf("“%s” is not a number of sides", e.Text)
	}
	return fmt.Sprintf("%s: write numbers from %d to %d, as 3-8, 12", what, MinSides, MaxSides)
}
