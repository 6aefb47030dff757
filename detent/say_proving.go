package detent

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/proving"
	"stopwright/detent/squares"
)

// Say tells in sentences what the readings say, the gravest first, and what to
// measure next.
func (v Proving) Say(r Report, w *words.Catalogue) []string {
	var out []string
	say := func(key string, args words.Args) { out = append(out, w.Text("proof."+key, args)) }
	if len(v.Seats) > 0 {
		v.sayCommon(say)
		v.sayEccentric(r, say)
		v.saySeats(r, say)
		if v.Play.Known {
			args := words.Args{"Play": words.Deg(v.Play.Is), "Std": words.Deg(v.Play.Std)}
			if v.Play.Judged {
				say("play", args)
			} else {
				say("play.once", args)
			}
		}
	}
	for _, a := range v.Next {
		say("next."+NeedName(a.Need), words.Args{"Angle": words.Deg(v.Stops[a.Stop])})
	}
	if n := len(v.Lost); n > 0 {
		say("lost", words.Args{"N": n})
	}
	if n := len(v.Old); n > 0 {
		say("old", words.Args{"N": n, "Since": r.Plate.Plan.ReadingsSince})
	}
	return out
}

// proved reports whether a value is farther from nothing than its error
// explains 95 times in 100.
func proved(x proving.Value, free int) bool {
	return x.Known && x.Judged && math.Abs(x.Is) > squares.Within95(free)*x.Std
}

// free returns how many readings the common error is judged from.
func (v Proving) free() int {
	n := 0
	for _, s := range v.Seats {
		if !s.Out {
			n++
		}
	}
	for _, x := range []proving.Value{v.Common, v.EccentricX, v.EccentricY} {
		if x.Known {
			n--
		}
	}
	return n
}

func (v Proving) sayCommon(say func(string, words.Args)) {
	args := words.Args{
		"Common": words.Deg(v.Common.Is), "Std": words.Deg(v.Common.Std),
		"Turn": degrees(v.FenceTurn), "End": words.MM(math.Abs(v.FenceEnd)),
	}
	if !v.Common.Judged {
		say("common.one", args)
		return
	}
	if !proved(v.Common, v.free()) {
		say("common.none", args)
		return
	}
	say("common."+clockwiseWord(v.FenceTurn.Degrees()), args)
	if v.HasFence {
		say("end."+clockwiseWord(v.FenceTurn.Degrees()), args)
	}
}

func (v Proving) sayEccentric(r Report, say func(string, words.Args)) {
	if !v.EccentricX.Known && !v.EccentricY.Known {
		return
	}
	off := geom.Point{X: v.EccentricX.Is, Y: v.EccentricY.Is}
	// How well the amount is told; an axis that is not known adds nothing to it.
	std := math.Hypot(off.X*v.EccentricX.Std, off.Y*v.EccentricY.Std) / off.Norm()
	radius := r.Plate.Plan.Catches[0].Radius
	say("eccentric", words.Args{
		"By": words.MM(off.Norm()), "Std": words.MM(std), "Azimuth": words.Deg(off.Azimuth()),
		"X": words.MM(off.X), "Y": words.MM(off.Y),
		"Most": words.Deg(geom.FromRadians(off.Norm() / radius)),
	})
}

func (v Proving) saySeats(r Report, say func(string, words.Args)) {
	target := r.Plate.Plan.Shop.Target
	out, over := 0, []words.Deg{}
	for _, s := range v.Seats {
		if s.Out {
			out++
			of := "seat."
			if len(r.Plate.Stops[s.Stop].Seats) > 1 {
				of = "seats."
			}
			say(of+clockwiseWord(s.Move), words.Args{
				"Angle": words.Deg(v.Stops[s.Stop]), "Own": words.Deg(s.Own), "Move": words.MM(math.Abs(s.Move)),
			})
		} else if math.Abs(s.Own) > target {
			over = append(over, words.Deg(v.Stops[s.Stop]))
		}
	}
	args := words.Args{"Target": words.Deg(target), "Stops": over}
	switch {
	case len(over) > 0:
		say("over", args)
	case out == 0:
		say("within", args)
	default:
		say("others", args)
	}
}
