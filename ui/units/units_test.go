package units_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/ui/units"
)

var (
	mm        = units.Style{}
	inches    = units.Style{Lengths: units.Inches}
	fractions = units.Style{Lengths: units.Fractions}
	minutes   = units.Style{Angles: units.Minutes}
)

func TestLength(t *testing.T) {
	for _, c := range []struct {
		why   string
		style units.Style
		mm    float64
		want  string
	}{
		{"millimetres to a hundredth", mm, 12.504, "12.5 mm"},
		{"a true minus", mm, -0.25, "−0.25 mm"},
		{"what rounds to 0 has no sign", mm, -0.001, "0 mm"},
		{"inches to a tenth of a thou", inches, 12.7, "0.5 in"},
		{"rounded", inches, 2, "0.0787 in"},
		{"a fraction", fractions, 4.7625, `3/16"`},
		{"the nearest fraction, and said to be so", fractions, -12.5, `≈ −31/64"`},
	} {
		assert.Equal(t, c.want, c.style.Length(c.mm), c.why)
	}
}

func TestAngle(t *testing.T) {
	for _, c := range []struct {
		why     string
		style   units.Style
		degrees float64
		want    string
	}{
		{"decimals", mm, 180.0 / 7, "25.714°"},
		{"a true minus", mm, -36, "−36°"},
		{"seconds", minutes, 180.0 / 7, "25°42′51″"},
		{"no seconds", minutes, -22.5, "−22°30′"},
		{"whole degrees", minutes, 36, "36°"},
		{"seconds without minutes keep their place", minutes, 10 + 5.0/3600, "10°00′05″"},
	} {
		assert.Equal(t, c.want, c.style.Angle(c.degrees), c.why)
	}
}

func TestFields(t *testing.T) {
	for _, c := range []struct {
		why   string
		style units.Style
		mm    float64
		want  string
		kept  string
	}{
		{"as many decimals as there are", mm, 4.7625, "4.7625", ""},
		{"more than a field holds: rounded, and told", mm, 10.0 / 3, "3.333333", "3.3333333333333335 mm"},
		{"exact in inches", inches, 6.35, "0.25", ""},
		{"no whole number of inches is: told in mm", inches, 4.5, "0.177165", "4.5 mm"},
		{"a fraction without its mark, as the unit stands beside it", fractions, 30.1625, "1 3/16", ""},
		{"no fraction: decimals, never ≈", fractions, 4.5, "0.177165", "4.5 mm"},
		{"nothing", fractions, 0, "0", ""},
	} {
		assert.Equal(t, c.want, c.style.LengthField(c.mm), c.why)
		assert.Equal(t, c.kept, c.style.LengthKept(c.mm), c.why)
	}
	assert.Equal(t, "25.714286", mm.AngleField(180.0/7))
	assert.Equal(t, "25.714285714285715°", mm.AngleKept(180.0/7))
	assert.Equal(t, "25°42′51.429″", minutes.AngleField(180.0/7))
	assert.Equal(t, "36°", minutes.AngleField(36))
	assert.Empty(t, minutes.AngleKept(22.5))
}

func TestUnderstood(t *testing.T) {
	for _, c := range []struct {
		why   string
		style units.Style
		text  string
		want  string
	}{
		{"another unit", mm, `3/16"`, "= 4.7625 mm"},
		{"inches in words", mm, "7/32 in", "= 5.55625 mm"},
		{"a division", mm, "25/2", "= 12.5 mm"},
		{"decimals in the field's unit say it already", mm, "4.50", ""},
		{"so does a decimal comma", mm, "4,5", ""},
		{"and its unit", mm, "4.5 mm", ""},
		{"centimetres", mm, "1,5cm", "= 15 mm"},
		{"mm in inches, rounded", inches, "5 mm", "≈ 0.19685 in"},
		{"a bare number is in inches", inches, "0.5", ""},
		{"a fraction as a fraction", fractions, `3/16"`, ""},
		{"decimals as a fraction", fractions, "0.5", "= 1/2 in"},
		{"a fraction not in lowest terms", fractions, "2/4", "= 1/2 in"},
		{"no 64th", fractions, "4.5mm", "≈ 0.177165 in"},
		{"nonsense", mm, "4 furlongs", ""},
	} {
		assert.Equal(t, c.want, c.style.LengthUnderstood(c.text), "%s: %s", c.why, c.text)
	}
	for _, c := range []struct {
		why   string
		style units.Style
		text  string
		want  string
	}{
		{"a division", mm, "180/7", "≈ 25.714286°"},
		{"minutes", mm, "31°30'", "= 31.5°"},
		{"a whole number", mm, "36", ""},
		{"with its sign", mm, "36°", ""},
		{"below zero", mm, "-0°30'", "= −0.5°"},
		{"decimals as minutes", minutes, "22.5", "= 22°30′"},
		{"minutes as minutes, whichever mark is typed", minutes, "22°30'", ""},
		{"whole degrees", minutes, "36", ""},
		{"nonsense", mm, "north", ""},
	} {
		assert.Equal(t, c.want, c.style.AngleUnderstood(c.text), "%s: %s", c.why, c.text)
	}
}

// TestWhatAFieldShowsReadsBack: to the last decimal shown, in every style.
func TestWhatAFieldShowsReadsBack(t *testing.T) {
	const (
		inchDecimal = 25.4e-6 / 2 // mm: half of the sixth decimal of an inch
		degree      = 5.1e-7      // half of the sixth decimal of a degree
	)
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-360, 360).Draw(t, "x")
		for _, s := range []units.Style{mm, inches, fractions, minutes} {
			back, err := s.ReadLength(s.LengthField(x))
			require.NoError(t, err)
			assert.InDelta(t, x, back, inchDecimal*1.001)
			back, err = s.ReadAngle(s.AngleField(x))
			require.NoError(t, err)
			assert.InDelta(t, x, back, degree)
			assert.False(t, strings.Contains(s.LengthField(x), "≈"), "no field holds what is only near")
		}
	})
}

func TestNames(t *testing.T) {
	for _, s := range []units.Style{mm, inches, fractions, minutes, {Lengths: units.Fractions, Angles: units.Minutes}} {
		assert.Equal(t, s, units.Named(s.Names()))
	}
	assert.Equal(t, mm, units.Named("furlongs", ""), "an unknown name is the plain style")
}

func TestLimits(t *testing.T) {
	assert.Equal(t, "0.1 mm", mm.LengthLimit(0.1))
	assert.Equal(t, "3.937008 in", inches.LengthLimit(100))
	assert.Equal(t, "−360°", mm.AngleLimit(-360))
	assert.Equal(t, "360°", minutes.AngleLimit(360))
	assert.Equal(t, "– mm", mm.Length(math.NaN()), "no number")
}
