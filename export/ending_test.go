package export_test

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
	"stopwright/export/scale"
	"stopwright/export/tile"
)

// TestFiguresAreWhatTheirNamesEndIn: scales and coupon are written as a drawing
// to cut or as pages to print.
func TestFiguresAreWhatTheirNamesEndIn(t *testing.T) {
	begins := map[string]string{".dxf": "0\nSECTION", ".SVG": "<?xml", ".pdf": "%PDF-"}
	for ending, begin := range begins {
		dir := t.TempDir()
		q := export.Request{Scale: filepath.Join(dir, "scale"+ending), Strip: filepath.Join(dir, "strip"+ending), Coupon: filepath.Join(dir, "coupon"+ending)}
		written, err := export.Export(report(t), q)
		require.NoError(t, err)
		require.Len(t, written, 3)
		for _, path := range written {
			assert.Equal(t, begin, get(t, path)[:len(begin)], path)
		}
	}
	for _, name := range []string{"scale", "scale.png", "scale.dxf.txt"} {
		dir := t.TempDir()
		_, err := export.Export(report(t), export.Request{Scale: filepath.Join(dir, name), CSV: filepath.Join(dir, "a.csv")})
		require.ErrorContains(t, err, "its name must end in .dxf, .svg or .pdf", name)
		assert.Empty(t, entries(t, dir), "nothing is written")
	}
}

func TestWhatCannotBePrintedTrueIsRefused(t *testing.T) {
	dir := t.TempDir()
	for _, q := range []export.Request{
		{Template: filepath.Join(dir, "a.pdf")},
		{Scale: filepath.Join(dir, "a.pdf")},
		{Strip: filepath.Join(dir, "a.pdf")},
		{Coupon: filepath.Join(dir, "a.pdf")},
	} {
		q.Printer = tile.Correction{X: 140}
		_, err := export.Export(report(t), q)
		require.ErrorContains(t, err, "150 mm long and measures 140 mm")
	}
	_, err := export.Export(report(t), export.Request{Scale: filepath.Join(dir, "a.dxf"), Scaling: scale.Options{Step: 2}})
	require.ErrorContains(t, err, "must be 1, 0.5 or 0.25")
	assert.Empty(t, entries(t, dir))
}
