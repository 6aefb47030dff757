package measure

import (
	"errors"
	"math"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// lengths is shared by the table test and the fuzz test. Each want is the exact
// decimal, so the comparison needs no tolerance: reading rounds once.
var lengths = []struct {
	text string
	unit Unit
	want float64
	why  string
}{
	{"12.5", Millimetre, 12.5, "bare number in the display unit"},
	{"0.5", Inch, 12.7, "bare number in the display unit, inch"},
	{"12,5", Millimetre, 12.5, "decimal comma"},
	{"1,234", Millimetre, 1.234, "one comma is a decimal comma, not a mark for thousands"},
	{"12.", Millimetre, 12, "half typed"},
	{".5", Millimetre, 0.5, "no leading zero"},
	{",5", Millimetre, 0.5, "no leading zero, comma"},
	{"010", Millimetre, 10, "leading zero is not octal"},
	{"010/08", Millimetre, 1.25, "leading zeros in a division are not octal"},
	{"12.5 mm", Inch, 12.5, "a unit overrides the display unit"},
	{"12.5mm", Inch, 12.5, "no space before the unit"},
	{"12.5 MM", Inch, 12.5, "capitals"},
	{"1,2 cm", Millimetre, 12, "centimetres"},
	{"0.34 m", Millimetre, 340, "metres"},
	{"1 in", Millimetre, 25.4, "the inch is exact"},
	{"1 inch", Millimetre, 25.4, "spelled out"},
	{"2 inches", Millimetre, 50.8, "plural"},
	{"3/16 in.", Millimetre, 4.7625, "abbreviation's point"},
	{`0.1875"`, Millimetre, 4.7625, "inch mark"},
	{`3/16"`, Millimetre, 4.7625, "fraction of an inch (a listed ball: 3/16 in is 4.7625 mm)"},
	{"7/32 in", Millimetre, 5.55625, "a listed ball: 7/32 in"},
	{"13/32", Inch, 10.31875, "a listed ball: 13/32 in, bare"},
	{`9/16″`, Millimetre, 14.2875, "double prime"},
	{`3/16”`, Millimetre, 4.7625, "typographic quotation mark"},
	{`3/16''`, Millimetre, 4.7625, "two single marks"},
	{"3⁄16 in", Millimetre, 4.7625, "fraction slash"},
	{"3 / 16 in", Millimetre, 4.7625, "spaces about the bar"},
	{`1 3/16"`, Millimetre, 30.1625, "mixed, space"},
	{`1-3/16"`, Millimetre, 30.1625, "mixed, hyphen"},
	{`1–3/16"`, Millimetre, 30.1625, "mixed, en dash"},
	{`1½"`, Millimetre, 38.1, "mixed, one character"},
	{"1 ⅛ in", Millimetre, 28.575, "mixed, one character after space"},
	{"1-⅛ in", Millimetre, 28.575, "mixed, one character after hyphen"},
	{"¾", Inch, 19.05, "one character alone"},
	{"25/2", Millimetre, 12.5, "division of mm"},
	{"25,4/2", Millimetre, 12.7, "division with decimals"},
	{"-3", Millimetre, -3, "sign"},
	{"+3", Millimetre, 3, "plus"},
	{"−3", Millimetre, -3, "minus sign proper"},
	{"- 3", Millimetre, -3, "space after the sign"},
	{`-1-3/16"`, Millimetre, -30.1625, "the sign goes for the whole"},
	{"-½ in", Millimetre, -12.7, "sign before a one-character fraction"},
	{"0", Millimetre, 0, "zero"},
	{"-0", Millimetre, 0, "never -0"},
	{"12.5\u00a0mm", Inch, 12.5, "no-break space"},
	{"12.5\u202fmm", Inch, 12.5, "narrow no-break space"},
	{"\ufeff12.5\u200b \t\n", Millimetre, 12.5, "invisible characters that come with pasted text"},
	{"1" + strings.Repeat("0", 63), Millimetre, 1e63, "the longest text"},
}

func TestParseLength(t *testing.T) {
	for _, c := range lengths {
		got, err := ParseLength(c.text, c.unit)
		require.NoErrorf(t, err, "%s: %q", c.why, c.text)
		assert.Equalf(t, c.want, got, "%s: %q", c.why, c.text)
		assert.Falsef(t, got == 0 && math.Signbit(got), "-0: %q", c.text)
	}
}

func TestParseLengthRefuses(t *testing.T) {
	for _, c := range []struct {
		text string
		want Reason
		why  string
	}{
		{"", Empty, "nothing"},
		{" \u00a0", Empty, "only space"},
		{"1" + strings.Repeat("0", 64), TooLong, "one character too long"},
		{"1,234.5", Separators, "could be 1234.5 or a slip"},
		{"1.234,5", Separators, "the same the other way round"},
		{"1.234.567", Separators, "marks for thousands"},
		{"1 234,5", NotUnderstood, "space for thousands"},
		{"1'234", UnknownUnit, "apostrophe for thousands"},
		{"NaN", NotUnderstood, "no number"},
		{"inf", NotUnderstood, "no number"},
		{"-Infinity", NotUnderstood, "no number"},
		{"1e400", PowerOfTen, "would overflow"},
		{"1e3", PowerOfTen, "a slip of the finger"},
		{"1E-3", PowerOfTen, "the same, negative"},
		{"2e+3 mm", PowerOfTen, "the same, positive"},
		{"0x10", UnknownUnit, "hexadecimal"},
		{"0x1p-2", UnknownUnit, "hexadecimal float"},
		{"1_000", NotUnderstood, "a programmer's digit grouping"},
		{"12 ft", UnknownUnit, "feet"},
		{`5' 3"`, UnknownUnit, "feet and inches"},
		{"12°", UnknownUnit, "an angle"},
		{"12 e", UnknownUnit, "e without a power"},
		{"mm", NotUnderstood, "unit without number"},
		{"-", NotUnderstood, "sign without number"},
		{"--3", NotUnderstood, "two signs"},
		{"+-3", NotUnderstood, "two signs"},
		{"3-", NotUnderstood, "sign behind"},
		{".", NotUnderstood, "point without digits"},
		{".½", NotUnderstood, "point before a one-character fraction"},
		{"½5", NotUnderstood, "digits after a one-character fraction must not join its divisor"},
		{"2/½", NotUnderstood, "two division bars"},
		{"1/2/3", NotUnderstood, "two division bars"},
		{"1/", NotUnderstood, "half a division"},
		{"/2", NotUnderstood, "half a division"},
		{"1/-2", NotUnderstood, "sign inside"},
		{"1 - 3/16", NotUnderstood, "a sum"},
		{"1 -3/16", NotUnderstood, "a sum"},
		{"1- 3/16", NotUnderstood, "a sum"},
		{"1.5 3/16", NotUnderstood, "mixed fraction with decimals"},
		{"1/0", ZeroDivisor, "division by zero"},
		{"1/0.0", ZeroDivisor, "division by zero with decimals"},
		{"1 3/0", ZeroDivisor, "mixed fraction by zero"},
		{"1 16/3", ImproperMixed, "turned round"},
		{"1 16/16", ImproperMixed, "just not below one"},
		{"12 in mm", NotUnderstood, "two units"},
		{"12 mm 5", NotUnderstood, "number behind the unit"},
		{"≈ 3/16\"", NotUnderstood, "a rounded length is not the true one"},
		{"１２", NotUnderstood, "digits of another alphabet"},
		{"\xff\xfe", NotUnderstood, "not UTF-8"},
	} {
		got, err := ParseLength(c.text, Millimetre)
		requireReason(t, err, Length, c.text, c.want, c.why)
		assert.Zero(t, got, c.why)
	}
}

func requireReason(t *testing.T, err error, kind Kind, text string, want Reason, why string) {
	t.Helper()
	var syntax *SyntaxError
	require.Truef(t, errors.As(err, &syntax), "%s: %q gave %v", why, text, err)
	assert.Equalf(t, SyntaxError{kind, text, want}, *syntax, "%s: %v", why, err)
}

func TestParseNumber(t *testing.T) {
	for text, want := range map[string]float64{"0,2": 0.2, "3/16": 0.1875, "-1 1/2": -1.5} {
		got, err := ParseNumber(text)
		require.NoError(t, err, text)
		assert.Equal(t, want, got, text)
	}
	for text, want := range map[string]Reason{"8 N": UnknownUnit, "x": NotUnderstood, "8 8": NotUnderstood} {
		_, err := ParseNumber(text)
		requireReason(t, err, Number, text, want, "a plain number has no unit")
	}
}

// angles is shared by the table test and the fuzz test. The wanted angle is
// whole seconds over a divisor, worked out by hand.
var angles = []struct {
	text             string
	seconds, divisor int64
	why              string
}{
	{"36", 36 * 3600, 1, "bare degrees"},
	{"12.5", 45000, 1, "decimal point"},
	{"12,5°", 45000, 1, "decimal comma, degree mark"},
	{"12.5 deg", 45000, 1, "deg"},
	{"12.5 Degrees", 45000, 1, "spelled out"},
	{"12.5º", 45000, 1, "ordinal mark in place of the degree"},
	{"180/7", 180 * 3600, 7, "division"},
	{"180 / 7 °", 180 * 3600, 7, "division with spaces and mark"},
	{"360/16", 360 * 3600, 16, "division"},
	{"90/4", 81000, 1, "division"},
	{"22 1/2", 81000, 1, "mixed fraction, not 22 degrees and half a minute"},
	{"22-1/2°", 81000, 1, "mixed fraction, hyphen"},
	{"22½°", 81000, 1, "mixed fraction, one character"},
	{"31°37'", 113820, 1, "degrees and minutes"},
	{"31°37", 113820, 1, "last mark left out"},
	{"31 37", 113820, 1, "no marks"},
	{"31:37", 113820, 1, "colon"},
	{"31° 37′ 8″", 113828, 1, "primes"},
	{`31°37'8"`, 113828, 1, "typewriter marks"},
	{"31°37’08”", 113828, 1, "typographic marks"},
	{"31°37'08''", 113828, 1, "two single marks"},
	{"31d37m8s", 113828, 1, "letters"},
	{"31 deg 37 min 8 sec", 113828, 1, "words"},
	{"31 37 8", 113828, 1, "spaces"},
	{"31:37:08", 113828, 1, "colons"},
	{"31°37'8", 113828, 1, "last mark left out"},
	{"31° 8″", 31*3600 + 8, 1, "no minutes"},
	{"31°37,5'", 31*36000 + 37*600 + 300, 10, "decimal minutes"},
	{"31 37 8.25", 100*113828 + 25, 100, "decimal seconds"},
	{"0:59:59.9", 35999, 10, "just below 60"},
	{"-0°30'", -1800, 1, "the sign goes for the whole though the degrees are zero"},
	{"−31 37 8", -113828, 1, "the sign goes for minutes and seconds too"},
	{"+5", 18000, 1, "plus"},
	{"-0°00'", 0, 1, "never -0"},
	{"720", 720 * 3600, 1, "no range is checked here"},
}

func TestParseAngle(t *testing.T) {
	for _, c := range angles {
		got, err := ParseAngle(c.text)
		require.NoErrorf(t, err, "%s: %q", c.why, c.text)
		want, _ := big.NewRat(c.seconds, c.divisor*3600).Float64()
		assert.Equalf(t, geom.Angle(want), got, "%s: %q", c.why, c.text)
		assert.Falsef(t, got == 0 && math.Signbit(got.Degrees()), "-0: %q", c.text)
	}
}

func TestParseAngleRefuses(t *testing.T) {
	for _, c := range []struct {
		text string
		want Reason
		why  string
	}{
		{"", Empty, "nothing"},
		{"12,5,3", Separators, "two commas"},
		{"31°60'", MinutesRange, "just not below 60"},
		{"31 75", MinutesRange, "unmarked"},
		{"31°37'60\"", SecondsRange, "just not below 60"},
		{"31:37:60.5", SecondsRange, "decimal"},
		{"31.5°30'", DecimalPlace, "decimals before minutes"},
		{"31° 30.5' 8\"", DecimalPlace, "decimals before seconds"},
		{"31.0 30", DecimalPlace, "decimals, though they are zero"},
		{"30'", DegreesFirst, "minutes alone"},
		{`5"`, DegreesFirst, "seconds alone: more likely inches"},
		{"12 m", DegreesFirst, "more likely metres"},
		{"12 mm", UnknownUnit, "a length"},
		{"0.5 rad", UnknownUnit, "radians"},
		{"1e400", PowerOfTen, "would overflow"},
		{"NaN", NotUnderstood, "no number"},
		{"31°37°", NotUnderstood, "degrees twice"},
		{"31° 8″ 37′", NotUnderstood, "out of order"},
		{"31 37 8 5", NotUnderstood, "a fourth number"},
		{"31°37'8\"5", NotUnderstood, "a number behind the seconds"},
		{"31°°", NotUnderstood, "mark twice"},
		{"31:", NotUnderstood, "ends in a colon"},
		{":31", NotUnderstood, "starts with a colon"},
		{"31::8", NotUnderstood, "empty place"},
		{"31:37 8", NotUnderstood, "colon and space"},
		{"31°:37'", NotUnderstood, "colon and marks"},
		{"31 1/2 30", NotUnderstood, "fraction before minutes"},
		{"31° 37 1/2'", NotUnderstood, "fraction of a minute"},
		{"1 1.5/2", NotUnderstood, "a botched mixed fraction is not half a minute"},
		{"360/16 5", NotUnderstood, "division before minutes"},
		{"180/0", ZeroDivisor, "division by zero"},
		{"22 2/1", ImproperMixed, "turned round"},
		{"31-37-08", NotUnderstood, "hyphens"},
		{"5 -30", NotUnderstood, "sign inside"},
	} {
		got, err := ParseAngle(c.text)
		requireReason(t, err, Angle, c.text, c.want, c.why)
		assert.Zero(t, got, c.why)
	}
}
