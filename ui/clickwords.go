package ui

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// handle is the arm (mm) of the handle that torques are told at besides the
// disc's own rim.
const handle = 100

// clickWords says in words what a catch does.
func (w *Window) clickWords(p plan.Plan, k plate.Click) string {
	t := w.words.Text
	if k.State() != ball.Clicks {
		return t("click.state." + strings.ReplaceAll(k.State().String(), " ", "-"))
	}
	h, _ := k.Home()
	torques, _ := k.Torques()
	onTrack, _ := k.DeadBand(0, k.Drag) // of a ball on its track
	args := words.Args{
		"Drop": words.MM(h.Drop), "Contact": words.Deg(h.Angle), "Force": words.N(h.Force),
		"Holding": words.NM(torques.Holding), "Centring": words.NM(torques.Centring), "Drag": words.NM(k.Drag),
		"Handle": words.N(force(torques.Holding, handle)), "Arm": words.MM(handle),
		"Rim":   words.N(force(torques.Holding, p.Turntable.Diameter/2)),
		"Pulls": words.Deg(onTrack.PullsAngle), "Capture": words.Deg(k.Capture()), "Play": words.Deg(h.PlayAngle), "Dead": words.Deg(k.Dead.RestsAngle),
	}
	lines := []string{t("click.rests."+h.Rest.String(), args), t("click.holds", args), t("click.homes", args)}
	if torques.Centring <= k.Drag {
		lines[2] = t("click.stays", args)
	}
	if h.Play > 0 {
		lines = append(lines, t("click.plays", args))
	}
	if k.HasDead {
		lines = append(lines, t("click.dead", args))
	}
	return strings.Join(append(lines, t("check.not-a-lock.text")), " ")
}

// force returns the push (N) at an arm (mm) for a torque, 0 without an arm.
func force(torque, arm float64) float64 {
	f, _ := ball.AtHandle(torque, arm)
	return f
}
