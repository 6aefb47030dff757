package plan

import (
	"math"
	"strings"
)

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
