package detent

import "stopwright/detent/geom"

// jsonPair is what it does that two catches drop together, beside what the first
// of them does alone. Angles are degrees of the table's turn, torques N·m.
type jsonPair struct {
	Catches [2]string    `json:"catches"`
	Angles  []geom.Angle `json:"angles"` // of the stops that the two hold
	Apart   float64      `json:"apart"`  // between the catches about the pivot, 0 to 180

	// Null where no ball clicks.
	HoldingTorque       *float64 `json:"holding_torque"`
	HoldingTorqueAlone  *float64 `json:"holding_torque_alone"`
	CentringTorque      *float64 `json:"centring_torque"`
	CentringTorqueAlone *float64 `json:"centring_torque_alone"`

	// The most by which the table, lying off its pivot, puts the stop off, and the
	// standard deviation of the stop with both balls home.
	Sway      float64 `json:"sway"`
	SwayAlone float64 `json:"sway_alone"`
	Std       float64 `json:"std"`
	StdAlone  float64 `json:"std_alone"`

	// By how much the two seats may disagree with both balls home, from where on
	// one ball finds no seat, and the chance (0 to 1) that they disagree by more
	// than they may.
	Takes  float64 `json:"takes"`
	Misses float64 `json:"misses"`
	Hangs  float64 `json:"hangs"`
}

func (r Report) pairs() []jsonPair {
	out := []jsonPair{}
	for _, p := range r.Pairs() {
		catches, h := r.Plate.Plan.Catches, p.Hold
		j := jsonPair{
			Catches: [2]string{catches[h.Catches[0]].Name, catches[h.Catches[1]].Name},
			Apart:   p.Apart.Degrees(),

			HoldingTorque: known(h.Holding, h.Clicks), HoldingTorqueAlone: known(p.Alone.Holding, p.Alone.Clicks),
			CentringTorque: known(h.Centring, h.Clicks), CentringTorqueAlone: known(p.Alone.Centring, p.Alone.Clicks),

			Sway: p.Sway(p.Shift).Degrees(), SwayAlone: p.SwayAlone().Degrees(),
			Std: p.Std().Degrees(), StdAlone: p.StdAlone().Degrees(),
			Takes: p.Takes().Degrees(), Misses: p.Misses().Degrees(), Hangs: p.Hangs(),
		}
		for _, s := range h.Stops {
			j.Angles = append(j.Angles, r.Plate.Stops[s].Angle)
		}
		out = append(out, j)
	}
	return out
}
