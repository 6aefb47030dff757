package ui

import (
	"strconv"
	"strings"

	"stopwright/assets/words"
	"stopwright/ui/units"
)

// lengthUnderstood says what a length typed is understood as, and of a fraction
// as rules have them, that it was not taken for inches.
func (w *Window) lengthUnderstood(text string) string {
	said := w.units().LengthUnderstood(text)
	if w.units().Lengths != units.Millimetres || !ruleFraction(text) {
		return said
	}
	return w.words.Text("field.fraction", words.Args{"Said": said, "Text": strings.TrimSpace(text)})
}

// fractionRefused is lengthUnderstood for a text that is refused: of any but a
// fraction nothing, as the reason stands there already.
func (w *Window) fractionRefused(text string) string {
	if !ruleFraction(text) {
		return ""
	}
	return w.lengthUnderstood(text)
}

// ruleFraction reports whether a text ends in a fraction of a whole divided as
// an inch is on a rule, 3/32 or 1 3/16, and names no unit.
func ruleFraction(text string) bool {
	parts := strings.Fields(text)
	if len(parts) == 0 || len(parts) > 2 {
		return false
	}
	above, below, found := strings.Cut(parts[len(parts)-1], "/")
	n, err := strconv.Atoi(above)
	d, err2 := strconv.Atoi(below)
	if !found || err != nil || err2 != nil || n <= 0 || n >= d {
		return false
	}
	switch d {
	case 2, 4, 8, 16, 32, 64:
		return true
	}
	return false
}
