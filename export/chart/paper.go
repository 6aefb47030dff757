package chart

import "stopwright/export/drawing"

// Paper is a size of sheet.
type Paper = drawing.Paper

// The papers a chart is printed on.
var (
	A4      = drawing.A4
	A3      = drawing.A3
	Letter  = drawing.Letter
	Tabloid = drawing.Tabloid
	Papers  = drawing.Papers
)
