package stock

import "slices"

// Fit is how freely a machine screw passes its hole.
type Fit int

// The fits of ISO 273; their holes are toleranced H12, H13 and H14.
const (
	Fine Fit = iota + 1
	Medium
	Coarse
)

// Clearance is the clearance hole of a metric machine screw, in mm.
type Clearance struct {
	Thread               string  // M5
	Nominal              float64 // diameter of the thread
	Fine, Medium, Coarse float64 // diameters of the hole
	Evidence
}

// Hole returns the diameter (mm) of the hole for a fit, and 0 for none of the
// three fits.
func (c Clearance) Hole(fit Fit) float64 {
	switch fit {
	case Fine:
		return c.Fine
	case Medium:
		return c.Medium
	case Coarse:
		return c.Coarse
	}
	return 0
}

var iso273 = Evidence{"ISO 273:1979", Transcribed}

// clearances holds the threads a plate may need. Older charts give 13, 14 and
// 15 mm for M12; those are not the standard's.
var clearances = []Clearance{
	{"M2", 2, 2.2, 2.4, 2.6, iso273},
	{"M2.5", 2.5, 2.7, 2.9, 3.1, iso273},
	{"M3", 3, 3.2, 3.4, 3.6, iso273},
	{"M4", 4, 4.3, 4.5, 4.8, iso273},
	{"M5", 5, 5.3, 5.5, 5.8, iso273},
	{"M6", 6, 6.4, 6.6, 7, iso273},
	{"M8", 8, 8.4, 9, 10, iso273},
	{"M10", 10, 10.5, 11, 12, iso273},
	{"M12", 12, 13, 13.5, 14.5, iso273},
	{"M14", 14, 15, 15.5, 16.5, iso273},
	{"M16", 16, 17, 17.5, 18.5, iso273},
}

// Clearances returns the clearance holes of M2 to M16, the smallest first.
func Clearances() []Clearance { return slices.Clone(clearances) }
