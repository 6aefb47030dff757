package detent

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/check"
)

// Say tells in sentences how a repair is done, and what is in its way.
func (x Repair) Say(r Report, w *words.Catalogue) []string {
	args := words.Args{
		"Diameter": words.MM(x.Diameter), "Off": words.MM(x.Old.Distance(x.New)), "Towards": words.Deg(x.Towards),
		"Turned": words.Deg(x.Turned.Abs()), "Wider": words.MM(math.Abs(x.Radius)),
	}
	key := string(x.Kind) + ".how"
	switch {
	case x.Kind == Pattern && x.Radius > 0:
		key = "pattern.wider"
	case x.Kind == Pattern && x.Radius < 0:
		key = "pattern.narrower"
	case x.Kind == Pattern:
		key = "pattern." + clockwiseWord(x.Turned.Degrees())
	case x.Kind == Plug && x.Beside:
		key = "plug.beside"
	}
	if !x.Fits {
		out := []string{w.Text("repair." + string(x.Kind) + ".no-room")}
		for i, f := range x.InTheWay {
			if i == mostInTheWay {
				break
			}
			out = append(out, check.Sentence(x.Trial.Plate, f, w))
		}
		return out
	}
	return []string{w.Text("repair."+key, args)}
}

// mostInTheWay is how many findings are told of a repair that does not fit: the
// first is reason enough.
const mostInTheWay = 2
