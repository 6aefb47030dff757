package measure

import (
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

// ulps is how many units in the last place a value may move when it is divided
// by 25.4 to be written and multiplied to be read: one rounding each way.
const ulps = 2

// within returns half of the last decimal written, and the rounding of x.
func within(x float64, decimals int) float64 {
	return 0.5*math.Pow10(-decimals) + ulps*(math.Nextafter(math.Abs(x), math.Inf(1))-math.Abs(x))
}

func TestLengthComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.Float64Range(-10_000, 10_000).Draw(t, "mm")
		unit := rapid.SampledFrom([]Unit{Millimetre, Inch}).Draw(t, "unit")
		decimals := rapid.IntRange(0, 12).Draw(t, "decimals")
		got, err := ParseLength(FormatLength(mm, unit, decimals), Millimetre)
		require.NoError(t, err)
		scale := map[Unit]float64{Millimetre: 1, Inch: 25.4}[unit]
		require.InDelta(t, mm, got, scale*within(mm, decimals))
	})
}

func TestFractionComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(-64*400, 64*400).Draw(t, "sixty-fourths")
		mm := float64(n) * 25.4 / 64
		text := FormatFraction(mm)
		require.NotContains(t, text, approximately)
		got, err := ParseLength(text, Millimetre)
		require.NoError(t, err, text)
		require.InDelta(t, mm, got, FractionTolerance)
	})
}

func TestFractionIsNearest(t *testing.T) {
	const half = 25.4 / 64 / 2 // mm: nothing is further from a sixty-fourth
	rapid.Check(t, func(t *rapid.T) {
		mm := rapid.Float64Range(-10_000, 10_000).Draw(t, "mm")
		text, near := strings.CutPrefix(FormatFraction(mm), approximately)
		got, err := ParseLength(text, Millimetre)
		require.NoError(t, err, text)
		require.LessOrEqual(t, math.Abs(got-mm), half+FractionTolerance)
		if !near {
			require.LessOrEqual(t, math.Abs(got-mm), 2*FractionTolerance)
		}
	})
}

func TestAngleComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		degrees := rapid.Float64Range(-360, 360).Draw(t, "degrees")
		style := AngleStyle{rapid.Bool().Draw(t, "minutes"), rapid.IntRange(0, 12).Draw(t, "decimals")}
		text := FormatAngle(geom.Angle(degrees), style)
		got, err := ParseAngle(text)
		require.NoError(t, err, text)
		delta := within(degrees, style.Decimals)
		if style.Minutes {
			delta = 0.5*math.Pow10(-style.Decimals)/3600 + within(degrees, 16)
		}
		require.InDelta(t, degrees, got.Degrees(), delta, text)
		require.Equal(t, text, FormatAngle(got, style), "writing again changes nothing")
	})
}

// TestSexagesimalAgainstRationals writes degrees, minutes and seconds in every
// usual form from whole numbers, and works the angle out from the same whole
// numbers without reading the text.
func TestSexagesimalAgainstRationals(t *testing.T) {
	forms := []string{"%d°%d'%s\"", "%d° %d′ %s″", "%dd%dm%ss", "%d %d %s", "%d:%02d:%s", "%ddeg %dmin %ssec"}
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Int64Range(0, 360).Draw(t, "d")
		m := rapid.Int64Range(0, 59).Draw(t, "m")
		millis := rapid.Int64Range(0, 59_999).Draw(t, "thousandths of a second")
		comma := rapid.SampledFrom([]string{".", ","}).Draw(t, "comma")
		minus := rapid.Bool().Draw(t, "minus")
		form := rapid.SampledFrom(forms).Draw(t, "form")

		text := fmt.Sprintf(form, d, m, fmt.Sprintf("%d%s%03d", millis/1000, comma, millis%1000))
		want := big.NewRat(d*3_600_000+m*60_000+millis, 3_600_000)
		if minus {
			text = "-" + text
			want.Neg(want)
		}
		got, err := ParseAngle(text)
		require.NoError(t, err, text)
		exact, _ := want.Float64()
		require.Equal(t, exact, got.Degrees(), text)
	})
}

// TestDecimalsAgainstStrconv reads decimals with the standard library's own
// correctly rounded reader beside ours.
func TestDecimalsAgainstStrconv(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`-?[0-9]{1,20}(\.[0-9]{0,20})?`).Draw(t, "text")
		want, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err)
		got, err := ParseLength(strings.Replace(text, ".", ",", 1), Millimetre)
		require.NoError(t, err)
		require.Equal(t, want+0, got)
	})
}
