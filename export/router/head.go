package router

import (
	"math"
	"strconv"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// inUnit returns the catalogue with lengths in the program's unit, as finely as
// tools are sold: 3.175 mm, 0.0625 inch.
func inUnit(c *words.Catalogue, unit measure.Unit) *words.Catalogue {
	decimals := 3
	if unit == measure.Inch {
		decimals = 4
	}
	own := *c
	own.Length = func(mm float64) string { return measure.FormatLength(mm, unit, decimals) }
	return &own
}

// head writes what a maker must know before the program is run.
func head(c *code, p Program, info drawing.Info) {
	w := inUnit(info.Words, c.unit)
	say := func(key string, args words.Args) { c.comment(w.Text("router.head."+key, args)) }
	say("name", words.Args{"Part": drawing.PartName(w, p.Part)})
	c.comment(p.Title)
	if info.Date != "" {
		c.comment(w.Text("sheet.date", words.Args{"Date": info.Date}))
	}
	say("face."+string(plate.FaceOf(p.Part)), nil)
	say(zero(p.Part), nil)
	say("units."+p.Settings.Units, nil)
	if p.Copies > 1 {
		say("copies", words.Args{"N": p.Copies})
	}
	say("stock", words.Args{"Thickness": words.MM(p.Thickness)})
	if len(p.Steps) == 0 {
		say("nothing", nil)
	} else {
		c.setting(p, w)
		c.tools(p, w)
		say("time", words.Args{"Time": Clock(w, p.Seconds)})
	}
	for _, l := range p.Left {
		c.comment(w.Text("router.left." + string(l)))
	}
	c.cautions(p, w)
}

// zero is the key of what says where a program's origin lies: on the pivot or,
// of a block that holds one catch, in its middle.
func zero(part plan.Part) string {
	if part == plan.PartCarrier || part == plan.PartPad {
		return "zero.block"
	}
	return "zero"
}

// setting writes how high, how deep and how fast the program goes.
func (c *code) setting(p Program, w *words.Catalogue) {
	if into := p.Deepest - p.Thickness; into > slack {
		c.comment(w.Text("router.head.spoil", words.Args{"Into": words.MM(into)}))
	}
	c.comment(w.Text("router.head.safe", words.Args{"Height": words.MM(p.Settings.SafeHeight)}))
	c.comment(w.Text("router.head.spindle", words.Args{"Turns": p.Settings.Spindle}))
}

// tools writes the table of tools, and under each what it cuts.
func (c *code) tools(p Program, w *words.Catalogue) {
	for i, t := range p.Tools {
		c.comment(w.Text("router.head.tool", words.Args{"N": i + 1, "Tool": t.Name(w)}))
		for _, s := range p.Steps {
			if s.Tool == i {
				c.comment(stepText(w, c.unit, s))
			}
		}
	}
}

var cautions = []string{
	"router.caution.air", "router.caution.clamps",
	"caution.unplug", "caution.clamp", "caution.eyes", "caution.manual",
}

// cautions writes what comes before every run.
func (c *code) cautions(p Program, w *words.Catalogue) {
	for _, key := range cautions {
		c.comment(w.Text(key))
	}
	if len(p.Tools) > 1 {
		c.comment(w.Text("router.caution.touch"))
	}
}

// stepText says what a step cuts.
func stepText(w *words.Catalogue, unit measure.Unit, s Step) string {
	w = inUnit(w, unit)
	key := "router.step.drill"
	if s.Mill {
		key = "router.step.mill"
	}
	return w.Text(key, words.Args{
		"Job": w.Text("router.job." + string(s.Job)), "N": len(s.Holes),
		"Diameter": words.MM(s.Diameter), "Depth": words.MM(s.Depth),
	})
}

// Clock writes a time in seconds as hours and minutes, or minutes and seconds.
func Clock(w *words.Catalogue, seconds float64) string {
	const minute, hour = 60, 3600
	s := int(math.Ceil(seconds - slack))
	switch {
	case s >= hour:
		return w.Text("router.clock.hours", words.Args{"H": s / hour, "M": two(s % hour / minute)})
	case s >= minute:
		return w.Text("router.clock.minutes", words.Args{"M": s / minute, "S": two(s % minute)})
	}
	return w.Text("router.clock.seconds", words.Args{"S": s})
}

// two writes a number with two digits at least.
func two(n int) string {
	s := strconv.Itoa(n)
	return strings.Repeat("0", max(0, 2-len(s))) + s
}
