package ink

import (
	"image"
	"image/color"
	"image/draw"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func premultiplied(t *rapid.T, label string) color.RGBA {
	a := rapid.Uint8().Draw(t, label+" alpha")
	part := rapid.Uint8Range(0, a)
	return color.RGBA{part.Draw(t, label+" red"), part.Draw(t, label+" green"), part.Draw(t, label+" blue"), a}
}

// The standard library composes in 16 bits; this package in 8.
func TestBlendAgainstStandardLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ground, ink := premultiplied(t, "ground"), premultiplied(t, "ink")
		m := rapid.Uint8().Draw(t, "share")

		want := image.NewRGBA(image.Rect(0, 0, 1, 1))
		want.SetRGBA(0, 0, ground)
		draw.DrawMask(want, want.Rect, image.NewUniform(ink), image.Point{}, image.NewUniform(color.Alpha{m}), image.Point{}, draw.Over)

		one := []uint8{ground.R, ground.G, ground.B, ground.A}
		tintOf(ink).put(one, float64(m)/255)
		run := []uint8{ground.R, ground.G, ground.B, ground.A}
		tintOf(ink).run(run, float64(m)/255)
		assert.Equal(t, one, run, "a run of one is one")
		for i, v := range want.Pix {
			require.InDelta(t, v, one[i], 2, "channel %d", i)
			require.LessOrEqual(t, one[i], one[3], "stays premultiplied")
		}
	})
}

func TestBlendEnds(t *testing.T) {
	px := []uint8{1, 2, 3, 255}
	full := tintOf(color.RGBA{200, 100, 50, 255})
	full.put(px, 0)
	full.put(px, -1)
	assert.Equal(t, []uint8{1, 2, 3, 255}, px, "no share leaves the ground")
	full.put(px, 7)
	assert.Equal(t, []uint8{200, 100, 50, 255}, px, "more than all is all")
	tintOf(color.RGBA{}).put(px, 1)
	assert.Equal(t, []uint8{200, 100, 50, 255}, px, "the zero colour leaves no mark")
}
