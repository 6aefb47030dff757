package figures

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// hatch fills closed outlines with strokes at 45°, rising to the right or to the
// left, so many mm apart. What two outlines share is left out.
func (d *drafter) hatch(l drawing.Layer, apart float64, rising bool, outlines ...[]geom.Point) {
	slope := 1.0
	if !rising {
		slope = -1
	}
	// A stroke is where y − slope·x has one value.
	of := func(p geom.Point) float64 { return p.Y - slope*p.X }
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, o := range outlines {
		for _, p := range o {
			lo, hi = min(lo, of(p)), max(hi, of(p))
		}
	}
	step := apart * math.Sqrt2
	for c := (math.Floor(lo/step) + 0.5) * step; c < hi; c += step {
		var cuts []float64 // x of where the stroke crosses an outline
		for _, o := range outlines {
			for i, q := range o {
				p := o[(i+len(o)-1)%len(o)]
				if a, b := of(p)-c, of(q)-c; (a < 0) != (b < 0) {
					cuts = append(cuts, p.X+a/(a-b)*(q.X-p.X))
				}
			}
		}
		slices.Sort(cuts)
		for i := 1; i < len(cuts); i += 2 {
			x0, x1 := cuts[i-1], cuts[i]
			d.path(l, geom.Point{X: x0, Y: c + slope*x0}, geom.Point{X: x1, Y: c + slope*x1})
		}
	}
}
