package measure

import "math/big"

// Exact by definition: the standard acceleration of free fall (third General
// Conference on Weights and Measures, 1901), by which a scale that shows mass is
// read as a force, and the international pound (1959).
var (
	newtonsPerKilogram = big.NewRat(980665, 100000)
	kilogramsPerPound  = big.NewRat(45359237, 100000000)
	newtonsPerPound    = new(big.Rat).Mul(newtonsPerKilogram, kilogramsPerPound)
)

// forceUnits holds what may follow a force, and how many newtons each is. A
// catch is measured by pressing it on a kitchen scale, so masses stand for the
// forces that they press with.
var forceUnits = map[string]*big.Rat{
	"n":  big.NewRat(1, 1),
	"kg": newtonsPerKilogram, "kgf": newtonsPerKilogram, "kp": newtonsPerKilogram,
	"g": thousandth(newtonsPerKilogram), "gf": thousandth(newtonsPerKilogram),
	"lb": newtonsPerPound, "lbs": newtonsPerPound, "lbf": newtonsPerPound,
	"oz": ounces(newtonsPerPound), "ozf": ounces(newtonsPerPound),
}

func thousandth(r *big.Rat) *big.Rat { return new(big.Rat).Mul(r, big.NewRat(1, 1000)) }

func ounces(pound *big.Rat) *big.Rat { return new(big.Rat).Mul(pound, big.NewRat(1, 16)) }

// ParseForce reads a force and returns it in newtons: a number as [ParseNumber]
// reads it, and after it N, kg, g, lb or oz, the last four as a scale at rest
// shows them. Without a unit it is in newtons.
func ParseForce(text string) (newtons float64, err error) {
	return read(Force, text, func(c *cursor) (*big.Rat, Reason) {
		v, reason := c.value()
		if reason != 0 {
			return nil, reason
		}
		if scale, ok := forceUnits[c.peek(0).text]; ok {
			c.at++
			v.Mul(v.Rat, scale)
		}
		return v.Rat, c.end()
	})
}

// ParseRate reads a spring's rate and returns it in N/mm: a number, and after it
// a unit of force over one of length, as N/mm or lb/in. Without a unit it is in
// N/mm.
func ParseRate(text string) (newtonsPerMM float64, err error) {
	return read(Rate, text, func(c *cursor) (*big.Rat, Reason) {
		v, reason := c.value()
		if reason != 0 {
			return nil, reason
		}
		force, isForce := forceUnits[c.peek(0).text]
		length, isLength := lengthUnits[c.peek(2).text]
		if isForce && c.peek(1).is("/") && isLength {
			c.at += 3
			v.Mul(v.Rat, force)
			v.Quo(v.Rat, length)
		}
		return v.Rat, c.end()
	})
}
