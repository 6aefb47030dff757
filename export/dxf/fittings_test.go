package dxf

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// Whatever slots and pins a plan asks for, their drawing can be written: no arc
// of no length, none that goes all the way round as an arc.
func TestAnyFittingCanBeWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		slider := func() plan.Slider {
			return plan.Slider{
				Diameter: number("pin", 0.1, 100), Radius: number("radius", 0.1, 300), Azimuth: number("azimuth", -360, 360),
				Play: number("play", 0, 10), Beyond: number("beyond", 0, 45),
			}
		}
		p := plan.Default()
		p.Travel.From = number("from", -360, 360)
		p.Travel.To = number("to", p.Travel.From, 360)
		p.Catches[0].Radius = number("ring", 0.1, 300)
		p.Making.EndStops, p.Making.Clamp = slider(), slider()
		p.Making.Dust = plan.DustSlots{Width: number("dust", 0.1, 100), Side: plan.Both, Bridge: number("bridge", 1, 1000)}
		p.Making.Fence.Width = number("fence", 0.1, 100)
		p.Making.Registration.Diameter = number("registration", 0.1, 100)
		p.Making.WearRing.Width = number("wear ring", 0.1, 300)
		p.Making.Carrier.Width = number("carrier", 0.1, 300)
		require.NoError(t, plan.Validate(p))
		pl := plate.New(p)
		for _, part := range drawing.AllPartsOf(p) {
			var out bytes.Buffer
			require.NoError(t, Write(&out, drawing.PartSheet(pl, part, drawing.Info{Words: words.English(), Depths: true})))
		}
	})
}
