package measure

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// exactly is what rounding to float64 may do to a force of some tens of newtons.
const exactly = 1e-12

func TestParseForce(t *testing.T) {
	for text, want := range map[string]float64{
		"12":       12,
		"12,5 N":   12.5,
		"1 kg":     9.80665,
		"1,2 kg":   11.76798,
		"850 g":    8.3356525,
		"1 lbf":    4.4482216152605, // the pound-force, as defined
		"2 1/2 lb": 2.5 * 4.4482216152605,
		"16 oz":    4.4482216152605,
		"3/4lb.":   0.75 * 4.4482216152605,
		"-1 N":     -1,
	} {
		got, err := ParseForce(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got, exactly, text)
	}
	for text, want := range map[string]Reason{
		"": Empty, "strong": NotUnderstood, "12 mm": UnknownUnit, "1e3": PowerOfTen, "12 N/mm": NotUnderstood, "1/0 kg": ZeroDivisor, "N": NotUnderstood,
	} {
		_, err := ParseForce(text)
		requireReason(t, err, Force, text, want, "no force")
	}
}

func TestParseRate(t *testing.T) {
	for text, want := range map[string]float64{
		"0.72":       0.72,
		"0,72 N/mm":  0.72,
		"4.13 lb/in": 4.13 * 4.4482216152605 / 25.4, // pound-force over inch
		"1 kg/cm":    0.980665,
		"7 N/cm":     0.7,
	} {
		got, err := ParseRate(text)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got, exactly, text)
	}
	for text, want := range map[string]Reason{
		"": Empty, "soft": NotUnderstood, "3 N": UnknownUnit, "3 N/": UnknownUnit, "3 mm/N": UnknownUnit, "3 N/mm/mm": NotUnderstood,
	} {
		_, err := ParseRate(text)
		requireReason(t, err, Rate, text, want, "no rate")
	}
}
