package tile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

func square(side float64) drawing.Drawing {
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -side / 2, Y: -side / 2}, geom.Point{X: side / 2, Y: side / 2})
	return d
}

// lettered joins all that is written on a page.
func lettered(p drawing.Page) string {
	var all []string
	for _, e := range p.Entities {
		if s, ok := e.Shape.(drawing.Text); ok {
			all = append(all, s.Text)
		}
	}
	return strings.Join(all, "\n")
}

func pages(t *testing.T, s tile.Sheet, paper drawing.Paper, c tile.Correction) []drawing.Page {
	t.Helper()
	all, err := tile.Pages(s, paper, c, words.English())
	require.NoError(t, err)
	n, err := tile.Count(s, paper, c, words.English())
	require.NoError(t, err)
	require.Equal(t, len(all), n, "counted as they are drawn")
	return all
}

func TestPages(t *testing.T) {
	for _, c := range []struct {
		why   string
		side  float64
		paper drawing.Paper
		want  int
	}{
		{"a small one has its steps below it", 100, drawing.A4, 1},
		{"one that leaves no room for them", 170, drawing.A4, 1},
		{"one a little too wide, and its map", 180, drawing.A4, 3},
		{"a 300 mm plate on A4", 300, drawing.A4, 5},
		{"a 300 mm plate on Letter", 300, drawing.Letter, 5},
		{"a 300 mm plate on A3", 300, drawing.A3, 3},
	} {
		assert.Len(t, pages(t, tile.Sheet{Drawing: square(c.side)}, c.paper, tile.Correction{}), c.want, c.why)
	}
	assert.Empty(t, pages(t, tile.Sheet{}, drawing.A4, tile.Correction{}), "nothing drawn needs no paper")
}

func TestEveryPageSaysWhatItMust(t *testing.T) {
	s := tile.Sheet{Title: "Trial", What: "Base, top face up", Date: "2026-11-20", Drawing: square(300), Steps: []string{"Do this last."}}
	all := pages(t, s, drawing.A4, tile.Correction{X: 149.2})
	for i, p := range all {
		text := lettered(p)
		for _, want := range []string{
			"Trial", "Base, top face up", "2026-11-20", "This side up", "Scale 1:1", "150 mm", "200 mm", "Unplug the tool",
			"corrected for bars of 149.2 mm and 200 mm",
		} {
			assert.Contains(t, text, want, "page %d", i+1)
		}
	}
	assert.Contains(t, lettered(all[0]), "Do this last.")
	assert.Contains(t, lettered(all[2]), "Sheet 2 of 4")
	assert.Contains(t, lettered(all[2]), "Sheet 1\n", "its neighbour is named")
}

// TestAllInkIsOnThePaper keeps clear of the edge that printers leave blank.
func TestAllInkIsOnThePaper(t *testing.T) {
	const blank = 6.5 // mm, common practice, no source
	s := tile.Sheet{Title: strings.Repeat("A long title ", 20), What: "Turntable, underside up", Date: "2026-11-20", Drawing: square(700)}
	for _, paper := range drawing.Papers {
		for _, c := range []tile.Correction{{}, {X: 147, Y: 196}, {X: 153, Y: 204}} {
			for i, p := range pages(t, s, paper, c) {
				b := p.Bounds()
				b.Max.X, b.Max.Y = b.Max.X*p.Stretch.X, b.Max.Y*p.Stretch.Y
				b.Min.X, b.Min.Y = b.Min.X*p.Stretch.X, b.Min.Y*p.Stretch.Y
				assert.GreaterOrEqual(t, b.Min.X, blank, "%s page %d", paper.Name, i+1)
				assert.GreaterOrEqual(t, b.Min.Y, blank, "%s page %d", paper.Name, i+1)
				assert.LessOrEqual(t, b.Max.X, paper.Width-blank, "%s page %d", paper.Name, i+1)
				assert.LessOrEqual(t, b.Max.Y, paper.Height-blank, "%s page %d", paper.Name, i+1)
			}
		}
	}
}

// TestTooManySheets: a plate of 10 m would take more paper than anyone joins.
func TestTooManySheets(t *testing.T) {
	assert.Len(t, pages(t, tile.Sheet{Drawing: square(3000)}, drawing.A4, tile.Correction{}), 1+18*13, "as reckoned by hand: steps of 170 and 243 mm")
	all := pages(t, tile.Sheet{Drawing: square(10_000)}, drawing.A4, tile.Correction{})
	require.Len(t, all, 1)
	assert.Contains(t, strings.ReplaceAll(lettered(all[0]), "\n", " "), "It takes 2478 sheets of this paper; 400 is the most.", "59 by 42")
}
