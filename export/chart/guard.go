package chart

import (
	"strings"
	"unicode"
)

// formula holds the characters with which a spreadsheet lets a formula begin.
const formula = "=+-@"

// guard returns a maker's text as one cell: on one line, in valid UTF-8, and
// with an apostrophe before anything a spreadsheet would run as a formula. A
// number typed as a label stays as it is.
func guard(text string) string {
	text = strings.Join(strings.Fields(strings.Map(func(r rune) rune {
		if unicode.IsControl(r) && !unicode.IsSpace(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, "?"))), " ")
	if text != "" && strings.ContainsRune(formula, rune(text[0])) && !isNumber(text) {
		return "'" + text
	}
	return text
}

// isNumber reports whether text is a sign and digits with at most one decimal
// point or comma, which no spreadsheet takes for a formula.
func isNumber(text string) bool {
	digits := strings.TrimLeft(text, "+-")
	if len(text)-len(digits) > 1 {
		return false
	}
	whole, rest, _ := strings.Cut(strings.Replace(digits, ",", ".", 1), ".")
	return allDigits(whole+rest) && whole != ""
}

func allDigits(s string) bool {
	return s != "" && strings.Trim(s, "0123456789") == ""
}
