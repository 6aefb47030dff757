// Package dxf writes a drawing as a DXF file: AC1015, ASCII, millimetres, every
// kind of thing on its own layer.
//
// What is written, and why:
//
//   - Circles are CIRCLE and arcs are ARC, never chains of short lines, so that
//     a router or a CAD program finds true centres and radii. A polygon is one
//     closed LWPOLYLINE: few programs that cut fill a SOLID, all follow an
//     outline. A line with no length, and lettering with no visible letter, is
//     left out.
//   - Every layer of [drawing.Pens] stands in the layer table, used or not and
//     always in that order, so that settings made by layer in a router's
//     program fit the next plan's file too. [drawing.Shade] is ink on paper
//     only and is not written.
//   - $EXTMIN and $EXTMAX hold the geometry alone. How wide lettering comes out
//     depends on the reader's font, so it is not counted; a drawing without
//     geometry has both at the origin.
//   - Lengths and angles are rounded to 1e-9 (mm, degrees) and -0 is never
//     written. The same drawing gives the same bytes, whatever else the process
//     has written before or is writing at the time.
//   - The file is plain ASCII; other letters are written in the escapes that
//     the format has for them: see label.go.
//
// The entities, tables and blocks are those of github.com/yofu/dxf. Its ready
// made drawing is not used, because that one shares layer 0, the text style and
// the line types between all drawings of the process, so that writing one
// changes the next. Here every file gets its own.
//
// Group codes and header variables are after the DXF Reference for AC1015, the
// release of 2000.
package dxf
