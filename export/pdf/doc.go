// Package pdf writes printed sheets as PDF, in exact millimetres: a page of
// 210 by 297 mm is A4, and a line of 100 mm prints 100 mm long at full size.
//
// Lines keep the weights and dashes of the drawing model's layers and are black,
// for any printer; [drawing.Shade] is a light grey ground. Letters are those of
// the drawing, embedded, so that a sheet looks the same everywhere. The same
// pages and [Meta] always give the same bytes.
package pdf
