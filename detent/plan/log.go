package plan

// WithLogOf returns p with the log of another plan: what was measured and done,
// which is kept when decisions are taken back.
func (p Plan) WithLogOf(other Plan) Plan {
	p.Readings, p.AsDrilled, p.Ticks = other.Readings, other.AsDrilled, other.Ticks
	return p
}
