package pdf_test

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
	"stopwright/export/pdf"
)

// A maker's text adds nothing to a file but itself: however it is written, the
// file has the objects that it has with any other text, and its text strings
// end where they should, or the library could not have closed it.
func FuzzEscape(f *testing.F) {
	for _, s := range []string{
		"", "36°", ") Tj ET endstream endobj", `\) (\`, "\x00\n\r", "𝛼\xff", "\ufeff\ufffe", "()()", "endobj\n7 0 obj\n<</JS(a)>>",
	} {
		f.Add(s)
	}
	objects := func(t testing.TB, title, line string) int {
		at := geom.Point{X: 20, Y: 20}
		page := a4(drawing.Lettering, drawing.Text{At: at, Size: 3, Text: "x"}, drawing.Text{At: at, Size: 3, Angle: 30, Text: line})
		data := written(t, pdf.Meta{Title: title}, page)
		require.True(t, bytes.HasPrefix(data, []byte("%PDF-")))
		require.True(t, bytes.HasSuffix(bytes.TrimSpace(data), []byte("%%EOF")))
		return bytes.Count(data, []byte("\nendobj"))
	}
	plain := objects(f, "a", "a")
	f.Fuzz(func(t *testing.T, s string) { require.Equal(t, plain, objects(t, s, s)) })
}
