package chart

import (
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Pocket is one row of the chart of the part that holds the catches: a stepped
// hole, the recess for the flange bored first and the body's bore in its centre.
type Pocket struct {
	Tag       string // the catch's name
	Radius    float64
	Azimuth   geom.Angle // as seen at the drill
	At        geom.Point // as seen at the drill
	Rim       float64    // recess diameter; 0: none
	RimDepth  float64
	Body      float64 // bore diameter
	BodyDepth float64 // from the face, flat floor
}

// pocketRows makes a row of every catch.
func pocketRows(pl *plate.Plate) []Pocket {
	rows := make([]Pocket, len(pl.Pockets))
	for i, p := range pl.Pockets {
		rows[i] = Pocket{
			Tag: p.Name, Radius: p.Radius,
			Azimuth: azimuthSeen(pl.CatchPart, p.Azimuth), At: plate.AtDrill(pl.CatchPart, p.Centre),
			Rim: p.Rim, RimDepth: p.RimDepth, Body: p.Body, BodyDepth: p.BodyDepth,
		}
	}
	return rows
}
