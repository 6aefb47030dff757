package figures_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export/drawing"
	"stopwright/ui/figures"
	"stopwright/ui/ink"
)

// drawn are the sizes that words alone do not explain.
var drawn = []string{
	"face_gap", "seat.form", "seat.diameter", "seat.depth", "seat.drill_point", "seat.countersink_angle",
	"seat.relief_diameter", "seat.chamfer",
	"catch.ball_diameter", "catch.protrusion", "catch.free_force", "catch.flush_force", "catch.body_diameter",
	"catch.body_length", "catch.flange_diameter", "catch.flange_thickness", "catch.body_allowance", "catch.recess_allowance",
	"rules.web", "rules.edge",
}

// plans are the cases of what a figure follows: where the catch is, and what
// the seat has.
func plans() []plan.Plan {
	var out []plan.Plan
	for _, in := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		for _, s := range []plan.Seat{
			{Form: plan.Drilled, DrillPoint: 118},
			{Form: plan.Drilled, DrillPoint: 180, ReliefDiameter: 2, Chamfer: 0.3},
			{Form: plan.Countersunk, DrillPoint: 118},
			{Form: plan.Countersunk, DrillPoint: 180, ReliefDiameter: 2},
		} {
			p := plan.Default()
			p.Arrangement.CatchIn, p.Seat = in, s
			out = append(out, p)
		}
	}
	return out
}

func TestEverySizeHasItsFigure(t *testing.T) {
	known := map[string]bool{}
	for _, f := range plan.Fields(plan.Default()) {
		known[f.Generic] = true
	}
	for _, path := range drawn {
		assert.True(t, known[path], "%s is no field of a plan", path)
		_, ok := figures.Of(plan.Default(), path, "")
		assert.True(t, ok, path)
	}
	for path := range known {
		_, ok := figures.Of(plan.Default(), path, "")
		assert.Equal(t, slices.Contains(drawn, path), ok, path)
	}
}

// All that is drawn lies within what is shown, the value is lettered once, and
// no number is lost.
func TestFiguresAreWhole(t *testing.T) {
	for _, p := range plans() {
		for _, path := range drawn {
			f, _ := figures.Of(p, path, "4.5 mm")
			b, whole := f.Drawing.Bounds(), f.Bounds
			assert.False(t, math.IsNaN(b.Width()+b.Height()), path)
			assert.GreaterOrEqual(t, b.Min.X, whole.Min.X, "%s: left", path)
			assert.GreaterOrEqual(t, b.Min.Y, whole.Min.Y, "%s: foot", path)
			assert.LessOrEqual(t, b.Max.X, whole.Max.X, "%s: right", path)
			assert.LessOrEqual(t, b.Max.Y, whole.Max.Y, "%s: top", path)
			values := 0
			for _, e := range f.Drawing.Entities {
				if text, ok := e.Shape.(drawing.Text); ok {
					assert.Equal(t, "4.5 mm", text.Text)
					values++
				}
			}
			want := 1
			if path == "seat.form" {
				want = 0 // no size
			}
			assert.Equal(t, want, values, path)
		}
	}
}

// Turned upside down where the catch is below; and the same figure otherwise.
func TestTheCatchIsWhereThePlanHasIt(t *testing.T) {
	ball := func(in plan.Part) drawing.Circle {
		p := plan.Default()
		p.Arrangement.CatchIn = in
		f, _ := figures.Of(p, "face_gap", "")
		for _, e := range f.Drawing.Entities {
			if c, ok := e.Shape.(drawing.Circle); ok && e.Layer == figures.Ball {
				return c
			}
		}
		require.Fail(t, "there is no ball")
		return drawing.Circle{}
	}
	above, below := ball(plan.PartTurntable), ball(plan.PartBase)
	assert.Positive(t, above.Centre.Y, "the seat's face is at 0")
	assert.Equal(t, -above.Centre.Y, below.Centre.Y)
	assert.Equal(t, above.Radius, below.Radius)
}

