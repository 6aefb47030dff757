package measure

import "math/big"

// Unit is the unit in which lengths are shown, and in which a length typed
// without a unit is meant. Lengths are kept in millimetres whatever the unit.
type Unit int

// The display units. Any other value of Unit acts as Millimetre.
const (
	Millimetre Unit = iota
	Inch
)

// MillimetresPerInch is exact by definition (the international inch of 1959).
const MillimetresPerInch = 25.4

// Symbol returns the unit as it is written after a number.
func (u Unit) Symbol() string {
	if u == Inch {
		return "in"
	}
	return "mm"
}

// FromMillimetres converts a length in mm to the unit.
func (u Unit) FromMillimetres(mm float64) float64 {
	if u == Inch {
		return mm / MillimetresPerInch
	}
	return mm
}

// millimetres returns the length of one unit, exactly.
func (u Unit) millimetres() *big.Rat { return lengthUnits[u.Symbol()] }

// lengthUnits holds what may follow a length, and how many mm each is. Feet are
// left out: a single mark is a foot to one reader and a slip for an inch to the
// next, and no part of a turning plate is measured in them.
var lengthUnits = map[string]*big.Rat{
	"mm":     big.NewRat(1, 1),
	"cm":     big.NewRat(10, 1),
	"m":      big.NewRat(1000, 1),
	"in":     big.NewRat(254, 10),
	"inch":   big.NewRat(254, 10),
	"inches": big.NewRat(254, 10),
	`"`:      big.NewRat(254, 10),
}
