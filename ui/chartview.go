package ui

import (
	"image"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/export/chart"
	"stopwright/export/drawing"
	"stopwright/ui/ink"
)

// chartView shows the drilling chart, sheet by sheet as it will be printed: the
// pages are the very ones that go to the printer.
type chartView struct {
	w      *Window
	paper  drawing.Paper
	pages  []drawing.Page // nil: to be made when somebody looks
	at     int
	canvas *ink.Canvas
	raster *canvas.Raster
	scroll *container.Scroll
	number *widget.Label
	bar    *fyne.Container // number and what is beside it
	object fyne.CanvasObject
}

func newChartView(w *Window) *chartView {
	v := &chartView{w: w, paper: drawing.A4, canvas: ink.New(0, 0), number: widget.NewLabel("")}
	v.raster = canvas.NewRaster(v.paint)
	paper := widget.NewSelect(nil, nil)
	for _, p := range drawing.Papers {
		paper.Options = append(paper.Options, p.Name)
	}
	paper.SetSelectedIndex(0)
	paper.OnChanged = func(string) {
		v.paper = drawing.Papers[paper.SelectedIndex()]
		v.refresh()
	}
	turn := func(by int) func() {
		return func() {
			v.at += by
			v.show()
		}
	}
	v.bar = container.NewHBox(
		iconButton(theme.NavigateBackIcon(), turn(-1)), v.number, iconButton(theme.NavigateNextIcon(), turn(1)),
		layout.NewSpacer(), paper,
		widget.NewButton(w.words.Text("chart.export"), w.askExport),
	)
	v.scroll = container.NewScroll(container.New(sheetLayout{v}, v.raster))
	v.object = container.NewBorder(v.bar, nil, nil, nil, v.scroll)
	return v
}

// sheetLayout gives a sheet the width there is, and the height that goes with
// it.
type sheetLayout struct{ v *chartView }

// sheetMargin is the bench left to see round a sheet, px of layout.
const sheetMargin = 12

// readable is the least scale (px of layout to a mm of paper) at which the
// sheet's table can be read.
const readable = 3.2

// MinSize is the sheet at the width there is, or wider if it could not be read.
func (l sheetLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	const margins = 2 * sheetMargin
	wide, high := float32(l.v.paper.Width), float32(l.v.paper.Height)
	scale := max((l.v.scroll.Size().Width-margins)/wide, readable)
	return fyne.NewSize(wide*scale+margins, high*scale+margins)
}

// Layout fills the place.
func (l sheetLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) { objects[0].Resize(size) }

// refresh makes the chart anew.
func (v *chartView) refresh() {
	v.forget()
	v.show()
}

// forget drops the sheets: they are made anew when somebody looks.
func (v *chartView) forget() {
	if v != nil { // else the page was never turned to
		v.pages = nil
	}
}

// show shows the sheet the reader has turned to.
func (v *chartView) show() {
	v.make()
	v.at = min(max(v.at, 0), len(v.pages)-1)
	v.number.SetText(v.w.words.Text("chart.page", words.Args{"N": v.at + 1, "Of": len(v.pages)}))
	v.bar.Refresh() // the number has another width
	v.scroll.Refresh()
	v.raster.Refresh()
}

// make makes the sheets, unless they are made already.
func (v *chartView) make() {
	if v.pages == nil {
		info := drawing.Info{Words: v.w.sheetWords, Date: time.Now().Format(time.DateOnly)}
		v.pages = chart.Pages(chart.New(v.w.store.Report(), info), v.paper)
	}
}

// paint paints a sheet of paper on the bench.
func (v *chartView) paint(width, height int) image.Image {
	v.canvas.Resize(width, height)
	p := v.w.palette()
	v.canvas.Clear(mix(p.Paper, p.Ink, 0.2))
	if len(v.pages) == 0 {
		return v.canvas.Img
	}
	page := v.pages[v.at]
	dense := 1.0
	if w := v.raster.Size().Width; w > 0 {
		dense = float64(width) / float64(w)
	}
	sheet := drawing.Bounds{Max: geom.Point{X: page.Width, Y: page.Height}}
	view := ink.Fit(sheet, float64(width)/dense, float64(height)/dense, sheetMargin).Dense(dense)
	v.canvas.Fill(view.Pixel(sheet.Min), view.Pixel(sheet.Max), p.Paper)
	ink.Paint(v.canvas, page.Drawing, view, printed(p, view))
	return v.canvas.Img
}

// printed draws a sheet in the pens of the printer, thinner where the sheet is
// shown smaller than it is.
func printed(p ink.Palette, view ink.View) ink.Style {
	base := p.Style()
	return func(e drawing.Entity) ink.Stroke {
		s := base(e)
		s.Hatch, s.Fill = ink.Hatch{}, base(drawing.Entity{}).Fill
		s.Width = drawing.PenOf(e.Layer).Width * view.Scale / density(view)
		if e.Layer == drawing.Shade {
			s.Colour = mix(p.Paper, p.Ink, 0.08)
		} else {
			s.Colour = p.Ink
			s.Width = max(s.Width, p.Weight(ink.ThinLine)/2)
		}
		return s
	}
}
