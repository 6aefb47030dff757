package ink

import (
	"image/color"

	"stopwright/export/drawing"
)

// Stroke is how an entity is drawn. Its lengths are px of layout: they do not
// grow with the view, and keep their size on a fine screen.
type Stroke struct {
	Colour color.RGBA // of lines, polygons and lettering
	Width  float64    // of lines
	Dash   []float64  // drawn, left, drawn …; nil: unbroken
	Fill   color.RGBA // within a circle
	Hatch  Hatch      // along the edge, inside it where Depth is above 0
	Sign   Sign       // what marks a circle besides its colour
	Letter float64    // capitals are no higher, however large the view; 0: no limit
}

// Sign marks a circle so that it stands out without colour.
type Sign int

// The signs.
const (
	NoSign Sign = iota
	Cross       // struck out by two lines that reach beyond it
	Halo        // a second circle round it
)

// Style says how each entity is drawn.
type Style func(drawing.Entity) Stroke

// Layers returns the style that draws every layer in its own stroke. Layers not
// listed are not drawn.
func Layers(strokes map[drawing.Layer]Stroke) Style {
	return func(e drawing.Entity) Stroke { return strokes[e.Layer] }
}
