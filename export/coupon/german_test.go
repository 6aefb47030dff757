package coupon_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/export/coupon"
	"stopwright/export/drawing"
)

// engraves reports whether a drawing has the strokes of a text somewhere, with
// capitals 3 mm high as on a coupon.
func engraves(d drawing.Drawing, text string) bool {
	const same = 1e-9 // mm, rounding of a place that was added and taken off again
	strokes := func(d drawing.Drawing) (out []drawing.Line) {
		for _, e := range d.Entities {
			if l, ok := e.Shape.(drawing.Line); ok && e.Layer == drawing.Engraving {
				out = append(out, l)
			}
		}
		return out
	}
	var alone drawing.Drawing
	alone.Engrave(drawing.Text{Size: 3, Text: text})
	want, all := strokes(alone), strokes(d)
	for i := range len(all) - len(want) + 1 {
		move, fits := all[i].A.Sub(want[0].A), true
		at := func(p, q geom.Point) bool { return p.Sub(q).Distance(move) < same }
		for k, l := range want {
			fits = fits && at(all[i+k].A, l.A) && at(all[i+k].B, l.B)
		}
		if fits {
			return true
		}
	}
	return false
}

// The sizes on a German coupon have decimal commas.
func TestGermanCouponsAreEngravedWithCommas(t *testing.T) {
	german, err := words.In("de")
	require.NoError(t, err)
	p := plan.Default()
	p.Seat.Diameter = 4.5
	d := coupon.Drawing(p, german)
	assert.True(t, engraves(d, "4,5"))
	assert.False(t, engraves(d, "4.5"))
	assert.True(t, engraves(coupon.Drawing(p, words.English()), "4.5"))
}
