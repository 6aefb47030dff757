package svg

import (
	"strings"
	"unicode"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The letters are those of whatever plain font the reader has. Their capitals
// are about this much of the font's size: common practice, no source.
const (
	family    = "sans-serif"
	capsPerEm = 0.72
	noText    = "\uFFFD" // stands for bytes that are no text
)

// anchors says from which point of its width a text starts.
var anchors = map[drawing.Align]string{
	drawing.Centre: "middle",
	drawing.Right:  "end",
	drawing.Top:    "middle",
	drawing.Bottom: "middle",
}

// letters writes one line of lettering; nothing where there is none to see.
func (p *page) letters(s drawing.Text, colour string) {
	line := escape(s.Text)
	if line == "" {
		return
	}
	at := s.At.Add(geom.Point{Y: s.Align.Offset(0, s.Size).Y}.Rotate(geom.Angle(-s.Angle)))
	p.text(`<text fill="` + colour + `" stroke="none" font-family="` + family + `"`)
	p.attribute("font-size", s.Size/capsPerEm)
	if anchor := anchors[s.Align]; anchor != "" {
		p.text(` text-anchor="` + anchor + `"`)
	}
	p.attribute("x", at.X)
	p.attribute("y", -at.Y)
	if s.Angle != 0 {
		p.text(` transform="rotate(`)
		p.numbers(-s.Angle, at.X, -at.Y)
		p.text(`)"`)
	}
	p.text(">" + line + "</text>\n")
}

// escape returns text on one line as XML 1.0 can hold it (its production 2,
// Char): white space of any kind becomes single spaces, the other control
// characters and the two that are no characters go, and marks that XML would
// take for its own are named. Any other letter stays as it is.
func escape(text string) string {
	shown := strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r), r == 0xFFFE, r == 0xFFFF:
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, noText))
	return marks.Replace(strings.Join(strings.Fields(shown), " "))
}

var marks = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "'", "&#39;")
