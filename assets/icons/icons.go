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
