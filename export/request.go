package export

import (
	"path/filepath"

	"stopwright/assets/words"
	"stopwright/export/drawing"
	"stopwright/export/scale"
	"stopwright/export/tile"
)

// Request says what to make of a report and where to put it. An empty path is
// not asked for. The formats are described at [Formats].
type Request struct {
	DXF      string
	SVG      string
	PDF      string
	CSV      string
	Proof    string // proof sheet, a PDF
	Template string // paper templates, a PDF
	Scale    string // flat scale and vernier: a DXF, SVG or PDF by its ending
	Strip    string // the scale as a strip, in the same way
	Coupon   string // the test piece, in the same way
	Router   string // card of the programs

	// Plan is the plan's own file, which is never written over; empty: none.
	Plan string
	// Date is printed as it is; empty: sheets have a blank to fill in.
	Date    string
	Paper   drawing.Paper   // the zero Paper: A4
	Printer tile.Correction // what the bars of a template measure
	Scaling scale.Options
	Words   *words.Catalogue // nil: English

	// LayerDepths adds to the name of each layer that is cut how deep, for
	// programs that take the depth of cut from it.
	LayerDepths bool
}

// info returns what every sheet says.
func (q Request) info() drawing.Info {
	info := drawing.Info{Words: q.Words, Date: q.Date, Depths: q.LayerDepths}
	if info.Words == nil {
		info.Words = words.English()
	}
	return info
}

// paper returns the size of printed sheets.
func (q Request) paper() drawing.Paper {
	if q.Paper == (drawing.Paper{}) {
		return drawing.A4
	}
	return q.Paper
}

// beside returns the path of one part's own file beside one that holds all:
// plate.dxf and base give plate-base.dxf.
func beside(path, part string) string {
	folder, name := filepath.Split(path)
	ending := filepath.Ext(name)
	if ending == name { // .dxf: a hidden file, no ending
		ending = ""
	}
	return folder + name[:len(name)-len(ending)] + "-" + part + ending
}
