package measure

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// lists is shared by the table test and the fuzz test. A stop is written as
// angle or angle=label, a problem as line:text:reason.
var lists = []struct {
	text     string
	stops    string
	problems []string
	why      string
}{
	{"", "", nil, "nothing pasted"},
	{" \n\t\n;;\n", "", nil, "nothing but blank lines and empty columns"},
	{"22.5", "22.5", nil, "one stop"},
	{"0\n20\n36.5\n", "0 20 36.5", nil, "one a line"},
	{"0\r\n20\r36.5", "0 20 36.5", nil, "line ends of other systems"},
	{"\ufeff0\n\n 20\u00a0\n", "0 20", nil, "what comes along with pasted text"},
	{"0, 20, 36.5", "0 20 36.5", nil, "commas with space after them part stops"},
	{"0, 20, 36.5,", "0 20 36.5", nil, "a comma left over at the end"},
	{"22,5", "22.5", nil, "the only comma, between digits, is for decimals"},
	{"22,5\n-36,25", "22.5 -36.25", nil, "a column of decimal commas"},
	{"0,20,36.5", "0 20 36.5", nil, "with a decimal point no comma can be one"},
	{"22°30',45°", "22.5 45", nil, "a comma after a mark cannot be for decimals"},
	{"0,-20", "0 -20", nil, "nor can one before a sign"},
	{"22,5; 30; 36,5", "22.5 30 36.5", nil, "semicolons leave commas to the decimals"},
	{"22,5\t30\t36,5", "22.5 30 36.5", nil, "a row of a spreadsheet"},
	{"36;5", "36 5", nil, "one line of angles is a row of stops"},
	{"0;10;20\n30;40", "0 10 20 30 40", nil, "a block of angles, its last line short"},
	{"0\tsquare\n22,5\t8 sides", "0=square 22.5=8 sides", nil, "two columns, with tabs"},
	{"0;square\n22.5;8 sides", "0=square 22.5=8 sides", nil, "two columns, with semicolons"},
	{"0\tsquare; true\n", "0=square; true", nil, "with tabs a semicolon is text"},
	{"36\t5\n45\tfour", "36=5 45=four", nil, "a label elsewhere: the second column is labels"},
	{"Angle\tSides\n36\t5\n30\t6", "36=5 30=6", nil, "headings: so it is here"},
	{"Angle\n36\n30", "36 30", nil, "a heading over one column"},
	{"\t36\n\t30", "36 30", nil, "an empty column taken along"},
	{"36\t\n30\t6 sides", "36 30=6 sides", nil, "a stop without a label"},
	{"0\n36\t5 sides", "0 36=5 sides", nil, "lines with and without columns"},
	{"\"31°37'8\"\"\"\t\"5, \"\"odd\"\"\"", "31.61888888888889=5, \"odd\"", nil, "cells in quotation marks"},
	{"31°37'\n180/7\n22 1/2\n22½\n31:37:08", "31.616666666666667 25.714285714285715 22.5 22.5 31.61888888888889", nil, "angles as everywhere"},
	{"- 3\n−3", "-3 -3", nil, "space after a sign is not one between numbers"},

	{"abc", "", []string{"1:abc:NotUnderstood"}, "no headings where nothing follows"},
	{"Angle\nabc", "", []string{"1:Angle:NotUnderstood", "2:abc:NotUnderstood"}, "nor over what is no angle"},
	{"2O\n30\n4X", "30", []string{"1:2O:UnknownUnit", "3:4X:UnknownUnit"}, "a slip in the first line is no heading"},
	{"0, 20, x, 36.5", "0 20 36.5", []string{"1:x:NotUnderstood"}, "the part at fault is named, the rest is read"},
	{"10,20,30", "", []string{"1:10,20,30:CommaUnclear"}, "10, 20, 30 or 10.20, 30"},
	{"0, 20,30, 40", "", []string{"1:0, 20,30, 40:CommaUnclear"}, "20, 30 or 20.30"},
	{"22,5, 30", "", []string{"1:22,5, 30:CommaUnclear"}, "22.5, 30 or 22, 5, 30"},
	{"20 ,5", "", []string{"1:20 ,5:CommaUnclear"}, "20, 5 or 0.5"},
	{"0, +,5", "", []string{"1:0, +,5:CommaUnclear"}, "+0.5, or + and 5"},
	{"22°30',45", "", []string{"1:22°30',45:CommaUnclear"}, "22°30' and 45, or 22°30.45'"},
	{"0;;20, 30", "0", []string{"1::Empty", "1:20, 30:SpaceUnclear"}, "one is missing, and commas do not part what semicolons do"},
	{"0, , 20", "0 20", []string{"1::Empty"}, "one is missing"},
	{"0\t\t20", "0 20", nil, "an empty cell"},
	{",", "", []string{"1:,:NotUnderstood"}, "a comma alone"},
	{"1,234.5", "", []string{"1:1,234.5:Separators"}, "a mark for thousands, or a stop of 1 and one of 234.5"},
	{"0 20 36.5", "", []string{"1:0 20 36.5:SpaceUnclear"}, "three stops or 0°20'36.5\""},
	{"36\t5\n30\t6", "", []string{"1:36\t5:ColumnsUnclear", "2:30\t6:ColumnsUnclear"}, "stops or labels"},
	{"36\t5 sides\tnote", "36", []string{"1:5 sides:UnknownUnit", "1:note:NotUnderstood"}, "a row of stops that are none"},
	{"36\t5 sides\n30\t6 sides\tnote", "36=5 sides", []string{"2:30\t6 sides\tnote:ManyColumns"}, "a third column"},
	{"square\t0\n5 sides\t36", "", []string{"1:square\t0:NotUnderstood", "2:5 sides\t36:NotUnderstood"}, "the label first"},
}

