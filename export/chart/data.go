package chart

import (
	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// fact is one line of what a maker needs before the first hole.
type fact struct{ name, value string }

// mostRings is how many rings are listed apart; of more, the table tells.
const mostRings = 3

// facts lists what the head of a sheet says.
func facts(c Chart, s Sheet) []fact {
	say := func(key string, args ...words.Args) string { return c.Words.Text("chart.data."+key, args...) }
	pivot := say("pivot.none")
	if s.Datum >= 0 {
		pivot = say("pivot.seats", words.Args{"Zero": s.Seats[s.Datum].Tag})
	}
	list := []fact{
		{say("pivot"), pivot},
		{say("axes"), say("axes.text")},
		{say("turn"), say("turn.text", words.Args{"Turn": c.Words.Text("turn." + string(s.Turn))})},
	}
	if s.HoldsSeats() {
		list = append(list, fact{say("drill"), drillText(c, s.Drill)}, fact{say("depth"), depthText(c, s.Drill)})
		list = append(list, fact{say("loose"), looseText(c, s.Loose)}, fact{say("pins"), pinsText(c, s.Pins)})
		return append(list, pivotFacts(c, s)...)
	}
	hole := func(diameter, depth float64) string {
		return say("hole", words.Args{"Diameter": round(c, diameter), "Depth": words.MM(depth)})
	}
	p := s.Pockets[0]
	if p.Rim > 0 {
		list = append(list, fact{say("recess"), hole(p.Rim, p.RimDepth)})
	}
	return append(list, fact{say("bore"), hole(p.Body, p.BodyDepth)})
}

// round returns a diameter with its sign.
func round(c Chart, diameter float64) string { return "⌀" + c.Words.Length(diameter) }

func drillText(c Chart, d Drill) string {
	key := "drilled"
	switch {
	case d.Form == plan.Countersunk:
		key = "countersunk"
	case d.Point == 180:
		key = "flat"
	}
	text := c.Words.Text("chart.data.drill."+key, words.Args{"Diameter": round(c, d.Diameter), "Point": words.Deg(d.Point)})
	if series := d.Standard(); series != "" && d.Form == plan.Drilled {
		text = c.Words.Text("chart.data.drill."+series, words.Args{"Drill": text, "Inch": measure.FormatFraction(d.Diameter)})
	}
	return text
}

func depthText(c Chart, d Drill) string {
	if d.Depth == 0 {
		return c.Words.Text("chart.data.depth.through")
	}
	return c.Words.Text("chart.data.depth.blind", words.Args{"Depth": words.MM(d.Depth), "Stop": words.MM(d.Stop)})
}

func pinsText(c Chart, p Pins) string {
	key := "chart.data.pins.pins"
	if p.Balls {
		key = "chart.data.pins.balls"
	}
	text := c.Words.Text(key, words.Args{"Diameter": round(c, p.Diameter)})
	if p.Pivot > 0 {
		text = c.Words.Text("chart.data.pins.pivot", words.Args{"Pins": text, "Pivot": round(c, p.Pivot)})
	}
	return text
}

// pivotFacts says what each ring measures to the pin in the pivot.
func pivotFacts(c Chart, s Sheet) []fact {
	var list []fact
	if s.Pins.Pivot == 0 {
		return nil
	}
	name, rings := c.Words.Text("chart.data.over"), s.rings()
	for i, radius := range rings {
		if i == mostRings {
			return append(list, fact{"", c.Words.Text("chart.more", words.Args{"N": len(rings) - i})})
		}
		list = append(list, fact{name, c.Words.Text("chart.data.over.text", words.Args{
			"Reading": words.MM(s.Pins.OverPivot(radius)), "Radius": words.MM(radius),
		})})
		name = ""
	}
	return list
}
