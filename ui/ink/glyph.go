package ink

import (
	"image"
	"math"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"stopwright/assets/fonts"
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// theFont is the drawing letter, parsed once.
var theFont = sync.OnceValue(func() *sfnt.Font {
	f, err := sfnt.Parse(fonts.Regular)
	if err != nil {
		panic("ink: embedded font is damaged: " + err.Error()) // cannot happen: the font is compiled in and a test parses it
	}
	return f
})

// How finely a glyph's mask is kept: shapes between these steps cannot be told
// apart by eye.
const (
	sizeSteps  = 8 // to a pixel of cap height
	placeSteps = 4 // to a pixel of place
	angleSteps = 2 // to a degree
)

const (
	// maxKeptSize (px of cap height) is that above which a glyph is filled
	// straight from its outline: few such letters fit on a screen, and their
	// masks are large.
	maxKeptSize = 64
	// maxKeptBytes is the size the store of masks may reach before it is emptied.
	maxKeptBytes = 1 << 22
)

// letter is what is known of a rune at every size.
type letter struct {
	index   sfnt.GlyphIndex
	advance float64 // per unit of cap height
}

// glyphKey names one mask: a glyph at a size, slope and place within the pixel,
// each in steps.
type glyphKey struct {
	index  sfnt.GlyphIndex
	size   uint16
	angle  int16
	fx, fy uint8
}

// glyphMask is coverage at a place relative to the pixel that holds the pen.
type glyphMask struct {
	at   image.Rectangle
	from int // in glyphs.store
}

// glyphs keeps what has been asked of the font.
type glyphs struct {
	buf     sfnt.Buffer
	letters map[rune]letter
	masks   map[glyphKey]glyphMask
	store   []uint8 // of masks, one after the other
}

// letter returns a rune's glyph; that of a missing rune is the font's own mark
// for it.
func (g *glyphs) letter(r rune) letter {
	if l, ok := g.letters[r]; ok {
		return l
	}
	if g.letters == nil {
		g.letters, g.masks = map[rune]letter{}, map[glyphKey]glyphMask{}
	}
	f := theFont()
	em := fixed.I(int(f.UnitsPerEm()))
	var l letter
	if i, err := f.GlyphIndex(&g.buf, r); err == nil {
		l.index = i
	}
	if a, err := f.GlyphAdvance(&g.buf, l.index, em, font.HintingNone); err == nil {
		l.advance = float64(a) / float64(em) / drawing.CapsPerEm()
	}
	g.letters[r] = l
	return l
}

// width returns a text's width per unit of cap height.
func (g *glyphs) width(text string) (w float64) {
	for _, r := range text {
		w += g.letter(r).advance
	}
	return w
}

// letter paints one glyph with its origin at pen.
func (c *Canvas) letter(l letter, pen Px, size, angle float64, t tint) {
	if reach := 3 * size; c.outside(Px{pen.X - reach, pen.Y - reach}, Px{pen.X + reach, pen.Y + reach}) {
		return
	}
	if size > maxKeptSize {
		c.outline(l.index, pen, size, angle)
		at := c.filler.fill(c.Img.Rect)
		c.stamp(c.filler.mask.Pix, at, t)
		return
	}
	x, fx := split(pen.X)
	y, fy := split(pen.Y)
	k := glyphKey{
		index: l.index, size: uint16(math.Round(size * sizeSteps)),
		angle: int16(math.Round(geom.Angle(angle).Wrap().Degrees() * angleSteps)), fx: fx, fy: fy,
	}
	m, ok := c.glyphs.masks[k]
	if !ok {
		m = c.keep(k)
	}
	c.stamp(c.glyphs.store[m.from:], m.at.Add(image.Pt(x, y)), t)
}

// split returns the pixel that holds v and v's place within it, in steps.
func split(v float64) (pixel int, step uint8) {
	q := int(math.Round(v * placeSteps))
	f := ((q % placeSteps) + placeSteps) % placeSteps
	return (q - f) / placeSteps, uint8(f)
}

// keep makes and stores the mask that k names.
func (c *Canvas) keep(k glyphKey) glyphMask {
	c.outline(k.index, Px{float64(k.fx) / placeSteps, float64(k.fy) / placeSteps},
		float64(k.size)/sizeSteps, float64(k.angle)/angleSteps)
	at := c.filler.fill(image.Rect(-4*maxKeptSize, -4*maxKeptSize, 4*maxKeptSize, 4*maxKeptSize))
	g := &c.glyphs
	if len(g.store) > maxKeptBytes {
		clear(g.masks)
		g.store = g.store[:0]
	}
	m := glyphMask{at: at, from: len(g.store)}
	if !at.Empty() {
		g.store = append(g.store, c.filler.mask.Pix...)
	}
	g.masks[k] = m
	return m
}

// outline puts a glyph's outline into the filler, its curves as short straight
// sides.
func (c *Canvas) outline(index sfnt.GlyphIndex, pen Px, size, angle float64) {
	f := &c.filler
	f.reset()
	em := theFont().UnitsPerEm()
	segments, err := theFont().LoadGlyph(&c.glyphs.buf, index, fixed.I(int(em)), nil)
	if err != nil {
		return // a glyph the font cannot give leaves a blank
	}
	sin, cos := geom.Angle(angle).SinCos()
	k := size / drawing.CapsPerEm() / float64(fixed.I(int(em)))
	place := func(p fixed.Point26_6) Px {
		x, y := k*float64(p.X), k*float64(p.Y)
		return Px{pen.X + x*cos + y*sin, pen.Y - x*sin + y*cos}
	}
	var last Px
	for i, s := range segments {
		p := place(s.Args[0])
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			if i > 0 {
				f.close()
			}
			f.add(p)
			last = p
		case sfnt.SegmentOpLineTo:
			f.add(p)
			last = p
		case sfnt.SegmentOpQuadTo:
			end := place(s.Args[1])
			f.curve(last, p, end)
			last = end
		}
	}
	f.close()
}

// curve adds a quadratic curve from p by way of q to r, without p. A chord of
// one n-th of it strays by |p − 2q + r|/4n².
func (f *filler) curve(p, q, r Px) {
	const stray = 0.05 // px, far below what can be seen
	bend := Px{p.X - 2*q.X + r.X, p.Y - 2*q.Y + r.Y}
	n := math.Ceil(math.Sqrt(math.Hypot(bend.X, bend.Y) / (4 * stray)))
	n = max(1, min(n, 64))
	for i := 1.0; i <= n; i++ {
		u := i / n
		v := 1 - u
		f.add(Px{v*v*p.X + 2*u*v*q.X + u*u*r.X, v*v*p.Y + 2*u*v*q.Y + u*u*r.Y})
	}
}
