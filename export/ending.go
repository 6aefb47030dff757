package export

import (
	"io"
	"path/filepath"
	"strings"

	"stopwright/detent"
	"stopwright/export/coupon"
	"stopwright/export/drawing"
	"stopwright/export/dxf"
	"stopwright/export/scale"
	"stopwright/export/svg"
	"stopwright/export/tile"
)

// figure is a drawing of its own, beside those of the parts, which can be cut
// (DXF, SVG) or printed (PDF).
type figure struct {
	drawn  func(detent.Report, Request) (drawing.Drawing, error)
	sheets func(detent.Report, Request) ([]tile.Sheet, error)
}

var flatScale = figure{
	func(r detent.Report, q Request) (drawing.Drawing, error) {
		return scale.Noted(r.Plate, q.info(), q.Scaling)
	},
	func(r detent.Report, q Request) ([]tile.Sheet, error) {
		s, err := scale.Sheet(r.Plate, q.info(), q.Scaling)
		return []tile.Sheet{s}, err
	},
}

var stripScale = figure{
	func(r detent.Report, q Request) (drawing.Drawing, error) {
		return scale.NotedStrip(r.Plate, q.info(), q.Scaling)
	},
	func(r detent.Report, q Request) ([]tile.Sheet, error) {
		return scale.StripSheets(r.Plate, q.info(), q.Scaling)
	},
}

var testPiece = figure{
	func(r detent.Report, q Request) (drawing.Drawing, error) {
		return coupon.Sheet(r.Plate, q.info()).Noted(q.info().Words), nil
	},
	func(r detent.Report, q Request) ([]tile.Sheet, error) {
		return []tile.Sheet{coupon.Sheet(r.Plate, q.info())}, nil
	},
}

// errEnding means that a figure's file is of no kind that holds one.
var errEnding = refused("export.ending", "", nil)

// outputs gives the file of a figure, of the kind that its name ends in.
func (f figure) outputs(r detent.Report, q Request, path string) []output {
	return []output{{path, func(w io.Writer) error {
		switch strings.ToLower(filepath.Ext(path)) {
		case ".dxf":
			return f.cut(w, r, q, dxf.Write)
		case ".svg":
			return f.cut(w, r, q, svg.Write)
		case ".pdf":
			return f.print(w, r, q)
		}
		return errEnding
	}}}
}

func (f figure) cut(w io.Writer, r detent.Report, q Request, write func(io.Writer, drawing.Drawing) error) error {
	d, err := f.drawn(r, q)
	if err != nil {
		return err
	}
	return write(w, d)
}

func (f figure) print(w io.Writer, r detent.Report, q Request) error {
	sheets, err := f.sheets(r, q)
	if err != nil {
		return err
	}
	var all []drawing.Page
	for _, s := range sheets {
		pages, err := tile.Pages(s, q.paper(), q.Printer, q.info().Words)
		if err != nil {
			return err
		}
		all = append(all, pages...)
	}
	return q.printed(w, r, all)
}
