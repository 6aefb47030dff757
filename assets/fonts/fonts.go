// Package fonts embeds the lettering of the window and of every sheet, so that
// a drawing looks the same on every machine. The licence stands beside it.
package fonts

import _ "embed"

// Regular is the draughting letter used for text and dimensions.
//
//go:embed routed-gothic.ttf
var Regular []byte

// Wide is the wider cut, for headings.
//
//go:embed routed-gothic-wide.ttf
var Wide []byte

// Licence is the licence of both cuts.
//
//go:embed LICENSE.txt
var Licence string
