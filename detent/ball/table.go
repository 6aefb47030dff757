package ball

// StandardGravity turns kilograms into newtons, m/s²: exact, by definition.
const StandardGravity = 9.80665

// Table is a loaded turntable on its base.
type Table struct {
	Load          float64 // all that rests on the base, kg (0 or more)
	Friction      float64 // of table on base (0 or more)
	BearingRadius float64 // mean radius at which it rubs, mm (0 or more)
}

// Weight returns the load's weight, N.
func (t Table) Weight() float64 { return t.Load * StandardGravity }

// Drag returns the torque (N·m) with which the table resists being turned by a
// ball: the friction of what the balls' lift (N, all of them together) leaves
// of the load, and the torque of the other balls riding on the face (N·m, see
// [Click.Riding]). Where the lift exceeds the load only that is left.
func (t Table) Drag(lift, others float64) float64 {
	return t.Friction*max(t.Weight()-lift, 0)*t.BearingRadius/1000 + others
}

// AtHandle returns the force (N) at a handle this far from the pivot (mm, over
// 0) for a torque (N·m). It is false for an arm of 0 or less.
func AtHandle(torque, arm float64) (float64, bool) {
	if arm <= 0 {
		return 0, false
	}
	return torque / arm * 1000, true
}
