package drawing

import "strings"

// Dots stands for what was cut off. (The drawing font has no single character
// for it.)
const Dots = "..."

// Fit returns s as [Lettered], shortened at its end if it is wider than width at
// that size, mm.
func Fit(s string, size, width float64) string {
	return shorten(s, size, width, func(r []rune, keep int) string {
		return strings.TrimSpace(string(r[:keep])) + Dots
	})
}

// FitEnd returns s, shortened at its start: a tag's number tells it from others.
func FitEnd(s string, size, width float64) string {
	return shorten(s, size, width, func(r []rune, keep int) string {
		return Dots + strings.TrimSpace(string(r[len(r)-keep:]))
	})
}

// shorten keeps as many characters of s as fit once cut has marked the loss.
func shorten(s string, size, width float64, cut func(r []rune, keep int) string) string {
	s = Lettered(s)
	if TextWidth(s, size) <= width {
		return s
	}
	r := []rune(s)
	lo, hi := 0, len(r)-1
	for lo < hi {
		mid := (lo + hi + 1) / 2
		if TextWidth(cut(r, mid), size) <= width {
			lo = mid
		} else {
			hi = mid - 1
		}
	}
	return cut(r, lo)
}

// Wrap breaks s into lines no wider than width, at its spaces. A word wider
// than that is shortened.
func Wrap(s string, size, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(Lettered(s)) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && TextWidth(longer, size) > width {
			lines = append(lines, line)
			longer = word
		}
		line = Fit(longer, size, width)
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
