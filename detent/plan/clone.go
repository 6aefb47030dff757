package plan

import "slices"

// Clone returns a copy of p that shares no memory with it that either could
// write to.
func (p Plan) Clone() Plan {
	p.Collar = copied(p.Collar)
	p.Catches = slices.Clone(p.Catches)
	p.Stops = slices.Clone(p.Stops)
	for i := range p.Stops {
		p.Stops[i].Catches = slices.Clone(p.Stops[i].Catches)
	}
	p.Features = slices.Clone(p.Features)
	p.Shop.Reference = copied(p.Shop.Reference)
	p.Router = copied(p.Router)
	if p.Tool = copied(p.Tool); p.Tool != nil {
		p.Tool.Marks = slices.Clone(p.Tool.Marks)
		p.Tool.FenceUnderside = copied(p.Tool.FenceUnderside)
	}
	p.Readings = slices.Clone(p.Readings)
	p.AsDrilled = slices.Clone(p.AsDrilled)
	p.Ticks = slices.Clone(p.Ticks)
	return p
}

// copied returns a pointer to a copy of what p points to; nil for nil.
func copied[T any](p *T) *T {
	if p == nil {
		return nil
	}
	c := *p
	return &c
}
