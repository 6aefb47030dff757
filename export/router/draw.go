package router

import (
	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// The layers of a drawing of the moves.
const (
	TravelLayer drawing.Layer = "TOOL_TRAVEL" // in the air
	PathLayer   drawing.Layer = "TOOL_PATH"   // of the tool's middle, cutting sideways
	CutLayer    drawing.Layer = "TOOL_CUT"    // what a finished hole measures
	ToolLayer   drawing.Layer = "TOOL"        // the tool where it is
)

// Draw draws what has been done of a program when it has run for some seconds,
// as seen from the face that is cut: travels, paths, the holes that are
// finished, and the tool itself where it then is. At the end there is no tool.
func (p Program) Draw(after float64) drawing.Drawing {
	var d drawing.Drawing
	s := stepper{Program: p, at: Place{Z: p.Settings.SafeHeight}, tool: -1}
	for i, m := range p.Moves {
		from := s.at
		share := s.take(m, after)
		drawMove(&d, m, from, s.at)
		if share < 1 {
			d.Add(ToolLayer, drawing.Circle{Centre: s.at.Flat(), Radius: p.Tools[s.tool].Diameter / 2})
			return d
		}
		if i+1 == len(p.Moves) || !sameHole(m, p.Moves[i+1]) {
			step := p.Steps[m.Step]
			d.Add(CutLayer, drawing.Circle{Centre: step.Holes[m.Hole].At, Radius: step.Diameter / 2})
		}
	}
	return d
}

func sameHole(a, b Move) bool { return a.Step == b.Step && a.Hole == b.Hole }

// drawMove draws a move, or the part of it that is done.
func drawMove(d *drawing.Drawing, m Move, from, to Place) {
	a, b := from.Flat(), to.Flat()
	switch {
	case m.Kind == Turn:
		d.Add(PathLayer, drawing.Circle{Centre: m.Centre, Radius: m.Centre.Distance(a)})
	case a == b: // only up or down
	case m.Kind == Rapid:
		d.Add(TravelLayer, drawing.Line{A: a, B: b})
	default:
		d.Add(PathLayer, drawing.Line{A: a, B: b})
	}
}

// stepper goes through a program's moves as time goes by.
type stepper struct {
	Program
	at   Place
	tool int
	time float64
}

// take goes along a move as far as the time lets it and returns the share done.
func (s *stepper) take(m Move, until float64) float64 {
	if t := s.Steps[m.Step].Tool; t != s.tool {
		s.tool = t
		s.time += runUp
	}
	lasts := s.lasts(m, s.at)
	if s.time+lasts <= until+slack {
		s.time += lasts
		s.at = m.To
		return 1
	}
	share := max(0, (until-s.time)/lasts)
	s.at = m.along(s.at, share)
	return share
}

// lasts returns how long a move from a place takes, s.
func (p Program) lasts(m Move, from Place) float64 {
	feed := m.Feed
	if m.Kind == Rapid {
		feed = p.Settings.Rapid
	}
	const secondsPerMinute = 60
	return m.length(from) / feed * secondsPerMinute
}

// along returns where the tool is when a share (0 to 1) of a move is done.
func (m Move) along(from Place, share float64) Place {
	z := from.Z + share*(m.To.Z-from.Z)
	if m.Kind == Turn {
		at := m.Centre.Add(from.Flat().Sub(m.Centre).Rotate(geom.Angle(-360 * share)))
		return Place{at.X, at.Y, z}
	}
	return Place{from.X + share*(m.To.X-from.X), from.Y + share*(m.To.Y-from.Y), z}
}
