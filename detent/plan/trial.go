package plan

import "math"

// Trial returns a plan of the same plate at another size, factor times as large
// (0.5: half size), to be made in scrap first: a plan of its own, which bears its
// scale. The error is a [Problems] where something would be too small or too
// large.
//
// What lies on the plates comes closer together: outlines, rings, the circle of
// the collar's screws, where features, sliders and pins lie. What is bought or made with the same
// tools stays: ball, catch and seat; holes, slots and screws as wide as they are;
// the pivot's bore, play and clearances; and the errors of the shop. The parts
// stay as thick too, because catch and seat go as deep as ever. The load stays:
// drag and click then keep their proportion. What is known of the plate itself,
// where its tool stands and what was measured, does not hold for the trial and is
// left out.
func Trial(p Plan, factor float64) (Plan, error) {
	t := p.Clone()
	size := func(lengths ...*float64) {
		const step = 1000 // to a thousandth of a mm, as finely as anything is cut
		for _, l := range lengths {
			*l = math.Round(*l*factor*step) / step
		}
	}
	t.Scale *= factor
	size(&t.Turntable.Diameter, &t.Turntable.BearingRadius)
	size(&t.Base.Width, &t.Base.Depth, &t.Base.Diameter)
	if t.Collar != nil {
		size(&t.Collar.OutsideDiameter, &t.Collar.Screws.Circle)
	}
	for i := range t.Catches {
		size(&t.Catches[i].Radius)
	}
	for i := range t.Features {
		f := &t.Features[i]
		size(&f.X, &f.Y, &f.X2, &f.Y2, &f.Radius)
	}
	m := &t.Making
	size(&m.EndStops.Radius, &m.Clamp.Radius, &m.Registration.Distance)
	size(&m.Fence.Length, &m.Fence.Spacing, &m.Fence.Y)
	t = t.WithLogOf(Plan{})
	t.Tool = nil
	return t, Validate(t)
}

// TrialSize reports whether a trial may be made factor times as large: a
// twentieth to twenty times, and not as large as the plate itself. Common
// practice, no source: beyond that nothing is learnt for the plate.
func TrialSize(factor float64) bool { return factor >= 0.05 && factor <= 20 && factor != 1 }

// IsTrial reports whether the plan is a trial of another.
func (p Plan) IsTrial() bool { return p.Scale != 1 }
