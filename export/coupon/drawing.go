package coupon

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// The spaces of a coupon, mm.
const (
	between    = 6.0 // material from hole to hole: far more than any web
	margin     = 8.0
	labelSize  = 3.0
	labelGap   = 2.5 // hole to its number
	numberWide = 13.0
	nameGap    = 4.0 // after a row's name
	boxPad     = 1.0 // round the number of the plan's own
	armPast    = 1.5 // of a centre cross past its hole
)

// Drawing draws the coupon, its lower left corner at the origin. The number of
// the plan's own size is boxed.
func Drawing(p plan.Plan, c *words.Catalogue) drawing.Drawing {
	var d drawing.Drawing
	rows := Rows(p)
	name := func(r Row) string { return c.Text("coupon.row." + string(r.Kind)) }
	pitch, nameWide, right := numberWide, 0.0, 0.0
	for _, r := range rows {
		pitch = max(pitch, widest(p, r)+between)
		nameWide = max(nameWide, drawing.StrokeWidth(name(r), labelSize)+nameGap)
	}
	y := margin
	for i := len(rows) - 1; i >= 0; i-- {
		r := rows[i]
		half := widest(p, r) / 2
		middle := y + labelSize + 2*boxPad + labelGap + half
		d.Engrave(drawing.Text{At: geom.Point{X: margin, Y: y + boxPad}, Size: labelSize, Text: name(r)})
		for k, g := range r.Rungs {
			x := margin + nameWide + (float64(k)+0.5)*pitch
			at := geom.Point{X: x, Y: middle}
			hole(&d, p, r.Kind, g, at)
			number(&d, c, g, geom.Point{X: x, Y: y + boxPad})
			right = max(right, x+pitch/2)
		}
		y = middle + half + between
	}
	d.Rect(drawing.Outline, geom.Point{}, geom.Point{X: right + margin - between/2, Y: y - between + margin})
	return d
}

// widest returns the diameter of a row's widest hole.
func widest(p plan.Plan, r Row) float64 {
	var w float64
	for _, g := range r.Rungs {
		w = max(w, diameter(p, r.Kind, g))
	}
	return w
}

// diameter returns the diameter of a rung at the face.
func diameter(p plan.Plan, k Kind, g Rung) float64 {
	switch k {
	case Seat:
		return g.Size + 2*p.Seat.Chamfer
	case Bore:
		return g.Size
	}
	return max(p.Catch.FlangeDiameter, bore(p))
}

// bore returns the diameter of the bore that the plan has for the catch's body.
func bore(p plan.Plan) float64 { return p.Catch.BodyDiameter + p.Catch.BodyAllowance }

// hole draws one rung.
func hole(d *drawing.Drawing, p plan.Plan, k Kind, g Rung, at geom.Point) {
	circle := func(l drawing.Layer, diameter float64) {
		if diameter > 0 {
			d.Add(l, drawing.Circle{Centre: at, Radius: diameter / 2})
		}
	}
	switch k {
	case Seat:
		circle(drawing.Seats, g.Size)
		if p.Seat.Chamfer > 0 {
			circle(drawing.SeatChamfer, g.Size+2*p.Seat.Chamfer)
		}
		if p.Seat.ReliefDiameter < g.Size {
			circle(drawing.SeatRelief, p.Seat.ReliefDiameter)
		}
	case Bore:
		circle(drawing.PocketBody, g.Size)
	case Recess:
		circle(drawing.PocketBody, bore(p))
		circle(drawing.PocketRim, p.Catch.FlangeDiameter)
	}
	r := diameter(p, k, g)/2 + armPast
	for _, arm := range [2]geom.Point{{X: r}, {Y: r}} {
		d.Add(drawing.Centres, drawing.Line{A: at.Sub(arm), B: at.Add(arm)})
	}
}

// number letters a rung's size below it, boxed where it is the plan's own.
func number(d *drawing.Drawing, c *words.Catalogue, g Rung, at geom.Point) {
	text := c.Decimal(measure.Trim(g.Size, 2))
	d.Engrave(drawing.Text{At: at, Size: labelSize, Align: drawing.Bottom, Text: text})
	if !g.Chosen {
		return
	}
	half := drawing.StrokeWidth(text, labelSize)/2 + boxPad
	lo, hi := geom.Point{X: at.X - half, Y: at.Y - boxPad}, geom.Point{X: at.X + half, Y: at.Y + labelSize + boxPad}
	d.Rect(drawing.Engraving, lo, hi)
}
