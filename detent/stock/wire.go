package stock

import "slices"

// Wire is a wire that springs are wound from.
type Wire struct {
	ID      string
	Modulus Value // shear modulus, MPa
}

// WordKey is the key of the wire's name in the catalogue of words.
func (w Wire) WordKey() string { return "wire." + w.ID }

// springWire is where moduli of spring wire come from. The modulus of music wire
// falls by a few per cent from thin wire to thick; the figure is that of 0.8 to
// 1.6 mm.
var (
	musicWire  = Evidence{"Shigley's Mechanical Engineering Design, 10th edition, Example 10-1", Transcribed}
	springWire = Evidence{"Shigley's Mechanical Engineering Design, 10th edition, Table 10-5", Memory}
)

// wires holds the wires of small springs, the commonest first.
var wires = []Wire{
	{"music", Value{81_700, 80_000, 82_700, musicWire}},
	{"stainless-302", figure(69_000, springWire)},
	{"hard-drawn", between(78_600, 80_700, springWire)},
	{"chrome-silicon", figure(77_200, springWire)},
	{"phosphor-bronze", figure(41_400, springWire)},
}

// Wires returns the wires of small springs, the commonest first.
func Wires() []Wire { return slices.Clone(wires) }
