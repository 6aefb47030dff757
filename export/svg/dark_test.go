package svg_test

import (
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
)

// dark is a picture in which ink is looked for.
type dark struct{ image.Image }

func darkOf(t testing.TB, path string) dark {
	t.Helper()
	f, err := os.Open(path)
	require.NoError(t, err)
	defer f.Close()
	img, err := png.Decode(f)
	require.NoError(t, err)
	return dark{img}
}

// extent returns how far the ink within a region reaches, mm from the upper left
// corner. A dot counts as far as it is dark.
func (d dark) extent(in func(geom.Point) bool) (lo, hi geom.Point) {
	lo, hi = geom.Point{X: math.Inf(1), Y: math.Inf(1)}, geom.Point{}
	b := d.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			at := geom.Point{X: float64(x) / perMM, Y: float64(y) / perMM}
			if color.GrayModel.Convert(d.At(x, y)).(color.Gray).Y >= 128 || !in(at) {
				continue
			}
			lo.X, lo.Y = min(lo.X, at.X), min(lo.Y, at.Y)
			hi.X, hi.Y = max(hi.X, at.X+1/perMM), max(hi.Y, at.Y+1/perMM)
		}
	}
	return lo, hi
}
