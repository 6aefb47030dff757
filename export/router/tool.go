package router

import (
	"stopwright/assets/words"
	"stopwright/detent/ball"
	"stopwright/detent/geom"
)

// ToolKind is the shape of a tool's end.
type ToolKind string

// The kinds of tool.
const (
	Flat        ToolKind = "flat"        // end mill: straight down and sideways
	Drill       ToolKind = "drill"       // straight down only
	Countersink ToolKind = "countersink" // straight down only
)

// Tool is one tool of a program. Its number is its place in the list, from 1.
type Tool struct {
	Kind     ToolKind
	Diameter float64 // of a countersink: the least it may be
	Point    float64 // included angle, degrees; 180: flat
}

// tip returns how far the tool's end reaches beyond where it is full width, mm.
func (t Tool) tip() float64 {
	if t.Kind != Drill {
		return 0
	}
	return ball.PointLength(t.Diameter, geom.Angle(t.Point))
}

// Name says what the tool is.
func (t Tool) Name(c *words.Catalogue) string {
	return c.Text("router.tool."+string(t.Kind), words.Args{
		"Diameter": words.MM(t.Diameter), "Point": words.Deg(t.Point),
	})
}

// straight returns the tool that makes a hole of its own diameter with a point.
func straight(diameter, point float64) Tool {
	if point == 180 {
		return flat(diameter)
	}
	return Tool{Drill, diameter, point}
}

func flat(diameter float64) Tool { return Tool{Flat, diameter, 180} }