var reasonNames = map[Reason]string{
	NotUnderstood: "NotUnderstood", Empty: "Empty", UnknownUnit: "UnknownUnit", Separators: "Separators", CommaUnclear: "CommaUnclear",
	SpaceUnclear: "SpaceUnclear", ColumnsUnclear: "ColumnsUnclear", ManyColumns: "ManyColumns", TooMany: "TooMany",
}

func TestParseStops(t *testing.T) {
	for _, c := range lists {
		items, problems := ParseStops(c.text)
		var stops, faults []string
		for _, it := range items {
			s := fmt.Sprint(it.Angle.Degrees())
			if it.Label != "" {
				s += "=" + it.Label
			}
			stops = append(stops, s)
		}
		for _, p := range problems {
			faults = append(faults, fmt.Sprintf("%d:%s:%s", p.Line, p.Text, reasonNames[p.Reason]))
		}
		assert.Equal(t, c.stops, strings.Join(stops, " "), "%q: %s", c.text, c.why)
		assert.Equal(t, c.problems, faults, "%q: %s", c.text, c.why)
	}
}

func TestParseStopsCountsLines(t *testing.T) {
	items, problems := ParseStops("Angle\n\n0\n\nx\n10;20;30")
	lines := []int{}
	for _, it := range items {
		lines = append(lines, it.Line)
	}
	assert.Equal(t, []int{3, 6, 6, 6}, lines, "as the text has them, headings and blank lines counted")
	require.Len(t, problems, 1)
	assert.EqualError(t, &problems[0], "line 5: “x” is not an angle: write 12.5, 12°30' or 180/7")
}

func TestParseStopsEndsAtTheMost(t *testing.T) {
	column := strings.Repeat("1\n", MaxListed)
	items, problems := ParseStops(column)
	assert.Len(t, items, MaxListed)
	assert.Empty(t, problems, "as many as there may be")

	items, problems = ParseStops(column + "2\n3\n")
	assert.Len(t, items, MaxListed)
	require.Len(t, problems, 1, "told once, not for each line more")
	assert.Equal(t, LineProblem{MaxListed + 1, SyntaxError{Angle, "2", TooMany}}, problems[0])

	items, problems = ParseStops(strings.Repeat("1;", MaxListed+5))
	assert.Len(t, items, MaxListed, "in one line")
	assert.Len(t, problems, 1)

	items, problems = ParseStops(strings.Repeat("x1\n", 2*MaxListed))
	assert.Empty(t, items)
	assert.Len(t, problems, MaxListed+1, "as many problems, and that there are more")
}

func FuzzParseStops(f *testing.F) {
	for _, c := range lists {
		f.Add(c.text)
	}
	for _, text := range awkward {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		items, problems := ParseStops(text)
		lines := 1 + strings.Count(text, "\n") + strings.Count(text, "\r")
		require.LessOrEqual(t, len(items), MaxListed)
		last := 0
		for _, it := range items {
			require.False(t, math.IsNaN(it.Angle.Degrees()) || math.IsInf(it.Angle.Degrees(), 0), "not finite")
			require.GreaterOrEqual(t, it.Line, max(last, 1), "in the order of the text")
			require.LessOrEqual(t, it.Line, lines)
			require.Equal(t, strings.TrimSpace(it.Label), it.Label)
			last = it.Line
		}
		for _, p := range problems {
			require.NotZero(t, p.Reason)
			require.NotContains(t, p.Error(), "\n")
		}
		if len(items) == 0 && len(problems) == 0 {
			left := strings.TrimFunc(text, func(r rune) bool { return blank(r) || r == ';' || r == '"' })
			require.Empty(t, left, "nothing is passed over unsaid")
		}
		// An angle alone is read as one is anywhere, or refused.
		if a, err := ParseAngle(text); err == nil && len(items) > 0 && !strings.ContainsAny(text, "\t;\n\r") {
			require.Equal(t, []ListItem{{Angle: a, Line: 1}}, items)
		}
	})
}

func BenchmarkParseStops(b *testing.B) {
	text := strings.Repeat("31°37'\t5 sides\n", MaxListed)
	for b.Loop() {
		ParseStops(text)
	}
}
