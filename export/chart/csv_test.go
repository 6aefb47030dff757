package chart_test

import (
	"bytes"
	"encoding/csv"
	"errors"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/chart"
)

// lastDigit is half a unit of the third decimal, mm.
const lastDigit = 0.0005

func TestCSVGolden(t *testing.T) {
	for i, a := range plantest.Arrangements {
		if i%3 != 0 { // the plain case and the mirrored one
			continue
		}
		path := filepath.Join("testdata", string(a.CatchIn)+".csv")
		got := csvOf(t, chartOf(t, mitres(a)))
		if *update {
			require.NoError(t, os.WriteFile(path, got, 0o644))
		}
		want, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.Equal(t, string(want), string(got))
	}
}

// read returns the rows of the first table, by heading.
func read(t *testing.T, data []byte) []map[string]string {
	t.Helper()
	r := csv.NewReader(bytes.NewReader(data))
	r.FieldsPerRecord = -1
	all, err := r.ReadAll()
	require.NoError(t, err)
	var head []string
	var rows []map[string]string
	for _, rec := range all {
		switch {
		case head == nil && len(rec) > 10:
			head = rec
		case head != nil && len(rec) == len(head):
			row := map[string]string{}
			for i, h := range head {
				row[h] = rec[i]
			}
			rows = append(rows, row)
		case head != nil:
			return rows
		}
	}
	return rows
}

func TestCSVReadAgain(t *testing.T) {
	for _, a := range plantest.Arrangements {
		c := chartOf(t, mitres(a))
		data := csvOf(t, c)
		assert.NotRegexp(t, `(^|[,"])-0\.0*([,"\r]|$)`, string(data), "-0 is never written")
		rows := read(t, data)
		require.Len(t, rows, len(c.Sheets[0].Seats))
		for i, r := range c.Sheets[0].Seats {
			assert.Equal(t, r.Tag, rows[i]["Seat"])
			for head, want := range map[string]float64{
				"X at the drill (mm)": r.At.X, "Y at the drill (mm)": r.At.Y, "Ring radius (mm)": r.Radius,
				"Drill diameter (mm)": 4.5, "Depth (mm, 0 right through)": 6,
			} {
				got, err := strconv.ParseFloat(rows[i][head], 64)
				require.NoError(t, err, head)
				assert.InDelta(t, want, got, lastDigit, head)
			}
		}
	}
}

func TestCSVGuardsAgainstFormulas(t *testing.T) {
	for _, c := range []struct{ label, want, why string }{
		{"square", "square", "plain words stay"},
		{"=1+1", "'=1+1", "a formula"},
		{"+cmd|x", "'+cmd|x", "a formula"},
		{"-A1", "'-A1", "a formula"},
		{"@SUM(A1)", "'@SUM(A1)", "a formula"},
		{"\t=1+1", "'=1+1", "white space in front is gone, the formula is not"},
		{"-22.5", "-22.5", "a number is no formula"},
		{"+22,5", "+22,5", "nor with a comma"},
		{"-", "'-", "no number"},
		{"--5", "'--5", "no number"},
		{"-1-1", "'-1-1", "no number"},
		{"a,\"b\"\r\nc", `a,"b" c`, "one line; comma and quotes survive"},
		{"Größe Ж 漢 \U0001F600", "Größe Ж 漢 \U0001F600", "any letter"},
		{"bad\xffbyte", "bad?byte", "valid UTF-8 all the same"},
	} {
		p := plantest.Equal(1)
		p.Stops[0].Label = c.label
		ch := chart.New(solve(p), info())
		assert.Equal(t, c.want, read(t, csvOf(t, ch))[0]["Label"], c.why)
	}
}

func TestCSVOfNoSeats(t *testing.T) {
	assert.Empty(t, read(t, csvOf(t, chartOf(t, plantest.Equal(0)).Only(plan.PartBase))))
}

type full struct{}

var errFull = errors.New("disk full")

func (full) Write([]byte) (int, error) { return 0, errFull }

func TestCSVSaysWhenItCannotWrite(t *testing.T) {
	require.ErrorIs(t, chart.WriteCSV(full{}, chartOf(t, plantest.Equal(720))), errFull)
}

func FuzzCSVText(f *testing.F) {
	for _, s := range []string{"", "=1", "a\"b", "\r\n,", "\xff", "-5", "\u202e", "–"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		p := plantest.Equal(1)
		p.Title, p.Stops[0].Label, p.Catches[0].Name = s, s, s
		data := csvOf(t, chart.New(solve(p), info()))
		require.True(t, utf8.Valid(data))
		rows := read(t, data)
		require.Len(t, rows, 1)
		label := rows[0]["Label"]
		if label != "" && strings.ContainsRune("=@\t\r\n", rune(label[0])) {
			t.Fatalf("a formula got through: %q", label)
		}
	})
}
