package preset

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// Catches returns the presets of a catch, the small before the large. All sizes
// are mm, forces N.
func Catches() []Preset {
	var out []Preset
	for _, c := range pressedIn {
		out = append(out, ofCatch("pressed", words.Args{"Ball": words.MM(c.BallDiameter)}, c))
	}
	for _, c := range threaded {
		out = append(out, ofCatch("threaded", words.Args{
			"Thread": c.thread, "Ball": words.MM(c.BallDiameter),
		}, c.Catch))
	}
	return out
}

func ofCatch(key string, args words.Args, c plan.Catch) Preset {
	return Preset{Key: key, Args: args, apply: func(p *plan.Plan) { p.Catch = c }}
}

// pressedIn are catches with a smooth body and a flange, pushed into a bore a
// little larger, with the flange let in below the face.
var pressedIn = []plan.Catch{
	pressed(4, 1.3, 4, 10, 5.5, 9, 7, 0.8),
	pressed(5, 1.6, 5, 14, 6.5, 11, 8, 0.8),
	pressed(6, 2, 8, 20, 8, 13, 9.5, 1),
	pressed(8, 2.6, 12, 30, 11, 16, 13, 1.2),
	pressed(10, 3.2, 15, 40, 13, 20, 15, 1.5),
}

func pressed(ball, out, free, flush, body, length, flange, flangeThick float64) plan.Catch {
	return plan.Catch{
		BallDiameter: ball, Protrusion: out, FreeForce: free, FlushForce: flush,
		BodyDiameter: body, BodyLength: length, FlangeDiameter: flange, FlangeThickness: flangeThick,
		BodyAllowance: 0.1, RecessAllowance: 0.5,
	}
}

// threaded are plungers screwed into a tapped hole. The bore is then the
// tapping drill's, smaller than the thread, so the allowance is below 0.
var threaded = []struct {
	thread string
	plan.Catch
}{
	{"M6", screwed(3.5, 0.9, 8, 15, 6, 14, 5)},
	{"M8", screwed(5, 1.4, 12, 25, 8, 16, 6.75)},
	{"M10", screwed(6, 1.9, 18, 40, 10, 19, 8.5)},
	{"M12", screwed(8, 2.5, 25, 55, 12, 22, 10.25)},
}

func screwed(ball, out, free, flush, thread, length, tappingDrill float64) plan.Catch {
	return plan.Catch{
		BallDiameter: ball, Protrusion: out, FreeForce: free, FlushForce: flush,
		BodyDiameter: thread, BodyLength: length, FlangeThickness: 1,
		BodyAllowance: tappingDrill - thread,
	}
}
