package ui

import "image/color"

const (
	// nearlyFull is how opaque text is, of 65,535: to the eye and in eight bits
	// fully so. The toolkit's menus (2.7) write their shortcuts in the low byte
	// of 95 % of it, of fully opaque ink a fifth, too faint to read. Of this it
	// is 0xB8, nearly three quarters.
	nearlyFull = 65407
	// brightest is up to which a channel of 8 bits stays what it is when what it
	// is short of full opacity is made up for; brighter ones would gain one.
	brightest = 170
)

// menuInk returns a colour of text as it is, in which a menu's shortcuts can be
// read.
func menuInk(c color.RGBA) color.RGBA64 {
	channel := func(x uint8) uint16 {
		high := uint16(x)
		if x > brightest {
			high--
		}
		return high<<8 | uint16(x) // menus take the low byte
	}
	return color.RGBA64{R: channel(c.R), G: channel(c.G), B: channel(c.B), A: nearlyFull}
}
