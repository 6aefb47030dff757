package drawing

import (
	"strings"
	"sync"
	"unicode"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"stopwright/assets/fonts"
)

// letters is the parsed drawing font with its advance widths, per mille of the
// cap height, so that a text can be laid out without any window or printer.
type letters struct {
	font   *sfnt.Font
	buf    sfnt.Buffer
	mu     sync.Mutex
	widths map[rune]float64
	capEm  float64
}

// theLetters parses the font once; it is asked for its measures at its own
// design units, so that nothing is rounded.
var theLetters = sync.OnceValue(func() *letters {
	f, err := sfnt.Parse(fonts.Regular)
	if err != nil {
		panic("drawing: embedded font is damaged: " + err.Error()) // cannot happen: the font is compiled in and a test parses it
	}
	l := &letters{font: f, widths: map[rune]float64{}}
	m, err := f.Metrics(&l.buf, l.ppem(), font.HintingNone)
	if err != nil || m.CapHeight <= 0 {
		panic("drawing: embedded font has no capital height")
	}
	l.capEm = float64(m.CapHeight) / float64(l.ppem())
	return l
})

func (l *letters) ppem() fixed.Int26_6 { return fixed.I(int(l.font.UnitsPerEm())) }

// advance returns a rune's advance per unit of cap height.
func (l *letters) advance(r rune) float64 {
	if w, ok := l.widths[r]; ok {
		return w
	}
	var w float64
	if g, err := l.font.GlyphIndex(&l.buf, r); err == nil {
		if a, err := l.font.GlyphAdvance(&l.buf, g, l.ppem(), font.HintingNone); err == nil {
			w = float64(a) / float64(l.ppem()) / l.capEm
		}
	}
	l.widths[r] = w
	return w
}

// TextWidth returns the width (mm) of s lettered with capitals size mm high.
func TextWidth(s string, size float64) float64 {
	l := theLetters()
	l.mu.Lock()
	defer l.mu.Unlock()
	var w float64
	for _, r := range s {
		w += l.advance(r)
	}
	return w * size
}

// Lettered returns s as it can be lettered on one line: white space of any kind
// becomes single spaces, other control characters go, and a character that the
// drawing font lacks is shown as a question mark rather than left out.
func Lettered(s string) string {
	l := theLetters()
	l.mu.Lock()
	defer l.mu.Unlock()
	shown := strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r):
			return -1
		}
		// Beyond the basic plane no sheet's font has letters, nor do all
		// writers have a way to name them.
		if g, err := l.font.GlyphIndex(&l.buf, r); err != nil || g == 0 || r > 0xFFFF {
			return missing
		}
		return r
	}, s)
	return strings.Join(strings.Fields(shown), " ")
}

// missing stands for a character that the font lacks.
const missing = '?'

// CapsPerEm returns the height of a capital as a share of the font's size: a
// text of Size s is set at s/CapsPerEm mm.
func CapsPerEm() float64 { return theLetters().capEm }
