package ball

import "math"

// Coil is a helical compression spring of round wire, as it is measured. Its
// formulas are those of Shigley, Example 10-1, which the tests reproduce.
type Coil struct {
	Wire        float64 // diameter of the wire, mm (0.001 to 100,000)
	Mean        float64 // mean diameter of the coil: outside less one wire, mm (0.001 to 100,000, over the wire's)
	ActiveTurns float64 // turns that give: with squared ends two less than the whole count (0.01 to 100,000)
	Modulus     float64 // shear modulus of the wire, MPa (1 to 10,000,000)
}

// Loose returns the spring as it lies on the bench, by its length (mm) under no
// load. It fails where a value is out of its range, or the spring would be no
// longer than its own turns laid close.
func (c Coil) Loose(freeLength float64) (Loose, error) {
	err := check(
		size("wire diameter", c.Wire),
		quantity{"mean coil diameter", c.Mean, max(c.Wire, leastSize), mostSize, "mm"},
		quantity{"active turns", c.ActiveTurns, 0.01, 1e5, "turns"},
		quantity{"shear modulus", c.Modulus, 1, mostModulus, "MPa"},
	)
	if err != nil {
		return Loose{}, err
	}
	if err := check(quantity{"free length", freeLength, c.Solid(), mostSize, "mm"}); err != nil {
		return Loose{}, err
	}
	return Loose{FreeLength: freeLength, Rate: c.Rate(), Solid: c.Solid()}, nil
}

// Rate returns the spring's rate in N/mm: d⁴G/(8D³N).
func (c Coil) Rate() float64 {
	return math.Pow(c.Wire, 4) * c.Modulus / (8 * math.Pow(c.Mean, 3) * c.ActiveTurns)
}

// Index returns the spring index C = D/d. Springs are commonly wound between 4
// and 12.
func (c Coil) Index() float64 { return c.Mean / c.Wire }

// Bergstrasser returns the factor by which curvature raises the stress at the
// inside of the coil: (4C+2)/(4C-3), for C of at least 1.
func (c Coil) Bergstrasser() float64 { return (4*c.Index() + 2) / (4*c.Index() - 3) }

// Stress returns the shear stress in the wire (MPa) under a force (N):
// K·8FD/(πd³) with Bergsträsser's factor.
func (c Coil) Stress(force float64) float64 {
	return c.Bergstrasser() * 8 * force * c.Mean / (math.Pi * math.Pow(c.Wire, 3))
}

// Solid returns the length with the turns laid close (mm), for squared ends
// that are not ground: d(N+3), two turns and the thickness of one besides the
// active ones. Grinding the ends takes up to one wire off.
func (c Coil) Solid() float64 { return c.Wire * (c.ActiveTurns + 3) }
