package pdf

import (
	"slices"

	"codeberg.org/go-pdf/fpdf"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The grey of [drawing.Shade], of 255: light enough that a pencil mark on it is
// seen, dark enough to survive a copying machine.
const shadeGrey = 233

// pen draws one page. A PDF page measures from its upper left corner in this
// library, the drawing model from the lower left.
type pen struct {
	f      *fpdf.Fpdf
	height float64 // of the paper, mm

	width float64   // as last set on this page; 0: not yet
	dash  []float64 // as last set
	grey  int       // as last set
}

func newPen(f *fpdf.Fpdf, height float64) *pen {
	p := &pen{f: f, height: height, grey: -1}
	f.SetDrawColor(0, 0, 0)
	f.SetTextColor(0, 0, 0)
	f.SetLineCapStyle(inkEnd)
	f.SetDashPattern(nil, 0)
	return p
}

// page draws a page, stretched from its lower left corner.
func (p *pen) page(s drawing.Page) {
	if s.Stretch.None() {
		p.draw(s.Drawing)
		return
	}
	p.f.TransformBegin()
	p.f.TransformScale(s.Stretch.X*percent, s.Stretch.Y*percent, 0, s.Height)
	p.draw(s.Drawing)
	p.f.TransformEnd()
}

const percent = 100.0

// draw draws the tinted grounds, then everything else in order.
func (p *pen) draw(d drawing.Drawing) {
	for _, ground := range [2]bool{true, false} {
		for _, e := range d.Entities {
			if (e.Layer == drawing.Shade) == ground {
				p.shape(e)
			}
		}
	}
}

// ink sets the weight and dashes of a layer, saying only what has changed.
func (p *pen) ink(l drawing.Layer) {
	k := drawing.PenOf(l)
	if width := max(k.Width, drawing.ThinLine); width != p.width {
		p.width = width
		p.f.SetLineWidth(width)
	}
	if !slices.Equal(k.Dash, p.dash) {
		p.dash = k.Dash
		p.f.SetDashPattern(k.Dash, 0)
		p.f.SetLineCapStyle(ends(k.Dash))
	}
}

// Unbroken lines end round, as ink does, so that corners close; dashes end
// square on their length, so that the gaps stay open.
const (
	inkEnd  = "round"
	dashEnd = "butt"
)

func ends(dash []float64) string {
	if len(dash) > 0 {
		return dashEnd
	}
	return inkEnd
}

// fill sets what a filled shape of the layer is filled with.
func (p *pen) fill(l drawing.Layer) {
	grey := 0
	if l == drawing.Shade {
		grey = shadeGrey
	}
	if grey != p.grey {
		p.grey = grey
		p.f.SetFillColor(grey, grey, grey)
	}
}

func (p *pen) shape(e drawing.Entity) {
	switch s := e.Shape.(type) {
	case drawing.Line:
		p.ink(e.Layer)
		p.f.Line(s.A.X, p.down(s.A), s.B.X, p.down(s.B))
	case drawing.Circle:
		p.ink(e.Layer)
		p.arc(s.Centre, s.Radius, 0, 360)
		p.f.ClosePath()
		p.f.DrawPath(stroke)
	case drawing.Arc:
		p.ink(e.Layer)
		p.arc(s.Centre, s.Radius, s.Start, s.Sweep)
		p.f.DrawPath(stroke)
	case drawing.Polygon:
		p.fill(e.Layer)
		corners := make([]fpdf.PointType, len(s.Points))
		for i, q := range s.Points {
			corners[i] = fpdf.PointType{X: q.X, Y: p.down(q)}
		}
		p.f.Polygon(corners, filled)
	case drawing.Text:
		p.text(s)
	}
}

// How the library is told to paint a path.
const (
	stroke = "D"
	filled = "F"
)

// down returns a point's distance from the upper edge of the paper.
func (p *pen) down(q geom.Point) float64 { return p.height - q.Y }
