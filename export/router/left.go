package router

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Left is something that a program does not cut.
type Left string

// What is left to the drawings: lines to follow, not holes.
const (
	LeftOutline Left = "outline"
	LeftBore    Left = "bore"
	LeftSlots   Left = "slots"
	LeftRing    Left = "ring" // the recess that a wear ring is let into
)

// left lists what of a part a program does not cut.
func left(pl *plate.Plate, part plan.Part) []Left {
	out := []Left{LeftOutline}
	if part == plan.PartCollar {
		out = append(out, LeftBore)
	}
	if _, outer := plate.WearRing(pl.Plan); part == pl.SeatsPart && outer > 0 {
		out = append(out, LeftRing)
	}
	for _, f := range pl.Features {
		if _, straight := f.Core.(geom.Segment); f.Part == part && (f.Kind != plan.Hole || !straight) {
			return append(out, LeftSlots)
		}
	}
	return out
}
