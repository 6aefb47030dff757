package ui

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// gesture is what dragging does: it follows the pointer until it is let go.
type gesture interface {
	to(at fyne.Position)
	end()
	moves() bool // whether it moves the view itself
}

// begin starts the gesture that belongs to what was pressed, once it is clear
// which way the pointer goes.
func (v *plateView) begin(at fyne.Position) gesture {
	h := v.press.hit
	switch {
	case v.press.button != desktop.MouseButtonPrimary:
	case h.seat >= 0:
		return v.beginSlide(h)
	case h.feature >= 0:
		v.w.store.SelectFeature(h.feature)
		return v.beginEdit("edit.features", v.moveFeature(h.feature))
	case h.catch >= 0:
		return v.beginEdit("edit.ring", resizeRing(v.w.store.Plan().Catches[h.catch].Radius))
	case h.edge == plan.PartTurntable && v.scene.part == "" && v.along(at):
		return &turning{v: v, last: v.place(v.press.at).Azimuth()}
	case h.edge != "":
		return v.beginEdit("edit.size", resizePart(h.edge))
	}
	return &panning{v: v, last: v.press.at}
}

// along reports whether the pointer has gone along the edge it was pressed on
// rather than across it.
func (v *plateView) along(at fyne.Position) bool {
	a, b := v.place(v.press.at), v.place(at)
	move := b.Sub(a)
	out := a.Scale(1 / math.Max(a.Norm(), 1e-9))
	return math.Abs(move.Dot(out)) < move.Norm()*math.Sqrt2/2
}

// panning moves the paper about.
type panning struct {
	v    *plateView
	last fyne.Position
}

func (g *panning) to(at fyne.Position) {
	g.v.pan.DX += at.X - g.last.X
	g.v.pan.DY += at.Y - g.last.Y
	g.last = at
	g.v.hover.hide()
	g.v.Refresh()
}

func (g *panning) end()        {}
func (g *panning) moves() bool { return true }

// turning turns the table by its rim.
type turning struct {
	v    *plateView
	last geom.Angle // azimuth of the pointer
}

func (g *turning) to(at fyne.Position) {
	az := g.v.place(at).Azimuth()
	by := (az - g.last).Wrap()
	g.last = az
	s := g.v.w.store
	if s.Plan().Arrangement.PositiveTurn == plan.Counterclockwise {
		by = -by
	}
	s.SetTurn(s.Turn() + by)
}

func (g *turning) end()        {}
func (g *turning) moves() bool { return false }

// editing changes the plan with the pointer's place, as one edit to undo.
type editing struct {
	v      *plateView
	name   string
	change func(p *plan.Plan, from, to geom.Point) // places of the scene
	start  plan.Plan
}

// beginEdit starts an editing gesture.
func (v *plateView) beginEdit(key string, change func(p *plan.Plan, from, to geom.Point)) gesture {
	v.hover.hide()
	v.w.store.BeginGesture()
	return &editing{v: v, name: v.w.words.Text(key), change: change, start: v.w.store.Plan()}
}

func (g *editing) to(at fyne.Position) {
	p := g.start.Clone()
	g.change(&p, g.v.place(g.v.press.at), g.v.place(at))
	g.v.w.report(g.v.w.store.Replace(g.name, p))
}

func (g *editing) end()        { g.v.w.store.EndGesture() }
func (g *editing) moves() bool { return false }
