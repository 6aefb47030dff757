package ui

import (
	"cmp"
	"image/color"
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
	"stopwright/ui/store"
)

// scene is what the plate view paints: the drawing, and what is marked in it.
type scene struct {
	plate   *plate.Plate
	part    plan.Part // the one part shown at the drill; "": all, from above
	drawing drawing.Drawing
	bounds  drawing.Bounds
	marks   store.Marks
}

// newScene draws the store's plate as its view asks.
func newScene(s *store.Store) scene {
	sc := scene{plate: s.Report().Plate, part: s.View().Part}
	for _, part := range drawing.Parts(sc.plate.Plan) {
		if sc.part == "" || sc.part == part {
			sc.drawing.Place(drawing.Part(sc.plate, part, sc.view()), drawing.Transform{Scale: 1})
		}
	}
	sc.bounds = sc.drawing.Bounds()
	sc.marks = s.Marks()
	return sc
}

func (sc scene) view() drawing.View {
	if sc.part == "" {
		return drawing.FromAbove
	}
	return drawing.AsAtDrill
}

// mirrored reports whether the scene shows left and right exchanged.
func (sc scene) mirrored() bool { return sc.part != "" && sc.view().Mirrored(sc.part) }

// shows reports whether a part can be seen.
func (sc scene) shows(part plan.Part) bool { return sc.part == "" || sc.part == part }

// fromAbove turns a place in the scene into one seen from above, or back.
func (sc scene) fromAbove(p geom.Point) geom.Point {
	if sc.mirrored() {
		return p.MirrorX()
	}
	return p
}

// style draws each layer in its ink, and what is marked so that it stands out.
func (sc scene) style(p ink.Palette) ink.Style {
	base := p.Style()
	return func(e drawing.Entity) ink.Stroke {
		s := base(e)
		if in(sc.marks.Faulty, e.Item) {
			s = p.Faulty(s)
		}
		if in(sc.marks.Selected, e.Item) {
			s = p.Selected(s)
		}
		return s
	}
}

// in reports whether a set holds what an entity stands for.
func in(set store.Items, item drawing.Item) bool {
	switch item.Kind {
	case drawing.SeatItem:
		return set.Seats[item.Index]
	case drawing.PocketItem:
		return set.Pockets[item.Index]
	case drawing.FeatureItem:
		return set.Features[item.Index]
	}
	return false
}

// paint paints the scene on a sheet of paper.
func (sc scene) paint(c *ink.Canvas, v ink.View, p ink.Palette, angle func(float64) string) {
	c.Clear(p.Paper)
	ink.Paint(c, sc.drawing, v, sc.style(p))
	if sc.shows(sc.plate.SeatsPart) {
		sc.angles(c, v, p, angle)
	}
	sc.turnArrow(c, v, p)
	sc.scaleBar(c, v, p)
}

// letter is the height (px of layout) of capitals lettered on the plate.
const letter = 9

// angles letters each stop's angle outside its seat, else on the pivot's side,
// leaving out those that would run into another: what is selected first, then
// what is at fault, then the rest in turn.
func (sc scene) angles(c *ink.Canvas, v ink.View, p ink.Palette, angle func(float64) string) {
	order := make([]int, len(sc.plate.Seats))
	for i := range order {
		order[i] = i
	}
	rank := func(i int) int {
		switch {
		case sc.marks.Selected.Seats[i]:
			return 0
		case sc.marks.Faulty.Seats[i]:
			return 1
		}
		return 2
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(rank(a), rank(b)) })
	inks := [3]color.RGBA{p.Accent, p.Fault, p.Ink}
	d := density(v)
	size := letter * d
	var taken spots
	for _, i := range order {
		s := sc.plate.Seats[i]
		text := angle(s.Angle.Degrees())
		w, h := c.TextWidth(text, size)/2+2*d, size/2+2*d
		dir := sc.fromAbove(geom.Polar(1, s.Azimuth))
		// Clear of the seat by the half height or width that lies in its way.
		away := sc.plate.Plan.Seat.Mouth()/2*v.Scale + 5*d + math.Abs(dir.X)*w + math.Abs(dir.Y)*h
		seat := v.Pixel(sc.fromAbove(s.Centre))
		for _, side := range [2]float64{away, -away} {
			at := ink.Px{X: seat.X + dir.X*side, Y: seat.Y - dir.Y*side}
			if taken.take(at, w, h) {
				c.Fill(ink.Px{X: at.X - w, Y: at.Y - h}, ink.Px{X: at.X + w, Y: at.Y + h}, ground(p))
				c.Text(at, size, 0, drawing.Centre, text, inks[rank(i)])
				break
			}
		}
	}
}

// ground is the paper let through under an angle, so that hatching and lines
// behind it do not make it hard to read.
func ground(p ink.Palette) color.RGBA {
	const share = 0.8
	scale := func(x uint8) uint8 { return uint8(float64(x)*share + 0.5) }
	return color.RGBA{scale(p.Paper.R), scale(p.Paper.G), scale(p.Paper.B), scale(255)}
}

// spots are the places already lettered, by cells of a coarse grid.
type spots map[[2]int][]box

type box struct{ x, y, w, h float64 }

// cell is the size of the grid's cells, px: about that of a lettered angle.
const cell = 64

// take claims a box of half width w and half height h, and reports whether it
// was free.
func (s *spots) take(at ink.Px, w, h float64) bool {
	if *s == nil {
		*s = spots{}
	}
	i, j := int(math.Floor(at.X/cell)), int(math.Floor(at.Y/cell))
	reach := 1 + int(w/cell)
	for di := -reach; di <= reach; di++ {
		for dj := -1; dj <= 1; dj++ {
			for _, b := range (*s)[[2]int{i + di, j + dj}] {
				if math.Abs(b.x-at.X) < b.w+w && math.Abs(b.y-at.Y) < b.h+h {
					return false
				}
			}
		}
	}
	(*s)[[2]int{i, j}] = append((*s)[[2]int{i, j}], box{at.X, at.Y, w, h})
	return true
}

// scaleBar draws a bar of a round length in the lower right corner.
func (sc scene) scaleBar(c *ink.Canvas, v ink.View, p ink.Palette) {
	d := density(v)
	size := c.Img.Bounds().Size()
	length := roundLength(90 * d / v.Scale)
	b := ink.Px{X: float64(size.X) - 14*d, Y: float64(size.Y) - 14*d}
	a := ink.Px{X: b.X - length*v.Scale, Y: b.Y}
	line := func(a, b ink.Px) { c.Line(a, b, ink.ThinLine*d, p.Faint, nil) }
	line(a, b)
	for _, end := range [2]ink.Px{a, b} {
		line(ink.Px{X: end.X, Y: end.Y - 4*d}, ink.Px{X: end.X, Y: end.Y + 4*d})
	}
	text := lengthText(length)
	c.Text(ink.Px{X: (a.X + b.X) / 2, Y: a.Y - 5*d}, letter*d, 0, drawing.Bottom, text, p.Faint)
}

// roundLength returns the largest of 1, 2, 5, 10 … mm that is not above most.
func roundLength(most float64) float64 {
	ten := math.Pow(10, math.Floor(math.Log10(most)))
	for _, k := range [3]float64{5, 2, 1} {
		if k*ten <= most {
			return k * ten
		}
	}
	return ten
}

func density(v ink.View) float64 {
	if v.Density > 0 {
		return v.Density
	}
	return 1
}