// The ball touches the seat that is drawn for it and goes into neither side.
func TestTheBallRestsOnItsSeat(t *testing.T) {
	const touch = 1e-9 // mm: rounding
	for _, p := range plans()[:4] {
		f, _ := figures.Of(p, "face_gap", "")
		var ball drawing.Circle
		for _, e := range f.Drawing.Entities {
			if c, ok := e.Shape.(drawing.Circle); ok {
				ball = c
			}
		}
		least := math.Inf(1)
		for _, e := range f.Drawing.Entities {
			if l, ok := e.Shape.(drawing.Line); ok && e.Layer == figures.Cut && max(l.A.Y, l.B.Y) <= 0 {
				least = min(least, gap(l, ball))
			}
		}
		assert.InDelta(t, 0, least, touch, "%+v", p.Seat)
	}
}

// gap is how far a line stays from a ball.
func gap(l drawing.Line, c drawing.Circle) float64 {
	dx, dy := l.B.X-l.A.X, l.B.Y-l.A.Y
	k := ((c.Centre.X-l.A.X)*dx + (c.Centre.Y-l.A.Y)*dy) / (dx*dx + dy*dy)
	k = min(max(k, 0), 1)
	return math.Hypot(l.A.X+k*dx-c.Centre.X, l.A.Y+k*dy-c.Centre.Y) - c.Radius
}

// Hatching stays inside what is cut: no stroke crosses an edge.
func TestHatchingStaysInTheWood(t *testing.T) {
	const touch = 1e-6 // mm: ends of strokes lie on edges
	for _, p := range plans() {
		f, _ := figures.Of(p, "seat.depth", "")
		for _, e := range f.Drawing.Entities {
			l, ok := e.Shape.(drawing.Line)
			if !ok || e.Layer != figures.Hatch {
				continue
			}
			assert.InDelta(t, 1, math.Abs((l.B.Y-l.A.Y)/(l.B.X-l.A.X)), touch, "at 45°")
			for _, other := range f.Drawing.Entities {
				if edge, ok := other.Shape.(drawing.Line); ok && other.Layer == figures.Cut {
					assert.False(t, crosses(l, edge, touch), "%v crosses %v", l, edge)
				}
			}
		}
	}
}

// crosses reports whether two lines cross away from their ends.
func crosses(a, b drawing.Line, slack float64) bool {
	side := func(l drawing.Line, x, y float64) float64 {
		length := math.Hypot(l.B.X-l.A.X, l.B.Y-l.A.Y)
		return ((l.B.X-l.A.X)*(y-l.A.Y) - (l.B.Y-l.A.Y)*(x-l.A.X)) / length
	}
	apart := func(l, m drawing.Line) bool {
		p, q := side(l, m.A.X, m.A.Y), side(l, m.B.X, m.B.Y)
		return math.Min(p, q) < -slack && math.Max(p, q) > slack
	}
	return apart(a, b) && apart(b, a)
}

// What is explained stands out by more than its colour: its lines are thicker
// than the hatching, and its value is lettered.
func TestStyle(t *testing.T) {
	for _, p := range []ink.Palette{ink.Light, ink.Dark, ink.BlackOnWhite, ink.WhiteOnBlack} {
		style := figures.Style(p)
		of := func(l drawing.Layer) ink.Stroke { return style(drawing.Entity{Layer: l}) }
		assert.Equal(t, p.Accent, of(figures.Measure).Colour)
		assert.Greater(t, of(figures.Measure).Width, of(figures.Hatch).Width)
		assert.Greater(t, of(figures.Cut).Width, of(figures.Measure).Width)
		for _, l := range []drawing.Layer{figures.Cut, figures.Hatch, figures.Metal, figures.Ball, figures.Spring, figures.Axis, drawing.Seats, drawing.Outline} {
			assert.NotZero(t, of(l).Width, strings.ToLower(string(l)))
		}
	}
}
