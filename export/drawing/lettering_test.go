package drawing

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"stopwright/assets/fonts"
)

// letterSlack is relative to the size: the font's own units are 1/1000 or
// finer, and a straight capital overshoots none of its lines.
const letterSlack = 1e-3

// glyphBox returns the extent of a letter in the font's own units, read from
// its outline and not from the measures that the font states.
func glyphBox(t *testing.T, r rune) (box fixed.Rectangle26_6, em float64) {
	t.Helper()
	f, err := sfnt.Parse(fonts.Regular)
	require.NoError(t, err)
	var buf sfnt.Buffer
	g, err := f.GlyphIndex(&buf, r)
	require.NoError(t, err)
	ppem := fixed.I(int(f.UnitsPerEm()))
	segments, err := f.LoadGlyph(&buf, g, ppem, nil)
	require.NoError(t, err)
	return segments.Bounds(), float64(ppem)
}

func TestCapsPerEmIsTheHeightOfACapital(t *testing.T) {
	box, em := glyphBox(t, 'H')
	stroke, _ := glyphBox(t, '-')
	pen := float64(stroke.Max.Y-stroke.Min.Y) / em
	height := float64(box.Max.Y-box.Min.Y) / em
	assert.InDelta(t, height, CapsPerEm(), pen+letterSlack,
		"to within the pen's width, by which round pens pass the lines")
}

func TestTextWidth(t *testing.T) {
	assert.Zero(t, TextWidth("", 3.5))
	a := TextWidth("36°", 1)
	assert.InDelta(t, 3.5*a, TextWidth("36°", 3.5), letterSlack, "grows with the size")
	assert.InDelta(t, TextWidth("3", 1)+TextWidth("6", 1)+TextWidth("°", 1), a, letterSlack, "letter after letter")
	assert.Greater(t, TextWidth("W", 1), TextWidth("i", 1), "letters have widths of their own")
	assert.Equal(t, TextWidth("0", 1), TextWidth("8", 1), "figures stand in columns")
}

func TestTextWidthHoldsTheLetters(t *testing.T) {
	for _, r := range "HMW08" {
		box, em := glyphBox(t, r)
		ink := float64(box.Max.X-box.Min.X) / em / CapsPerEm()
		assert.Greater(t, TextWidth(string(r), 1), ink, "%c: its ink and some room", r)
		assert.Less(t, TextWidth(string(r), 1), 2*ink, "%c: but not twice as much", r)
	}
}

func TestTextWidthFromManySides(t *testing.T) {
	want := TextWidth("ÄÖÜ⌀±×½", 2)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() { assert.Equal(t, want, TextWidth("ÄÖÜ⌀±×½", 2)) })
	}
	wg.Wait()
}
