package icons

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestPicturesAreAsLargeAsTheirUseWants(t *testing.T) {
	for _, c := range []struct {
		why  string
		data []byte
		size int
	}{{"a desktop", PNG, 512}, {"a window", Small, 128}} {
		picture, err := png.Decode(bytes.NewReader(c.data))
		require.NoError(t, err)
		assert.Equal(t, c.size, picture.Bounds().Dx(), c.why)
		assert.Equal(t, c.size, picture.Bounds().Dy(), c.why)
		_, _, _, corner := picture.At(0, 0).RGBA()
		assert.Zero(t, corner, "the corners are round and let the desktop through")
	}
}

func TestSVGHoldsPlainShapesOnly(t *testing.T) {
	d := xml.NewDecoder(bytes.NewReader(SVG))
	drawn := 0
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		require.NoError(t, err)
		if element, ok := token.(xml.StartElement); ok {
			assert.Contains(t, []string{"svg", "title", "rect", "circle", "path"}, element.Name.Local)
			drawn++
		}
	}
	assert.Greater(t, drawn, 10, "rim, hatching, pivot and seats")
}
