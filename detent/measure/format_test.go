package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/geom"
)

func TestFixedAndTrim(t *testing.T) {
	for _, c := range []struct {
		x           float64
		decimals    int
		fixed, trim string
		why         string
	}{
		{12.5, 3, "12.500", "12.5", "zeros that end the decimals"},
		{12, 3, "12.000", "12", "no decimals left, no point left"},
		{100, 0, "100", "100", "zeros before the point stay"},
		{1.2345678, 4, "1.2346", "1.2346", "rounded"},
		{-0.0004, 3, "0.000", "0", "rounds to zero: no sign"},
		{-0.0005001, 3, "-0.001", "-0.001", "just does not"},
		{math.Copysign(0, -1), 2, "0.00", "0", "-0"},
		{-10, 2, "-10.00", "-10", "a sign that stays"},
		{1.5, -3, "2", "2", "fewer than no decimals"},
		{0.1, 99, "0.100000000000000", "0.1", "more decimals than are held"},
		{math.NaN(), 2, "–", "–", "no number"},
		{math.Inf(-1), 2, "–", "–", "no number"},
	} {
		assert.Equal(t, c.fixed, Fixed(c.x, c.decimals), c.why)
		assert.Equal(t, c.trim, Trim(c.x, c.decimals), c.why)
	}
}

func TestFormatLength(t *testing.T) {
	assert.Equal(t, "12.5 mm", FormatLength(12.5, Millimetre, 3))
	assert.Equal(t, "0.5 in", FormatLength(12.7, Inch, 4))
	assert.Equal(t, "0.4921 in", FormatLength(12.5, Inch, 4))
	assert.Equal(t, "1 mm", FormatLength(1, Unit(7), 2), "any other unit acts as mm")
}

func TestFormatFraction(t *testing.T) {
	for _, c := range []struct {
		mm   float64
		want string
		why  string
	}{
		{4.7625, `3/16"`, "a listed ball"},
		{30.1625, `1 3/16"`, "mixed"},
		{25.4, `1"`, "whole"},
		{25.4 / 64, `1/64"`, "the finest"},
		{12.7, `1/2"`, "lowest terms"},
		{-30.1625, `-1 3/16"`, "sign"},
		{4.8, `≈ 3/16"`, "not exact"},
		{4.7625 + 0.9*FractionTolerance, `3/16"`, "inside the tolerance"},
		{4.7625 + 1.1*FractionTolerance, `≈ 3/16"`, "outside the tolerance"},
		{4.7625 - 1.1*FractionTolerance, `≈ 3/16"`, "outside the tolerance, below"},
		{25.3, `≈ 1"`, "rounds up to a whole inch"},
		{50.8 - 0.9*FractionTolerance, `2"`, "just below a whole inch, within the tolerance"},
		{0, `0"`, "zero"},
		{-0.1, `≈ 0"`, "rounds to zero: no sign"},
		{2.54e19, `1000000000000000000"`, "too large to count in sixty-fourths, still right"},
		{math.NaN(), "–", "no number"},
		{math.Inf(1), "–", "no number"},
	} {
		assert.Equal(t, c.want, FormatFraction(c.mm), c.why)
	}
}

func TestFormatAngle(t *testing.T) {
	minutes := AngleStyle{Minutes: true}
	for _, c := range []struct {
		degrees float64
		style   AngleStyle
		want    string
		why     string
	}{
		{31.618911, AngleStyle{Decimals: 4}, "31.6189°", "decimal"},
		{36, AngleStyle{Decimals: 4}, "36°", "trimmed"},
		{36.6, AngleStyle{}, "37°", "the zero style writes whole degrees"},
		{-0.00001, AngleStyle{Decimals: 3}, "0°", "never -0"},
		{31 + 37./60 + 8./3600, minutes, "31°37′08″", "two digits a place"},
		{31 + 37./60 + 8.25/3600, AngleStyle{Minutes: true, Decimals: 3}, "31°37′08.25″", "decimal seconds, trimmed"},
		{31 + 37./60 + 8.005/3600, AngleStyle{Minutes: true, Decimals: 3}, "31°37′08.005″", "zeros inside the decimals stay"},
		{22.5, minutes, "22°30′00″", "all places are written"},
		{31 + 59./60 + 59.9999/3600, minutes, "32°00′00″", "carries through seconds and minutes"},
		{31 + 36./60 + 59.9999/3600, minutes, "31°37′00″", "carries into the minutes"},
		{31 + 36./60 + 59.9999/3600, AngleStyle{Minutes: true, Decimals: 4}, "31°36′59.9999″", "does not carry where it need not"},
		{-0.5, minutes, "-0°30′00″", "the sign stays though the degrees are zero"},
		{-0.0001, minutes, "0°00′00″", "never -0"},
		{1. / 32, minutes, "0°01′53″", "52.5 seconds, exact in binary, round up"},
		{-31.5, AngleStyle{Minutes: true, Decimals: -1}, "-31°30′00″", "fewer than no decimals"},
		{1e20, minutes, "100000000000000000000°00′00″", "far out of range, still right"},
		{math.NaN(), minutes, "–", "no number"},
		{math.Inf(1), AngleStyle{}, "–", "no number"},
	} {
		assert.Equal(t, c.want, FormatAngle(geom.Angle(c.degrees), c.style), c.why)
	}
}
