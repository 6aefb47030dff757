package detent

import (
	"stopwright/detent/ball"
	"stopwright/detent/plate"
)

// jsonClick is what one catch does. Numbers that mean nothing, because the ball
// locks, falls in or does not reach, are null. Forces are N, torques N·m.
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
	CaptureAngle   float64  `json:"capture_angle"`
	DeadBand       *float64 `json:"dead_band"`
	TrackDent      *float64 `json:"track_dent"`
}

func (r Report) clicks() []jsonClick {
	out := []jsonClick{}
	for _, k := range r.Plate.Clicks {
		out = append(out, r.click(k))
	}
	return out
}

func (r Report) click(k plate.Click) jsonClick {
	j := jsonClick{
		Catch: r.Plate.Plan.Catches[k.Catch].Name, DragTorque: k.Drag, CaptureAngle: k.Capture().Degrees(),
	}
	if ride, ok := k.Click.Riding(); ok {
		j.RidingForce = &ride.Force
		if dent, ok := r.dent(ride.Force); ok {
			j.TrackDent = &dent.Depth
		}
	}
	if h, ok := k.Home(); ok {
		contact, play := h.Angle.Degrees(), h.PlayAngle.Degrees()
		j.Drop, j.ContactAngle, j.Play, j.PlayAngle, j.SeatedForce = &h.Drop, &contact, &h.Play, &play, &h.Force
	}
	if t, ok := k.Torques(); ok {
		j.HoldingTorque, j.CentringTorque = &t.Holding, &t.Centring
	}
	if k.HasDead {
		dead := k.Dead.RestsAngle.Degrees()
		j.DeadBand = &dead
	}
	return j
}

// dent returns the mark the ball's first pass leaves on the seats' face; false
// where the material's hardness is not known.
func (r Report) dent(force float64) (ball.Dent, bool) {
	return ball.Dent{}, false
}
