package ink

import (
	"strconv"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// sample is a plate 260 mm across on a base of 340 by 320 mm with n seats on a
// ring, each with its centre mark and, for few seats, a tag.
func sample(n int) drawing.Drawing {
	var d drawing.Drawing
	d.Rect(drawing.Outline, geom.Point{X: -170, Y: -160}, geom.Point{X: 170, Y: 160})
	d.Add(drawing.Outline, drawing.Circle{Radius: 130})
	d.Add(drawing.Pivot, drawing.Circle{Radius: 4})
	d.Add(drawing.Ring, drawing.Circle{Radius: 105})
	d.Add(drawing.Track, drawing.Arc{Radius: 90, Start: 30, Sweep: 120})
	for k := range 8 {
		d.Add(drawing.Screws, drawing.Circle{Centre: geom.Polar(142.5, geom.Angle(22.5+45*float64(k))), Radius: 2.25})
	}
	span := 120.0
	if n > 100 {
		span = 360
	}
	for i := range n {
		az := geom.Angle(-span/2 + span*float64(i)/float64(n-1))
		if n > 100 {
			az = geom.Angle(span * float64(i) / float64(n))
		}
		at := geom.Polar(105, az)
		item := drawing.Item{Kind: drawing.SeatItem, Index: i}
		d.AddItem(drawing.Seats, drawing.Circle{Centre: at, Radius: 2.25}, item)
		if n < 100 {
			d.Add(drawing.Centres, drawing.Line{A: geom.Polar(100.5, az), B: geom.Polar(109.5, az)})
		}
		d.AddItem(drawing.Lettering, drawing.Text{
			At: geom.Polar(115, az), Size: 4, Align: drawing.Centre, Angle: -az.Degrees(),
			Text: strconv.FormatFloat(az.Degrees(), 'f', 0, 64) + "°",
		}, item)
	}
	d.Add(drawing.Centres, drawing.Line{A: geom.Point{X: -9}, B: geom.Point{X: 9}})
	d.Add(drawing.Centres, drawing.Line{A: geom.Point{Y: -9}, B: geom.Point{Y: 9}})
	d.Add(drawing.Lettering, drawing.Text{At: geom.Point{X: -160, Y: -149}, Size: 5, Text: "BASE, TOP FACE"})
	d.Add(drawing.Lettering, drawing.Text{At: geom.Point{X: 160, Y: -149}, Size: 5, Align: drawing.Right, Text: "Turntable ø260"})
	d.Add(drawing.Witness, drawing.Polygon{Points: []geom.Point{{X: 120, Y: 130}, {X: 130, Y: 130}, {X: 120, Y: 145}}})
	return d
}
