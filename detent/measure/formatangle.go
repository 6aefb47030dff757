package measure

import (
	"fmt"
	"math"
	"math/big"
	"strings"

	"stopwright/detent/geom"
)

// AngleStyle is how an angle is written. The zero AngleStyle writes whole
// degrees.
type AngleStyle struct {
	Minutes  bool // degrees, minutes and seconds instead of decimal degrees
	Decimals int  // at most, of a degree or of a second; 0 to 15
}

// FormatAngle returns an angle in the given style: "31.6189°" or "31°37′08″".
// Zeros that end the decimals are left out, -0 is never written, and
// [ParseAngle] reads the result back. NaN and infinities give a dash.
func FormatAngle(a geom.Angle, style AngleStyle) string {
	degrees := a.Degrees()
	switch {
	case math.IsNaN(degrees) || math.IsInf(degrees, 0):
		return noNumber
	case style.Minutes:
		return formatMinutes(degrees, min(max(style.Decimals, 0), maxDecimals))
	}
	return Trim(degrees, style.Decimals) + "°"
}

// formatMinutes writes finite degrees as degrees, minutes and seconds. It counts
// the smallest unit to be written in whole numbers before it splits them, so
// that 59.9999″ carries into the minutes and is never written as 60″.
func formatMinutes(degrees float64, decimals int) string {
	perSecond := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(decimals)), nil)
	count := new(big.Rat).SetFloat64(math.Abs(degrees))
	count.Mul(count, new(big.Rat).SetInt(perSecond))
	count.Mul(count, big.NewRat(3600, 1))

	rest := roundHalfUp(count)
	sign := ""
	if degrees < 0 && rest.Sign() > 0 {
		sign = "-"
	}
	var part, second, minute big.Int
	rest.QuoRem(rest, perSecond, &part)
	rest.QuoRem(rest, big.NewInt(60), &second)
	rest.QuoRem(rest, big.NewInt(60), &minute)

	fraction := ""
	if part.Sign() > 0 {
		fraction = "." + strings.TrimRight(fmt.Sprintf("%0*d", decimals, &part), "0")
	}
	return fmt.Sprintf("%s%d°%02d′%02d%s″", sign, rest, &minute, &second, fraction)
}

// roundHalfUp returns the whole number nearest to r, which is not negative.
func roundHalfUp(r *big.Rat) *big.Int {
	half := new(big.Rat).Add(r, big.NewRat(1, 2))
	return new(big.Int).Quo(half.Num(), half.Denom())
}
