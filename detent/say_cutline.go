package detent

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/geom"
)

// Say tells in sentences what follows from the tool and the fence.
func (c CutLine) Say(r Report, w *words.Catalogue) []string {
	var out []string
	say := func(key string, args words.Args) { out = append(out, w.Text("cut."+key, args)) }
	if c.Travel.Leans == 0 {
		say("none", nil)
		return out
	}
	say("travel", words.Args{
		"Travel": words.MM(c.Travel.Wander()), "Least": words.MM(c.Travel.Least), "Most": words.MM(c.Travel.Most),
		"A": words.Deg(c.Crossings[c.Travel.AtLeast].Angle), "B": words.Deg(c.Crossings[c.Travel.AtMost].Angle),
	})
	const told = 0.005 // mm: what two decimals show
	if c.BestFence.Known && c.Travel.Wander()-c.BestFence.Wander > told {
		say("best", words.Args{"Fence": words.MM(c.BestFence.At), "Travel": words.MM(c.BestFence.Wander)})
		say("answer", words.Args{"Near": words.MM(c.Answer.FenceNear), "Away": words.MM(c.Answer.FenceAway), "Left": words.MM(c.Answer.ToolLeft), "Right": words.MM(c.Answer.ToolRight)})
	}
	switch args := (words.Args{"Left": words.MM(c.KeepsLeft), "Right": words.MM(c.KeepsRight)}); c.KeepsItsStop() {
	case -1:
		say("keeps.left", args)
	case 1:
		say("keeps.right", args)
	default:
		say("keeps.both", args)
	}
	if c.HasSlot {
		say("opening", words.Args{"Left": words.MM(c.SlotLeft), "Right": words.MM(c.SlotRight)})
	}
	screws := c.Screws(c.Body)
	say("falls", words.Args{
		"Face": words.MM(c.Fence), "Back": words.MM(c.Fence + c.Body.Thickness),
		"X": words.MM(screws[1].X), "Y": words.MM(screws[1].Y),
	})
	if x, ok := c.shortest(); ok && reaches(r.Plate.Plan) {
		key := "past"
		if x.Past < 0 {
			key = "short"
		}
		say(key, words.Args{"Past": words.MM(math.Abs(x.Past)), "Angle": words.Deg(x.Angle)})
	}
	return out
}

// shortest returns the stop at which the tool cuts least far across the fence.
func (c CutLine) shortest() (Crossing, bool) {
	var least Crossing
	for _, x := range c.Crossings {
		if x.Meets && (!least.Meets || x.Past < least.Past) {
			least = x
		}
	}
	return least, least.Meets
}

// SayMarks tells in sentences what the maker's marks say, and what to do.
func (c CutLine) SayMarks(w *words.Catalogue) []string {
	var out []string
	say := func(key string, args words.Args) { out = append(out, w.Text("marks."+key, args)) }
	f := c.Marks
	switch {
	case f == nil:
		say("few", nil)
	case f.Judged:
		say("found", words.Args{
			"Offset": words.MM(f.Offset), "OffsetStd": words.MM(f.OffsetStd),
			"Fence": words.MM(f.Fence), "FenceStd": words.MM(f.FenceStd),
		})
	default:
		say("exact", words.Args{"Offset": words.MM(f.Offset), "Fence": words.MM(f.Fence)})
	}
	if f != nil && f.Weak() {
		say("weak", nil)
	}
	if c.Next != nil {
		say("next", words.Args{"Angle": words.Deg(*c.Next)})
	}
	if f == nil {
		return out
	}
	tool, fence := "left", "near"
	if f.Offset < 0 {
		tool = "right"
	}
	if f.Fence < 0 {
		fence = "away"
	}
	say("move."+tool, words.Args{"By": words.MM(math.Abs(f.Offset))})
	say("fence."+fence, words.Args{"By": words.MM(math.Abs(f.Fence))})
	say("after", words.Args{"Before": words.MM(f.Before), "Best": words.MM(f.Best.At), "After": words.MM(f.After)})
	say("slots", words.Args{"Tool": words.MM(f.ToolSlot), "Fence": words.MM(f.FenceSlot)})
	return out
}

// clockwiseWord returns the end of a key for a sense of turning or of moving
// along a ring.
func clockwiseWord(x float64) string {
	if x < 0 {
		return "counterclockwise"
	}
	return "clockwise"
}

// degrees returns an angle without its sign, for a sentence that tells the sense
// in words.
func degrees(a geom.Angle) words.Deg { return words.Deg(a.Abs()) }
