// Package icons embeds the program's own icon: a plate on the drawing paper,
// one of its seats with the ball in it.
package icons

import _ "embed"

// SVG is the icon as drawn, 512 units square. It holds plain shapes and paths
// only, which every reader of SVG can show.
//
//go:embed stopwright.svg
var SVG []byte

// PNG is the same at 512 by 512 pixels, for those that take pixels alone.
//
//go:embed stopwright.png
var PNG []byte

// Small is the same at 128 by 128 pixels, for a window's title and the list of
// open windows: to draw the SVG or to hand on the large picture takes longer
// than to open the window.
//
//go:embed stopwright-128.png
var Small []byte
