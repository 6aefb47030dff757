package ink

import (
	"encoding/binary"
	"image/color"
)

// Two of a pixel's four channels are worked on at once, 16 bits apart.
const (
	pair  = 0x00ff00ff
	round = 0x00800080 // half of the 256 by which a pair is divided
)

// whole is full coverage: coverage is reckoned in 256ths.
const whole = 256

// tint is a premultiplied colour made ready for blending.
type tint struct {
	word   uint32 // the four bytes as they lie in the image
	rb, ga uint32 // red and blue, green and alpha
	alpha  uint32
}

func tintOf(c color.RGBA) tint {
	w := binary.LittleEndian.Uint32([]byte{c.R, c.G, c.B, c.A})
	return tint{word: w, rb: w & pair, ga: w >> 8 & pair, alpha: uint32(c.A)}
}

// invisible reports whether the tint leaves no mark.
func (t tint) invisible() bool { return t.word == 0 }

// put blends the tint over the pixel whose first byte is px[0], covering the
// given share of it: 0 or less nothing, 1 or more all.
func (t tint) put(px []uint8, share float64) {
	if share > 0 {
		t.blend(px, uint32(min(share, 1)*whole+0.5))
	}
}

// blend is put with the share in 256ths, at most whole.
func (t tint) blend(px []uint8, share uint32) {
	px = px[:4:4]
	left := whole - (t.alpha*share+127)/255 // what is left of the ground
	if left == 0 {
		binary.LittleEndian.PutUint32(px, t.word)
		return
	}
	g := binary.LittleEndian.Uint32(px)
	rb := (g&pair*left + t.rb*share + round) >> 8 & pair
	ga := (g>>8&pair*left + t.ga*share + round) &^ uint32(pair)
	binary.LittleEndian.PutUint32(px, rb|ga)
}

// run blends the tint over a run of pixels, covering the same share of each.
func (t tint) run(px []uint8, share float64) {
	if share <= 0 {
		return
	}
	m := uint32(min(share, 1)*whole + 0.5)
	if m == whole && t.alpha == 255 {
		t.lay(px)
		return
	}
	left := whole - (t.alpha*m+127)/255
	rb, ga := t.rb*m+round, t.ga*m+round
	for ; len(px) >= 4; px = px[4:] {
		g := binary.LittleEndian.Uint32(px)
		binary.LittleEndian.PutUint32(px, (g&pair*left+rb)>>8&pair|(g>>8&pair*left+ga)&^pair)
	}
}

// lay replaces a run of pixels by the tint.
func (t tint) lay(px []uint8) {
	for ; len(px) >= 4; px = px[4:] {
		binary.LittleEndian.PutUint32(px, t.word)
	}
}
