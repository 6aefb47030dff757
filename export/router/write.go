package router

import (
	"io"
	"strconv"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

// Write writes a program: a head of comments that says what it needs and does,
// then the blocks. Lines are ASCII and at most 78 characters. Equal programs
// give equal bytes. The only errors are those of w.
func Write(w io.Writer, p Program, info drawing.Info) error {
	c := newCode(p.Settings)
	c.block("%")
	head(c, p, info)
	if len(p.Steps) > 0 {
		c.begin()
		c.steps(p, info.Words)
	}
	c.block("M2")
	c.block("%")
	_, err := w.Write(c.out.Bytes())
	return err
}

// begin sets all that a controller may have left otherwise: plane, units,
// absolute places, feed a minute, no offset of a tool's width or length, no
// cycle.
func (c *code) begin() {
	units := "G21"
	if c.unit == measure.Inch {
		units = "G20"
	}
	c.block("G17", units, "G90", "G94")
	c.block("G40", "G49", "G80")
}

// steps writes the steps, each tool's after a change to it.
func (c *code) steps(p Program, w *words.Catalogue) {
	moves, fitted := p.Moves, -1
	for i, s := range p.Steps {
		if s.Tool != fitted {
			c.change(p, s.Tool, w)
			fitted = s.Tool
		}
		c.comment(stepText(w, c.unit, s))
		n := 0
		for n < len(moves) && moves[n].Step == i {
			n++
		}
		if p.Settings.Canned && !s.Mill {
			c.cycle(s, p.Settings)
		} else {
			c.moves(moves[:n], p.Settings)
		}
		moves = moves[n:]
	}
	c.block("M5")
}

// change raises the tool, asks for another and starts the spindle. The first
// tool is the one the work was touched off with, which a controller without
// tools is not asked for.
func (c *code) change(p Program, tool int, w *words.Catalogue) {
	number := strconv.Itoa(tool + 1)
	c.block("G0", c.length("Z", p.Settings.SafeHeight))
	c.block("M5")
	c.comment(w.Text("router.change", words.Args{"N": tool + 1, "Tool": p.Tools[tool].Name(inUnit(w, c.unit))}))
	switch {
	case p.Settings.ToolChange == plan.ChangeM6:
		c.block("T"+number, "M6")
	case tool > 0:
		c.comment(w.Text("router.change.pause"))
		c.block("M0")
	}
	c.block("S"+strconv.Itoa(p.Settings.Spindle), "M3")
	c.block("G4", "P"+strconv.Itoa(runUp))
	c.feed = "" // said again after a stop
	c.block("G0", c.length("Z", p.Settings.SafeHeight))
}

// moves writes moves one by one, each from where the last one ended.
func (c *code) moves(all []Move, set plan.Router) {
	at := Place{Z: set.SafeHeight}
	for _, m := range all {
		x, y, z := c.length("X", m.To.X), c.length("Y", m.To.Y), c.length("Z", m.To.Z)
		switch {
		case m.Kind == Turn:
			i, j := c.between("I", m.To.X, m.Centre.X), c.between("J", m.To.Y, m.Centre.Y)
			c.block(c.fed([]string{"G3", x, y, z, i, j}, m.Feed)...)
		case m.Kind == Rapid && m.To.Z != at.Z:
			c.block("G0", z)
		case m.Kind == Rapid:
			c.block("G0", x, y)
		case m.To.Z != at.Z:
			c.block(c.fed([]string{"G1", z}, m.Feed)...)
		default:
			c.block(c.fed([]string{"G1", x, y}, m.Feed)...)
		}
		at = m.To
	}
}

// cycle writes a step by the controller's own cycle: G81, or G83 where the drill
// is drawn back on its way. G98 has it travel at the safe height, where it is
// when the cycle begins.
func (c *code) cycle(s Step, set plan.Router) {
	first := []string{"G98", "G81", "", "", c.length("Z", -s.Depth), c.length("R", set.Approach)}
	if pecked(s.Depth, set) {
		first[1] = "G83"
		first = append(first, c.length("Q", set.Peck))
	}
	for i, h := range s.Holes {
		x, y := c.length("X", h.At.X), c.length("Y", h.At.Y)
		if i > 0 {
			c.block(x, y)
			continue
		}
		first[2], first[3] = x, y
		c.block(c.fed(first, set.PlungeFeed)...)
	}
	c.block("G80")
}
