package measure

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// requireSound asserts what holds for every text: a finite number that is not
// -0, or an error that a window can word, never both.
func requireSound(t *testing.T, x float64, err error) {
	t.Helper()
	if err == nil {
		require.False(t, math.IsNaN(x) || math.IsInf(x, 0), "not finite")
		require.False(t, x == 0 && math.Signbit(x), "-0")
		return
	}
	require.Zero(t, x)
	var syntax *SyntaxError
	require.True(t, errors.As(err, &syntax))
	require.NotZero(t, syntax.Reason)
	require.NotContains(t, err.Error(), "\n")
}

// awkward are texts that have tripped readers of numbers.
var awkward = []string{"", "-", "1/0", "1e400", "NaN", "0x1p-2", "1,234.5", "½5", "1-½", "31::8", "\xff", "’’’", "0/9", "-0/5"}

func FuzzParseLength(f *testing.F) {
	for _, c := range lengths {
		f.Add(c.text)
	}
	for _, text := range awkward {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		mm, err := ParseLength(text, Millimetre)
		requireSound(t, mm, err)
		_, errInch := ParseLength(text, Inch)
		require.Equal(t, err == nil, errInch == nil, "the display unit decides nothing but the scale")
	})
}

func FuzzParseAngle(f *testing.F) {
	for _, c := range angles {
		f.Add(c.text)
	}
	for _, text := range awkward {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		a, err := ParseAngle(text)
		requireSound(t, a.Degrees(), err)
	})
}

func BenchmarkParseAngle(b *testing.B) {
	for b.Loop() {
		if _, err := ParseAngle("31° 37′ 8.25″"); err != nil {
			b.Fatal(err)
		}
	}
}
