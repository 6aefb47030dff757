package detent

import (
	"stopwright/detent/ball"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
)

// jsonClick is what one catch does when it drops alone. Forces are N, torques
// N·m. Numbers that mean nothing, because the ball locks, falls in or does not
// reach, are null; so is the dent where the material's hardness is not known.
type jsonClick struct {
	Catch          string   `json:"catch"`
	Drop           *float64 `json:"drop"`
	ContactAngle   *float64 `json:"contact_angle"`
	Play           *float64 `json:"play"`
	PlayAngle      *float64 `json:"play_angle"`
	SeatedForce    *float64 `json:"seated_force"`
	RidingForce    *float64 `json:"riding_force"`
	HoldingTorque  *float64 `json:"holding_torque"`
	CentringTorque *float64 `json:"centring_torque"`
	DragTorque     float64  `json:"drag_torque"`
	CaptureAngle   *float64 `json:"capture_angle"`
	DeadBand       *float64 `json:"dead_band"`
	TrackDent      *float64 `json:"track_dent"` // depth
}

func (r Report) click(k plate.Click) jsonClick {
	j := jsonClick{Catch: r.Plate.Plan.Catches[k.Catch].Name, DragTorque: k.Drag}
	ride, rides := k.Click.Riding()
	j.RidingForce = known(ride.Force, rides)
	j.CaptureAngle = known(k.Capture().Degrees(), rides)
	h, ok := k.Home()
	j.Drop, j.ContactAngle = known(h.Drop, ok), known(h.Angle.Degrees(), ok)
	j.Play, j.PlayAngle = known(h.Play, ok), known(h.PlayAngle.Degrees(), ok)
	j.SeatedForce = known(h.Force, ok)
	t, ok := k.Torques()
	j.HoldingTorque, j.CentringTorque = known(t.Holding, ok), known(t.Centring, ok)
	j.DeadBand = known(k.Dead.RestsAngle.Degrees(), k.HasDead)
	dent, ok := r.dent(ride.Force)
	j.TrackDent = known(dent.Depth, rides && ok)
	return j
}

// known returns a number for the report, or null for one that means nothing. -0
// is written as 0.
func known(x float64, ok bool) *float64 {
	x += 0
	if !ok {
		return nil
	}
	return &x
}

// dent estimates the mark that a ball pressing with a force (N) leaves on the
// seats' face, or on the wear ring let into it, at its first pass. It is false
// where the hardness of that material is not known, and where the ball would sink
// in beyond its half.
func (r Report) dent(force float64) (ball.Dent, bool) {
	p, face := r.Plate.Plan, r.Plate.SeatsPart
	if plate.ThicknessOf(p, plan.PartWearRing) > 0 {
		face = plan.PartWearRing
	}
	m, ok := stock.FindMaterial(plate.MaterialOf(p, face))
	if !ok || !m.Hardness.Known() {
		return ball.Dent{}, false
	}
	return ball.TrackDent(force, p.Catch.BallDiameter, m.Hardness.Typical)
}
