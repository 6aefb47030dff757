package plan

import (
	"math"
	"strings"
)

// NewPlan returns the plan that a maker begins with: [Default], drilled through
// a guide, with a light load and relief holes, so that its first stops click
// without a warning. Values are common practice, no source.
func NewPlan() Plan {
	p := Default()
	p.Seat.ReliefDiameter = 2.5
	p.Shop.Method = MethodPillarDrillGuided
	p.Shop.SeatError, p.Shop.CatchError = 0.2, 0.2
	p.Shop.Friction, p.Shop.TableFriction = 0.15, 0.15
	p.Shop.Load, p.Shop.Target = 3, 0.25
	return p
}

// NewCollar returns a collar for a turntable: 25 mm wide all round, its screws
// midway, otherwise as in [Default]'s sizes.
func NewCollar(t Turntable) Collar {
	const wide = 25.0 // mm; room for a screw with its edge distance: common practice, no source
	c := defaultCollar()
	c.OutsideDiameter = math.Min(t.Diameter+2*wide, sizes.hi)
	c.Screws.Circle = math.Min(t.Diameter+wide, sizes.hi)
	c.Thickness, c.Material = t.Thickness, t.Material
	return c
}

// NewPlacement returns a further catch for a plan: the next free letter, on the
// first catch's ring, a quarter turn on from the last.
func NewPlacement(p Plan) Placement {
	taken := make(map[string]bool, len(p.Catches))
	for _, c := range p.Catches {
		taken[c.Name] = true
	}
	last := p.Catches[len(p.Catches)-1]
	return Placement{
		Name:    freeName(taken),
		Azimuth: math.Mod(last.Azimuth+90, 360),
		Radius:  p.Catches[0].Radius,
	}
}

// freeName returns the first of A, B … Z, AA, BB … that is not taken.
func freeName(taken map[string]bool) string {
	for n := 1; ; n++ {
		for c := 'A'; c <= 'Z'; c++ {
			if name := strings.Repeat(string(c), n); !taken[name] {
				return name
			}
		}
	}
}

// NewFeature returns a 5 mm hole in the base, well inside the ring on the left.
func NewFeature(p Plan) Feature {
	return Feature{Part: PartBase, Kind: Hole, X: -math.Round(p.Catches[0].Radius / 2), Diameter: 5}
}
