package chart

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// What stands around the part in its small drawing, mm on paper.
const (
	axisReach  = 4.0 // of an axis past the edge
	axisInside = 1.0 // and short of it
	axisSize   = 2.5 // its letter
	turnGap    = 2.0 // edge to the arrow of the positive turn
	turnFrom   = geom.Angle(-36)
	turnSweep  = geom.Angle(20)
	arrowLong  = 2.5
	arrowWide  = 0.9 // half of it
	tagGap     = 0.8
	tagSize    = 2.0
	roomAside  = axisReach + 1.5*axisSize
	roomAbove  = 11.0 // for the arrow
	roomBelow  = axisReach + 1
)

// picture draws the part true to a standard scale in the middle of a space of
// the page, with tags, axes and the arrow of the positive turn, and returns the
// scale.
func (b *board) picture(s Sheet, lo, hi geom.Point) Scale {
	bounds := s.Drawn.Bounds()
	scale := fitScale(bounds, hi.X-lo.X-2*roomAside, hi.Y-lo.Y-roomAbove-roomBelow)
	k := scale.Factor()
	space := lo.Add(hi).Add(geom.Point{Y: roomBelow - roomAbove})
	pivot := space.Sub(bounds.Min.Add(bounds.Max).Scale(k)).Scale(0.5)
	var d drawing.Drawing
	axes(&d, s, k)
	d.Place(s.Drawn, drawing.Transform{Scale: k})
	turnArrow(&d, s, k)
	tags(&d, s, k)
	b.Place(d, drawing.Transform{Scale: 1, Move: pivot})
	return scale
}

// axes marks X and Y where they leave the part: across it they would run
// through tags.
func axes(d *drawing.Drawing, s Sheet, k float64) {
	o := plate.OutlineOf(s.Plate.Plan, s.Part)
	right, up := o.Reach(90)*k+axisReach, o.Reach(0)*k+axisReach
	for _, from := range [4]geom.Point{{X: right}, {X: -right}, {Y: up}, {Y: -up}} {
		to := from.Scale(1 - (axisReach+axisInside)/from.Norm())
		d.Add(thin, drawing.Line{A: from, B: to})
	}
	label := func(x, y float64, name string) {
		d.Add(thin, drawing.Text{At: geom.Point{X: x, Y: y}, Size: axisSize, Align: drawing.Centre, Text: name})
	}
	label(right+axisSize, 0, "X")
	label(0, up+axisSize*0.8, "Y")
}

// turnArrow draws the positive turn of the table as it appears in this view:
// an arc about the pivot outside the edge, left of the Y axis.
func turnArrow(d *drawing.Drawing, s Sheet, k float64) {
	_, cos := turnFrom.SinCos()
	radius := plate.OutlineOf(s.Plate.Plan, s.Part).Reach(0)*k + turnGap
	if plate.OutlineOf(s.Plate.Plan, s.Part).Diameter == 0 {
		radius = (radius-turnGap)/cos + turnGap // clear of a straight edge
	}
	head, forward := turnFrom+turnSweep, geom.Angle(1)
	if s.Turn == plan.Counterclockwise {
		head, forward = turnFrom, -1
	}
	d.Add(thin, drawing.ArcOf(geom.Arc{Radius: radius, From: turnFrom, Sweep: turnSweep}))
	tip := geom.Polar(radius, head)
	along := geom.Polar(1, head+90*forward)
	across := geom.Polar(1, head)
	back := tip.Sub(along.Scale(arrowLong))
	d.Add(thin, drawing.Polygon{Points: []geom.Point{tip, back.Add(across.Scale(arrowWide)), back.Sub(across.Scale(arrowWide))}})
	d.Add(thin, drawing.Text{At: tip.Add(along.Scale(axisSize)), Size: axisSize, Align: drawing.Centre, Text: "+"})
}

// tags writes the holes' tags on the pivot side of them or else outside, the
// zero stop's first, and leaves out those for which the part has no room: they
// are in the table.
func tags(d *drawing.Drawing, s Sheet, k float64) {
	full, o := drawing.Crowd{}, plate.OutlineOf(s.Plate.Plan, s.Part)
	half := s.Plate.Plan.Seat.Mouth() / 2
	for _, r := range s.Seats {
		full.AddHole(r.At.Scale(k), half*k)
	}
	for _, p := range s.Pockets {
		full.AddHole(p.At.Scale(k), max(p.Rim, p.Body)/2*k)
	}
	write := func(tag string, at geom.Point, half float64) {
		text := drawing.Text{Size: tagSize, Align: drawing.Centre, Text: fitEnd(tag, tagSize, 4*tagSize)}
		away := geom.Polar(1, at.Azimuth())
		// The letters' box reaches this far towards the hole.
		reach := math.Abs(away.X)*drawing.TextWidth(text.Text, tagSize)/2 + math.Abs(away.Y)*tagSize/2
		off := half*k + tagGap + reach
		for _, side := range [2]float64{-off, off} {
			text.At = at.Scale(k).Add(away.Scale(side))
			var one drawing.Drawing
			one.Add(thin, text)
			if box := one.Bounds(); full.Room(box) && within(o, box, k) {
				full.AddBox(box)
				d.Place(one, drawing.Transform{Scale: 1})
				return
			}
		}
	}
	if s.Datum >= 0 {
		write(s.Seats[s.Datum].Tag, s.Seats[s.Datum].At, half)
	}
	for i, r := range s.Seats {
		if i != s.Datum {
			write(r.Tag, r.At, half)
		}
	}
	for _, p := range s.Pockets {
		write(p.Tag, p.At, max(p.Rim, p.Body)/2)
	}
}

// within reports whether a box on paper keeps off the part's edge.
func within(o plate.Outline, box drawing.Bounds, k float64) bool {
	for _, corner := range [4]geom.Point{box.Min, box.Max, {X: box.Min.X, Y: box.Max.Y}, {X: box.Max.X, Y: box.Min.Y}} {
		if o.Inside(corner.Scale(1/k))*k < drawing.CrowdApart {
			return false
		}
	}
	return true
}
