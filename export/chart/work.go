package chart

import (
	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// work lists the operations in the order they are done, with this plan's values:
// that of the sheets of operations, the outline last, for the stock to be clamped.
func work(c Chart, s Sheet) []string {
	var steps []string
	add := func(key string, args words.Args) { steps = append(steps, c.Words.Text("chart.work."+key, args)) }
	if s.HoldsSeats() && len(s.Seats) == 0 {
		return nil
	}
	add("lay", words.Args{"Face": c.Words.Text("chart.face." + string(s.Face))})
	if rings := s.rings(); len(rings) == 1 {
		add("ring", words.Args{"Radius": words.MM(rings[0])})
	} else {
		add("rings", nil)
	}
	if s.HoldsSeats() {
		seatWork(c, s, add)
	} else {
		catchWork(c, s, add)
	}
	return steps
}

// pivotWork bores the pivot, where there is a bore.
func pivotWork(c Chart, s Sheet, add func(string, words.Args)) {
	if s.Bore > 0 {
		add("pivot", words.Args{"Bore": round(c, s.Bore)})
	}
}

func seatWork(c Chart, s Sheet, add func(string, words.Args)) {
	d, zero := s.Drill, s.Seats[s.Datum].Tag
	add("mark", words.Args{"Zero": zero})
	add("scrap", nil)
	pivotWork(c, s, add)
	add("spot", nil)
	if d.Relief > 0 {
		add("pilot", words.Args{"Relief": round(c, d.Relief)})
	}
	switch tip := d.Stop - d.Depth; {
	case d.Form == plan.Countersunk:
		add("stop-cone", words.Args{"Stop": words.MM(d.Stop)})
	case d.Depth == 0:
		add("through", nil)
	case tip > 0:
		add("stop", words.Args{"Stop": words.MM(d.Stop), "Depth": words.MM(d.Depth), "Tip": words.MM(tip)})
	default:
		add("stop-flat", words.Args{"Stop": words.MM(d.Stop)})
	}
	args := words.Args{"Diameter": round(c, d.Diameter), "Point": words.Deg(d.Point), "N": len(s.Seats)}
	if d.Form == plan.Countersunk {
		add("countersink", args)
	} else {
		add("drill", args)
	}
	if d.Chamfer > 0 {
		add("chamfer", words.Args{"Mouth": round(c, s.Plate.Plan.Seat.Mouth())})
	}
	if len(s.Seats) > 1 {
		add("gauge", words.Args{"Zero": zero})
	}
	add("outline", nil)
}

func catchWork(c Chart, s Sheet, add func(string, words.Args)) {
	add("mark-catch", nil)
	pivotWork(c, s, add)
	p, point := s.Pockets[0], s.Plate.Plan.Seat.DrillPoint
	if p.Rim > 0 {
		add("recess", words.Args{"Diameter": round(c, p.Rim), "Depth": words.MM(p.RimDepth)})
	}
	add("bore", words.Args{"Diameter": round(c, p.Body), "Depth": words.MM(p.BodyDepth)})
	if tip := ball.PointLength(p.Body, geom.Angle(point)); tip > 0 {
		add("bore-tip", words.Args{"Point": words.Deg(point), "Tip": words.MM(tip)})
	}
	add("outline", nil)
	add("fit", words.Args{"Protrusion": words.MM(s.Plate.Plan.Catch.Protrusion)})
}
