package drawing

import (
	"math"

	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Section draws one catch over a seat, cut along the track: x along the track
// with the ball at 0, y up from the face the seats are cut in, mm. Offset is how
// far the seat's axis stands to the right of the ball. The part that holds the
// seats is below, the one that holds the catch above, as they lie when the catch
// is in the turntable.
func Section(pl *plate.Plate, catch int, offset float64) Drawing {
	var d Drawing
	k := pl.Clicks[catch]
	half := sectionHalf(pl)
	seatProfile(&d, k.Setup.Seat, offset, half)
	pocketProfile(&d, pl, catch, half)
	height := k.At(offset).Height
	r := k.Setup.BallDiameter / 2
	d.AddItem(Seats, Circle{geom.Point{Y: height}, r}, Item{BallItem, catch})
	spring(&d, pl, catch, height+r)
	return d
}

// sectionHalf returns half the width of the section, mm: room for the pocket
// and for a seat well beside the ball.
func sectionHalf(pl *plate.Plate) float64 {
	widest := pl.Pockets[0].Widest()
	return 2 * math.Max(widest, pl.Plan.Seat.Mouth()+pl.Plan.Catch.BallDiameter)
}

// seatProfile draws the face with the seat's section in it, the material on the
// left of the lines, so that its edge is hatched.
func seatProfile(d *Drawing, s ball.Seat, offset, half float64) {
	right := profile(s)
	path := []geom.Point{{X: half}}
	for _, p := range right {
		path = append(path, geom.Point{X: offset + p.X, Y: p.Y})
	}
	for i := len(right) - 1; i >= 0; i-- {
		path = append(path, geom.Point{X: offset - right[i].X, Y: right[i].Y})
	}
	path = append(path, geom.Point{X: -half})
	polyline(d, Outline, path)
}

// profile returns the right half of a seat's section from the face down to the
// axis. A hole that goes through ends where the drawing does.
func profile(s ball.Seat) []geom.Point {
	mouth := s.Mouth()
	out := []geom.Point{{X: mouth}}
	wall := s.Diameter / 2
	if s.Chamfer > 0 {
		out = append(out, geom.Point{X: wall, Y: -s.Chamfer})
	}
	floor := through
	if s.Form == ball.Countersunk {
		slope := math.Tan(s.Countersink.Radians() / 2) // radius lost to a mm of depth
		tip := wall / slope
		if s.Depth > 0 && s.Depth < tip {
			out = append(out, geom.Point{X: wall - s.Depth*slope, Y: -s.Depth})
			tip = s.Depth
		}
		return relief(out, s, geom.Point{Y: -tip}, slope)
	}
	if s.Depth > 0 {
		floor = s.Depth
	}
	out = append(out, geom.Point{X: wall, Y: -floor})
	if s.Depth == 0 {
		return out
	}
	slope := math.Tan(s.DrillPoint.Radians() / 2)
	return relief(out, s, geom.Point{Y: -floor - wall/slope}, slope)
}

// through is how deep (mm) a hole is drawn that has no floor.
const through = 14.0

// relief ends a profile at the tip of its cone, or where a relief hole cuts the
// cone off and goes on down.
func relief(out []geom.Point, s ball.Seat, tip geom.Point, slope float64) []geom.Point {
	r := s.Relief / 2
	if r <= 0 {
		return append(out, tip)
	}
	at := geom.Point{X: r, Y: math.Min(tip.Y+r/slope, out[len(out)-1].Y)}
	return append(out, at, geom.Point{X: r, Y: -through})
}

// pocketProfile draws the face of the part that holds the catch, with its
// stepped pocket, and the catch's body in it.
func pocketProfile(d *Drawing, pl *plate.Plate, catch int, half float64) {
	p, c := pl.Pockets[catch], pl.Plan.Catch
	gap := pl.Plan.FaceGap
	body, rim := p.Body/2, p.Rim/2
	steps := []geom.Point{{X: -half, Y: gap}}
	if rim > body {
		steps = append(steps, geom.Point{X: -rim, Y: gap}, geom.Point{X: -rim, Y: gap + p.RimDepth}, geom.Point{X: -body, Y: gap + p.RimDepth})
	} else {
		steps = append(steps, geom.Point{X: -body, Y: gap})
	}
	top := gap + p.BodyDepth
	steps = append(steps, geom.Point{X: -body, Y: top}, geom.Point{X: body, Y: top})
	for i := len(steps) - 3; i >= 0; i-- {
		steps = append(steps, geom.Point{X: -steps[i].X, Y: steps[i].Y})
	}
	polyline(d, Outline, steps)

	low := gap + math.Max(0, p.BodyDepth-c.BodyLength) // where the catch's own face lies
	w := c.BodyDiameter / 2
	d.Rect(PocketBody, geom.Point{X: -w, Y: low}, geom.Point{X: w, Y: low + c.BodyLength})
	if c.FlangeDiameter > 0 {
		f := c.FlangeDiameter / 2
		d.Rect(PocketRim, geom.Point{X: -f, Y: low}, geom.Point{X: f, Y: low + c.FlangeThickness})
	}
}

// spring draws the spring from the top of the ball to the end of the body.
func spring(d *Drawing, pl *plate.Plate, catch int, from float64) {
	const turns = 6
	c := pl.Plan.Catch
	to := pl.Plan.FaceGap + pl.Pockets[catch].BodyDepth - wallThickness
	if to <= from {
		return
	}
	w := math.Min(c.BallDiameter, c.BodyDiameter) * 0.36
	path := []geom.Point{{Y: from}}
	for i := range 2 * turns {
		side := w
		if i%2 == 1 {
			side = -w
		}
		path = append(path, geom.Point{X: side, Y: from + (to-from)*(float64(i)+0.5)/(2*turns)})
	}
	polyline(d, Centres, append(path, geom.Point{Y: to}))
}

// wallThickness is how thick (mm) the end of a catch's body is drawn.
const wallThickness = 0.8

// polyline draws straight lines from point to point.
func polyline(d *Drawing, l Layer, path []geom.Point) {
	for i := 1; i < len(path); i++ {
		if path[i] != path[i-1] {
			d.Add(l, Line{path[i-1], path[i]})
		}
	}
}
