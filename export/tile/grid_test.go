package tile

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// TestWindowsCoverTheDrawing: every place of the drawing is on some sheet, sheets
// overlap by what they should, and none is idle.
func TestWindowsCoverTheDrawing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(-1500, 500).Draw(t, "from")
		length := rapid.Float64Range(0, 2000).Draw(t, "length")
		window := rapid.Float64Range(100, 400).Draw(t, "window")
		n, lo := share(from, from+length, window)
		step := window - overlap
		hi := lo + float64(n-1)*step + window
		const slack = 1e-6 // mm
		assert.LessOrEqual(t, lo, from-spare+slack)
		assert.GreaterOrEqual(t, hi, from+length+spare-slack)
		if n > 1 {
			assert.Less(t, float64(n-2)*step+window, length+2*spare, "one sheet less would not do")
		}
	})
}

// TestJoinsKeepOffThePivot wherever the sheets can be moved for it.
func TestJoinsKeepOffThePivot(t *testing.T) {
	for _, c := range []struct {
		why    string
		length float64
		clear  bool
	}{
		{"two sheets with room", 300, true},
		{"two sheets that are full", 346, false},
		{"three sheets", 480, true},
		{"four sheets with room", 640, true},
	} {
		const width = 180.0
		n, lo := share(-c.length/2, c.length/2, width)
		nearest := math.Inf(1)
		for i := 1; i < n; i++ {
			nearest = min(nearest, math.Abs(lo+float64(i)*(width-overlap)+overlap/2))
		}
		assert.Equal(t, c.clear, nearest >= clearance-1e-9, "%s: %v mm", c.why, nearest)
	}
}

func TestNumbersReadFromTheUpperLeft(t *testing.T) {
	g := grid{cols: 3, rows: 2}
	assert.Equal(t, 1, g.number(0, 1))
	assert.Equal(t, 3, g.number(2, 1))
	assert.Equal(t, 4, g.number(0, 0))
	assert.Zero(t, g.number(3, 0))
	assert.Zero(t, g.number(0, -1))
	for n := range 6 {
		col, row := g.at(n + 1)
		assert.Equal(t, n+1, g.number(col, row))
	}
}
