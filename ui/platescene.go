package ui

import (
	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
	"stopwright/ui/store"
	"stopwright/ui/units"
)

// scene is what the plate view paints: the drawing, and what is marked in it.
type scene struct {
	plate   *plate.Plate
	part    plan.Part  // the one part shown at the drill; "": all, from above
	turn    geom.Angle // of the table, clockwise; 0 at the drill
	balls   []plate.Ball
	drawing drawing.Drawing
	bounds  drawing.Bounds
	marks   store.Marks
	layers  store.Layers
	units   units.Style
}

// newScene draws the store's plate as its view asks.
func newScene(s *store.Store) scene {
	v := s.View()
	sc := scene{plate: s.Report().Plate, part: v.Part, layers: v.Layers, units: v.Units, marks: s.Marks()}
	if sc.part == "" {
		sc.turn = s.Turn()
		if sc.plate.Plan.Arrangement.PositiveTurn == plan.Counterclockwise {
			sc.turn = -sc.turn
		}
		sc.balls = sc.plate.Balls(s.Turn())
	}
	sc.draw()
	return sc
}

// sceneOf draws a plate from above with the table at zero and nothing marked.
func sceneOf(pl *plate.Plate, s *store.Store) scene {
	v := s.View()
	sc := scene{plate: pl, layers: v.Layers, units: v.Units, balls: pl.Balls(0)}
	sc.draw()
	return sc
}

// draw draws the parts that the scene shows.
func (sc *scene) draw() {
	for _, part := range drawing.Parts(sc.plate.Plan) {
		if sc.shows(part) {
			d := drawing.Part(sc.plate, part, sc.view())
			sc.drawing.Place(d, drawing.Transform{Scale: 1, Turn: sc.turnOf(part)})
		}
	}
	sc.bounds = sc.extent()
}

// extent returns the room the scene takes, whichever parts are hidden and
// however the table is turned, so that it stays where it is.
func (sc scene) extent() drawing.Bounds {
	b := drawing.NoBounds()
	for _, part := range drawing.Parts(sc.plate.Plan) {
		if sc.part == "" || sc.part == part {
			o := plate.OutlineOf(sc.plate.Plan, part)
			b.Add(geom.Point{X: o.Reach(90), Y: o.Reach(0)})
			b.Add(geom.Point{X: -o.Reach(90), Y: -o.Reach(0)})
		}
	}
	return b
}

func (sc scene) view() drawing.View {
	if sc.part == "" {
		return drawing.FromAbove
	}
	return drawing.AsAtDrill
}

// shows reports whether a part can be seen.
func (sc scene) shows(part plan.Part) bool {
	if sc.part == "" {
		return !sc.layers.Hides(store.PartLayer(part))
	}
	return sc.part == part
}

// turnOf returns how far a part is turned in the scene, clockwise.
func (sc scene) turnOf(part plan.Part) geom.Angle {
	if part == plan.PartTurntable {
		return sc.turn
	}
	return 0
}

// fromPart returns where a place of a part, in the part's own frame seen from
// above, lies in the scene.
func (sc scene) fromPart(part plan.Part, p geom.Point) geom.Point {
	if sc.view().Mirrored(part) {
		p = p.MirrorX()
	}
	return p.Rotate(sc.turnOf(part))
}

// toPart is the inverse of fromPart.
func (sc scene) toPart(part plan.Part, p geom.Point) geom.Point {
	p = p.Rotate(-sc.turnOf(part))
	if sc.view().Mirrored(part) {
		p = p.MirrorX()
	}
	return p
}

// style draws each layer in its ink, and what is marked so that it stands out.
func (sc scene) style(p ink.Palette) ink.Style {
	base := p.Style()
	return func(e drawing.Entity) ink.Stroke {
		if sc.layers.Hides(store.Construction) && (e.Layer == drawing.Track || e.Layer == drawing.Centres) {
			return ink.Stroke{}
		}
		s := base(e)
		if k := sc.catchOf(e); k > 0 {
			s.Colour = catchInk(p, k)
		}
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
func (sc scene) paint(c *ink.Canvas, v ink.View, p ink.Palette, w *words.Catalogue) {
	c.Clear(p.Paper)
	ink.Paint(c, sc.drawing, v, sc.style(p))
	sc.catchMarks(c, v, p)
	sc.paintBalls(c, v, p)
	var taken spots
	if !sc.layers.Hides(store.Dimensions) {
		sc.dimensions(c, v, p, w, &taken)
	}
	if sc.shows(sc.plate.SeatsPart) && !sc.layers.Hides(store.Angles) {
		sc.angles(c, v, p, w.Angle, &taken)
	}
	sc.turnArrow(c, v, p)
	sc.scaleBar(c, v, p, w)
}

// scaleBar draws a bar of a round length in the lower right corner.
func (sc scene) scaleBar(c *ink.Canvas, v ink.View, p ink.Palette, w *words.Catalogue) {
	d := density(v)
	size := c.Img.Bounds().Size()
	length := sc.units.Round(90 * d / v.Scale)
	b := ink.Px{X: float64(size.X) - 14*d, Y: float64(size.Y) - 14*d}
	a := ink.Px{X: b.X - length*v.Scale, Y: b.Y}
	line := func(a, b ink.Px) { c.Line(a, b, p.Weight(ink.ThinLine)*d, p.Faint, nil) }
	line(a, b)
	for _, end := range [2]ink.Px{a, b} {
		line(ink.Px{X: end.X, Y: end.Y - 4*d}, ink.Px{X: end.X, Y: end.Y + 4*d})
	}
	c.Text(ink.Px{X: (a.X + b.X) / 2, Y: a.Y - 5*d}, letter*d, 0, drawing.Bottom, w.Length(length), p.Faint)
}

func density(v ink.View) float64 {
	if v.Density > 0 {
		return v.Density
	}
	return 1
}
