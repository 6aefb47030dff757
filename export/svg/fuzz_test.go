package svg_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/export/drawing"
	"stopwright/export/svg"
)

// A maker's text is text to every reader of XML and never anything else: the
// file has the elements that it has with any other.
func FuzzText(f *testing.F) {
	for _, s := range []string{
		"36°", "</text><script>alert(1)</script>", "<![CDATA[", "]]>", "&amp;&#0;&lt", "<!--", "-->", "<?xml?>", "\x00\ufffe\uffff", "𝛼\xff", `" onload="`,
	} {
		f.Add(s)
	}
	elements := func(t testing.TB, line string) (n int) {
		var d drawing.Drawing
		d.Add(drawing.Pivot, drawing.Circle{Radius: 4})
		d.Add(drawing.Lettering, drawing.Text{Size: 3, Text: "x" + line})
		var b bytes.Buffer
		require.NoError(t, svg.Write(&b, d))
		reader := xml.NewDecoder(&b)
		reader.Strict = true
		for {
			token, err := reader.Token()
			if errors.Is(err, io.EOF) {
				return n
			}
			require.NoError(t, err)
			if _, begins := token.(xml.StartElement); begins {
				n++
			}
		}
	}
	f.Fuzz(func(t *testing.T, s string) { require.Equal(t, elements(t, ""), elements(t, s)) })
}
