package stock_test

import (
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/stock"
)

// lists is everything the package has to tell, by name.
var lists = map[string]any{
	"drills": stock.Drills(), "balls": stock.Balls(), "grades": stock.BallGrades(),
	"clearances": stock.Clearances(), "wood screws": stock.WoodScrews(),
	"points": stock.DrillPoints(), "countersinks": stock.Countersinks(),
	"materials": stock.Materials(), "frictions": stock.Frictions(), "wires": stock.Wires(),
}

// evidences returns all evidence in a record. A value that is not known has
// none, and must then be nothing at all.
func evidences(t *testing.T, v reflect.Value) []stock.Evidence {
	t.Helper()
	switch x := v.Interface().(type) {
	case stock.Evidence:
		return []stock.Evidence{x}
	case stock.Value:
		if !x.Known() {
			assert.Zero(t, x)
			return nil
		}
		assert.LessOrEqual(t, x.Low, x.Typical)
		assert.LessOrEqual(t, x.Typical, x.High)
		assert.GreaterOrEqual(t, x.Low, 0.0)
	}
	var out []stock.Evidence
	if v.Kind() == reflect.Struct {
		for i := range v.NumField() {
			out = append(out, evidences(t, v.Field(i))...)
		}
	}
	return out
}

func TestEveryRecordSaysWhereItIsFrom(t *testing.T) {
	for name, list := range lists {
		records := reflect.ValueOf(list)
		require.NotZero(t, records.Len(), name)
		for i := range records.Len() {
			found := evidences(t, records.Index(i))
			require.NotEmpty(t, found, "%s %d", name, i)
			for _, e := range found {
				assert.NotEmpty(t, strings.TrimSpace(e.Source), "%s %d", name, i)
				assert.NotEqual(t, "unknown", e.Certainty.String(), "%s %d", name, i)
			}
		}
	}
}

func TestCertaintyNames(t *testing.T) {
	for c, name := range map[stock.Certainty]string{
		stock.Exact: "exact", stock.Seen: "seen", stock.Transcribed: "transcribed", stock.Memory: "memory",
		stock.CommonPractice: "common-practice", 0: "unknown", 6: "unknown",
	} {
		assert.Equal(t, name, c.String())
	}
	assert.Less(t, stock.Exact, stock.Seen, "the surest first")
	assert.Less(t, stock.Memory, stock.CommonPractice)
}

func TestValueTimes(t *testing.T) {
	e := stock.Evidence{Source: "test", Certainty: stock.Seen}
	v := stock.Value{Typical: 2, Low: 1, High: 4, Evidence: e}
	assert.Equal(t, stock.Value{Typical: 6, Low: 3, High: 12, Evidence: e}, v.Times(3))
	assert.Equal(t, stock.Value{Typical: -2, Low: -4, High: -1, Evidence: e}, v.Times(-1), "a range stays a range")
	assert.False(t, stock.Value{}.Times(3).Known())
}

// site matches what only a web address looks like.
var site = regexp.MustCompile(`(?i)https?:|www\.|\w\.(com|org|net|edu|gov|info|io|co\.uk|de|fi|nz)\b`)

// TestNoWebNames: sources are standards, handbooks and practice; an address
// that is gone next year proves nothing.
func TestNoWebNames(t *testing.T) {
	require.Regexp(t, site, "see example.org", "what is looked for can be found")
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	tables, err := filepath.Glob("*.csv")
	require.NoError(t, err)
	read := 0
	for _, f := range append(files, tables...) {
		if strings.HasSuffix(f, "_test.go") {
			continue // these import by address
		}
		data, err := os.ReadFile(f)
		require.NoError(t, err)
		assert.NotRegexp(t, site, string(data), f)
		read++
	}
	assert.Greater(t, read, 1)
}
