package dxf

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export/drawing"
)

func TestLabel(t *testing.T) {
	for _, c := range []struct{ in, want, why string }{
		{"square", "square", "ASCII as it is"},
		{"36° ⌀4.5 ±0.1", "36%%d %%c4.5 %%p0.1", "the three signs of the format"},
		{"Ø", `\U+00D8`, "the letter is no diameter sign"},
		{"é𝛼", `\U+00E9\U+D835\U+DEFC`, "beyond four digits: a UTF-16 pair"},
		{"a\r\nb\tc\u0085d\u2029e", "a b c d e", "one line"},
		{"  a \x00\x1b b ", "a b", "no control characters, no blanks at the ends"},
		{"50%", "50%", "a percent sign alone is plain"},
		{"50%%d", "50%%%%d", "not a degree sign: %%% is a percent sign"},
		{"5%°", "5%%%%%d", "a percent sign, then degrees"},
		{`C:\bits`, `C:\bits`, "a backslash is plain"},
		{`\U+0041 \m+1`, `\U+005CU+0041 \U+005Cm+1`, "not an A"},
		{"a^J", "a^ J", "not a line feed"},
		{"\xff", `\U+FFFD`, "broken UTF-8 shows as such"},
		{"0\nEOF", "0 EOF", "no record of its own"},
		{"", "", ""},
	} {
		assert.Equal(t, c.want, label(c.in), "%q: %s", c.in, c.why)
	}
}

func TestLongLabelIsCutBetweenLetters(t *testing.T) {
	assert.Len(t, label(strings.Repeat("a", maxLabel)), maxLabel, "what fits stays whole")
	got := label(strings.Repeat("é", 10_000))
	assert.LessOrEqual(t, len(got), maxLabel)
	assert.Greater(t, len(got), maxLabel-len(cut)-len(`\U+00E9`), "as much as fits")
	assert.Regexp(t, `^(\\U\+00E9)+\.\.\.$`, got, "no half escape")
}

var escaped = regexp.MustCompile(`%%[dcp%]|\^ |(\\U\+[0-9A-F]{4})+`)

// shown decodes a label by the DXF Reference, independently of how it was made.
func shown(t testing.TB, s string) string {
	return escaped.ReplaceAllStringFunc(s, func(code string) string {
		switch code {
		case "%%d":
			return "°"
		case "%%c":
			return "⌀"
		case "%%p":
			return "±"
		case "%%%":
			return "%"
		case "^ ":
			return "^"
		}
		var units []uint16
		for _, hex := range strings.Split(code, `\U+`)[1:] {
			u, err := strconv.ParseUint(hex, 16, 16)
			require.NoError(t, err)
			units = append(units, uint16(u))
		}
		return string(utf16.Decode(units))
	})
}

func FuzzText(f *testing.F) {
	for _, s := range []string{
		"36°", "0\nEOF\n", "a\r0\rENDSEC", "\u2028\x85", "%%%%d%", "^^J", `\\U+0041`, "𝛼\xff", "⌀%°±",
		strings.Repeat("é", 300), "\x00", "\ufeff",
	} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		var d drawing.Drawing
		d.Add(drawing.Pivot, drawing.Circle{Radius: 4})
		d.Add(drawing.Lettering, drawing.Text{Size: 3, Text: s})
		d.Add(drawing.Seats, drawing.Circle{Radius: 5})

		got := entityGroups(t, bytesOf(t, d))
		want := oneLine(s)
		if want == "" {
			require.Len(t, got, 2, "nothing to show, no text")
			return
		}
		require.Len(t, got, 3)
		text := value(t, got[1], 1)
		require.LessOrEqual(t, len(text), maxLabel)
		for _, c := range []byte(text) {
			require.True(t, ' ' <= c && c <= '~', "byte %q", c)
		}
		back := shown(t, text)
		if len(want) < maxLabel/len(`\U+0000`) { // none so short is cut
			require.Equal(t, strings.ToValidUTF8(string([]rune(want)), "\ufffd"), back)
		}
	})
}
