package measure

import (
	"math"
	"strconv"
	"strings"
)

// noNumber stands where a number has no meaning: NaN or infinite.
const noNumber = "–"

// maxDecimals bounds how many decimals are written: no float64 that a plate is
// measured in holds more.
const maxDecimals = 15

// Fixed returns x with exactly the given number of decimals, 0 to 15 (numbers
// outside that are taken as the nearer end), for columns that must line up. It
// never returns -0, in any number of decimals; NaN and infinities give a dash.
func Fixed(x float64, decimals int) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return noNumber
	}
	s := strconv.FormatFloat(x, 'f', min(max(decimals, 0), maxDecimals), 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}

// Trim returns x as [Fixed] does, without the zeros that end its decimals.
func Trim(x float64, decimals int) string {
	s := Fixed(x, decimals)
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// FormatLength returns a length given in mm in the given unit, with its symbol
// and up to the given number of decimals: "12.5 mm", "0.4921 in". [ParseLength]
// reads it back. For a field whose unit stands beside it, or a column, use
// [Trim] or [Fixed] on [Unit.FromMillimetres].
func FormatLength(mm float64, unit Unit, decimals int) string {
	return Trim(unit.FromMillimetres(mm), decimals) + " " + unit.Symbol()
}
