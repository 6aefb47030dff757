package plate

import (
	"slices"

	"stopwright/detent/ball"
	"stopwright/detent/plan"
)

// Lift returns how hard (N) the balls together press the turntable up when all
// ride on the face, which is when they press hardest.
func Lift(clicks []Click) float64 {
	total := 0.0
	for _, k := range clicks {
		total += k.Riding
	}
	return total
}

// Load returns the weight (N) of all that rests on the base.
func Load(p plan.Plan) float64 { return tableOf(p).Weight() }

// tableOf returns the loaded turntable. Without a bearing radius of its own it
// rubs at two thirds of its radius, the mean of an even pressure.
func tableOf(p plan.Plan) ball.Table {
	r := p.Turntable.BearingRadius
	if r == 0 {
		r = p.Turntable.Diameter / 3
	}
	return ball.Table{Load: p.Shop.Load, Friction: p.Shop.TableFriction, BearingRadius: r}
}

// dragOf returns the torque (N·m) with which the table resists the catches that
// drop while the others ride on the face: what the balls lift no longer rubs,
// and those that ride rub instead.
func dragOf(p plan.Plan, clicks []Click, dropping []int) float64 {
	lift, others := 0.0, 0.0
	for i, k := range clicks {
		if slices.Contains(dropping, i) {
			lift += k.Seated
			continue
		}
		lift += k.Riding
		if r, ok := k.Click.Riding(); ok {
			others += r.Torque
		}
	}
	return tableOf(p).Drag(lift, others)
}
