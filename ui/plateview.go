package ui

import (
	"image"
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"stopwright/detent/geom"
	"stopwright/ui/ink"
)

// plateView shows the plate to scale and takes clicks on it. One raster holds
// the drawing; it is painted anew only when something has changed. What follows
// the pointer is drawn over it.
type plateView struct {
	widget.BaseWidget
	w *Window

	scene  scene
	stale  bool // the scene must be made anew
	canvas *ink.Canvas
	raster *canvas.Raster
	hover  *hoverMark
	border *canvas.Rectangle // shows the focus

	zoom  float64    // 1: the plate fills the view
	pan   fyne.Delta // px of layout from the middle
	press pressed
	drag  gesture  // nil: nothing is being dragged
	held  ink.View // while dragging: the view, which must not follow the size it changes
}

// pressed is what the mouse was pressed on.
type pressed struct {
	at     fyne.Position
	button desktop.MouseButton
	hit    hit
}

var (
	_ desktop.Mouseable  = (*plateView)(nil)
	_ desktop.Hoverable  = (*plateView)(nil)
	_ desktop.Cursorable = (*plateView)(nil)
	_ fyne.Draggable     = (*plateView)(nil)
	_ fyne.Scrollable    = (*plateView)(nil)
	_ fyne.Focusable     = (*plateView)(nil)
)

// fitMargin is the room (px of layout) left round a plate that fills the view.
const fitMargin = 34

func newPlateView(w *Window) *plateView {
	v := &plateView{w: w, stale: true, zoom: 1, canvas: ink.New(0, 0), hover: newHoverMark()}
	v.raster = canvas.NewRaster(v.paint)
	v.border = canvas.NewRectangle(color.Transparent)
	v.border.StrokeWidth = 2
	v.ExtendBaseWidget(v)
	return v
}

// CreateRenderer draws the raster with the hover mark over it.
func (v *plateView) CreateRenderer() fyne.WidgetRenderer {
	return &plateRenderer{v: v, objects: append([]fyne.CanvasObject{v.raster, v.border}, v.hover.objects()...)}
}

type plateRenderer struct {
	v       *plateView
	objects []fyne.CanvasObject
}

func (r *plateRenderer) Layout(size fyne.Size) {
	r.v.raster.Resize(size)
	r.v.border.Resize(size)
}

func (r *plateRenderer) MinSize() fyne.Size           { return fyne.NewSize(240, 240) }
func (r *plateRenderer) Refresh()                     { canvas.Refresh(r.v.raster) }
func (r *plateRenderer) Objects() []fyne.CanvasObject { return r.objects }
func (r *plateRenderer) Destroy()                     {}

// changed makes the scene anew before the next frame.
func (v *plateView) changed() {
	v.stale = true
	v.hover.hide()
	v.Refresh()
}

// paint is the raster's generator: width and height are px of the screen.
func (v *plateView) paint(width, height int) image.Image {
	v.refreshScene()
	v.canvas.Resize(width, height)
	dense := 1.0
	if w := v.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	v.scene.paint(v.canvas, v.view().Dense(dense), v.w.palette(), v.w.words)
	return v.canvas.Img
}

func (v *plateView) refreshScene() {
	if v.stale {
		v.scene, v.stale = newScene(v.w.store), false
	}
}

// view returns where the plate lies, in px of layout.
func (v *plateView) view() ink.View {
	if v.drag != nil && !v.drag.moves() {
		return v.held
	}
	size := v.Size()
	fit := ink.Fit(v.scene.bounds, float64(size.Width), float64(size.Height), fitMargin)
	view := fit.Zoom(v.zoom, ink.Px{X: float64(size.Width) / 2, Y: float64(size.Height) / 2})
	view.Origin.X += float64(v.pan.DX)
	view.Origin.Y += float64(v.pan.DY)
	return view
}

// place returns the place of the scene under a position, mm.
func (v *plateView) place(at fyne.Position) geom.Point {
	return v.view().Point(ink.Px{X: float64(at.X), Y: float64(at.Y)})
}

// position returns where a place of the scene lies in the view.
func (v *plateView) position(p geom.Point) fyne.Position {
	px := v.view().Pixel(p)
	return fyne.NewPos(float32(px.X), float32(px.Y))
}

// fit shows the whole plate again.
func (v *plateView) fit() {
	v.zoom, v.pan = 1, fyne.Delta{}
	v.hover.hide()
	v.Refresh()
}

// bring shows the whole plate again if one of the seats is out of sight.
func (v *plateView) bring(seats []int) {
	v.refreshScene()
	for _, s := range seats {
		at := v.position(v.scene.fromPart(v.scene.plate.SeatsPart, v.scene.plate.Seats[s].Centre))
		if at.X < 0 || at.Y < 0 || at.X > v.Size().Width || at.Y > v.Size().Height {
			v.fit()
			return
		}
	}
}

// The limits of zooming: the whole plate small, and one seat filling the view.
const (
	minZoom = 0.5
	maxZoom = 200
)

// zoomBy enlarges the view k times about a position, which stays where it is.
func (v *plateView) zoomBy(k float64, at fyne.Position) {
	now := math.Max(minZoom, math.Min(maxZoom, v.zoom*k))
	k, v.zoom = now/v.zoom, now
	mid := fyne.NewPos(v.Size().Width/2, v.Size().Height/2)
	away := at.Subtract(mid)
	v.pan.DX = away.X - float32(k)*(away.X-v.pan.DX)
	v.pan.DY = away.Y - float32(k)*(away.Y-v.pan.DY)
	v.hover.hide()
	v.Refresh()
}
