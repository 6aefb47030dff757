package plan

// WithLogOf returns p with the log of another plan: what was measured and done,
// which is kept when decisions are taken back.
func (p Plan) WithLogOf(other Plan) Plan {
	p.Readings, p.AsDrilled, p.Ticks = other.Readings, other.AsDrilled, other.Ticks
	if other.Tool == nil {
		return p
	}
	switch {
	case p.Tool != nil:
		t := *p.Tool
		t.Marks = other.Tool.Marks
		p.Tool = &t
	case len(other.Tool.Marks) > 0: // marks need a tool to be kept with
		t := NewTool()
		t.Marks = other.Tool.Marks
		p.Tool = &t
	}
	return p
}
