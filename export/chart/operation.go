package chart

import (
	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// Kind is a kind of operation. Its name in the words is "operation." and it.
type Kind string

// The kinds of operation, in the order they are done to a part.
const (
	Mark        Kind = "mark"
	Coupon      Kind = "coupon" // in scrap
	Pivot       Kind = "pivot"
	Counterbore Kind = "counterbore" // recess for a catch's flange
	Body        Kind = "body"        // bore for its body
	KnockOut    Kind = "knock-out"
	Recess      Kind = "recess" // for the wear ring, or a screw's head
	SpotAll     Kind = "spot"
	PilotHoles  Kind = "pilot" // through a seat's middle
	Final       Kind = "final" // the seats
	Chamfer     Kind = "chamfer"
	GaugeSeats  Kind = "gauge"
	Drilling    Kind = "drill" // holes that are neither seats nor for catches
	Slots       Kind = "slots"
	CutOut      Kind = "outline"
)

// Operation is one thing done to a part, with one tool and one setting, to one
// hole after another.
type Operation struct {
	Part  plan.Part
	Kind  Kind
	Tool  Tool
	Speed stock.Speed // guidance; no RPM where nothing turns
	Holes []Hole      // none: it is done once to the part
}

// Tool is what an operation is done with and how deep it goes.
type Tool struct {
	Diameter float64    // mm; 0: none of one size
	Point    geom.Angle // included; 180: flat; 0: none
	Depth    float64    // of the wall or the cone, mm; 0: right through
	Stop     float64    // depth-stop setting from the tip touching the face, mm; 0: right through
}

// Hole is one place an operation is done at.
type Hole struct {
	Tag string
	At  geom.Point // as seen at the drill

	// To gauge it: what it measures from the zero seat over the chart's pins, mm.
	// 0: it is the zero seat, or the pins run into each other.
	Outside float64
}

// blunt is the point of a tool with a flat end.
const blunt geom.Angle = 180

// usualPoint is the point of a common twist drill: common practice, no source.
const usualPoint geom.Angle = 118

// toDepth returns a tool of a diameter and a point that leaves a wall of a depth;
// 0: right through.
func toDepth(diameter float64, point geom.Angle, depth float64) Tool {
	t := Tool{Diameter: diameter, Point: point, Depth: depth}
	if depth > 0 {
		t.Stop = depth + ball.PointLength(diameter, point)
	}
	return t
}

// tickDecimals place a hole in a tick to a hundredth of a millimetre: a hole
// that has moved by more is another hole.
const tickDecimals = 2

// Tick names what is done when the operation is done to one of its holes, as a
// plan's log keeps it: the operation, the part and the hole's place at the
// drill, so that a seat that moves is not taken for drilled. An operation
// without holes is named by the part alone.
func (o Operation) Tick(h Hole) string {
	name := string(o.Kind) + " " + string(o.Part)
	if len(o.Holes) == 0 {
		return name
	}
	return name + " " + measure.Fixed(h.At.X, tickDecimals) + "," + measure.Fixed(h.At.Y, tickDecimals)
}

// Ticks returns the names of all an operation's ticks, in order.
func (o Operation) Ticks() []string {
	if len(o.Holes) == 0 {
		return []string{o.Tick(Hole{})}
	}
	out := make([]string, len(o.Holes))
	for i, h := range o.Holes {
		out[i] = o.Tick(h)
	}
	return out
}

// Name returns the operation's name in words.
func (o Operation) Name(c *words.Catalogue) string { return c.Text("operation." + string(o.Kind)) }

// Say tells the tool, its depth-stop setting and its speed on one line.
func (o Operation) Say(c *words.Catalogue) string {
	t := o.Tool
	args := words.Args{"Diameter": "⌀" + c.Length(t.Diameter), "Depth": words.MM(t.Depth), "Stop": words.MM(t.Stop), "RPM": int(o.Speed.RPM)}
	if t.Diameter == 0 || o.Kind == Slots {
		return c.Text("operation."+string(o.Kind)+".say", args)
	}
	text := c.Text("operation.through", args)
	switch {
	case t.Depth > 0 && t.Point == blunt:
		text = c.Text("operation.flat", args)
	case t.Depth > 0:
		text = c.Text("operation.blind", args)
	}
	if o.Speed.RPM > 0 {
		text += "; " + c.Text("operation.speed", args)
	}
	return text
}
