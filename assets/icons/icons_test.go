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

func TestPNGIsLargeEnoughForADesktop(t *testing.T) {
	picture, err := png.Decode(bytes.NewReader(PNG))
	require.NoError(t, err)
	assert.Equal(t, 512, picture.Bounds().Dx())
	assert.Equal(t, 512, picture.Bounds().Dy())
	_, _, _, corner := picture.At(0, 0).RGBA()
	assert.Zero(t, corner, "the corners are round and let the desktop through")
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
