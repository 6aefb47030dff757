package export

import (
	"io"
	"os"
	"time"

	"stopwright/detent"
	"stopwright/export/chart"
	"stopwright/export/drawing"
	"stopwright/export/dxf"
	"stopwright/export/pdf"
	"stopwright/export/svg"
	"stopwright/export/template"
)

// Format is one kind of file that a report is made into.
type Format struct {
	Name string // as a shell names it
	// Ending is what its file is called beside a plan's: an ending, and before
	// it what tells it from another of the same kind.
	Ending string
	Path   func(*Request) *string

	// outputs lists the files to make when path is asked for.
	outputs func(r detent.Report, q Request, path string) []output
}

// Formats lists every kind of file, in the order they are written.
//
// A drawing comes in several files: the one asked for holds all parts side by
// side, and beside it lies one for each part, with -base, -turntable or -collar
// before its ending and the pivot at the origin. Where the file asked for is a
// device or a pipe it is the only one. Anything else is one file, but for router
// programs: of those the file asked for is a card that moves nothing, and beside
// it lies one program for each part.
var Formats = []Format{
	{"dxf", ".dxf", func(q *Request) *string { return &q.DXF }, drawings(dxf.Write)},
	{"svg", ".svg", func(q *Request) *string { return &q.SVG }, drawings(svg.Write)},
	{"pdf", ".pdf", func(q *Request) *string { return &q.PDF }, charts(writePDF)},
	{"csv", ".csv", func(q *Request) *string { return &q.CSV }, charts(writeCSV)},
	{"proof", "-proof.pdf", func(q *Request) *string { return &q.Proof }, proofs},
	{"template", "-template.pdf", func(q *Request) *string { return &q.Template }, templates},
	{"scale", "-scale.dxf", func(q *Request) *string { return &q.Scale }, flatScale.outputs},
	{"strip", "-strip.pdf", func(q *Request) *string { return &q.Strip }, stripScale.outputs},
	{"coupon", "-coupon.dxf", func(q *Request) *string { return &q.Coupon }, testPiece.outputs},
	{routerFormat, ".ngc", func(q *Request) *string { return &q.Router }, programs},
}

// drawings gives the files of a format that holds one drawing.
func drawings(write func(io.Writer, drawing.Drawing) error) func(detent.Report, Request, string) []output {
	return func(r detent.Report, q Request, path string) []output {
		all := []output{{path, func(w io.Writer) error { return write(w, drawing.AllParts(r.Plate, q.info())) }}}
		if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
			return all // a device, a pipe, or a mistake
		}
		for _, part := range drawing.AllPartsOf(r.Plate.Plan) {
			all = append(all, output{beside(path, string(part)), func(w io.Writer) error {
				return write(w, drawing.PartSheet(r.Plate, part, q.info()))
			}})
		}
		return all
	}
}

// templates gives the file of paper templates.
func templates(r detent.Report, q Request, path string) []output {
	return []output{{path, func(w io.Writer) error {
		pages, err := template.Pages(r.Plate, q.info(), q.paper(), q.Printer)
		if err != nil {
			return err
		}
		return q.printed(w, r, pages)
	}}}
}

// printed writes pages as a PDF that bears the plan's title and the date.
func (q Request) printed(w io.Writer, r detent.Report, pages []drawing.Page) error {
	meta := pdf.Meta{Title: drawing.Title(r.Plate.Plan, q.info().Words, "")}
	if date, err := time.Parse(time.DateOnly, q.Date); err == nil {
		meta.Date = date
	}
	return pdf.Write(w, pages, meta)
}

// charts gives the file of a format that holds the chart.
func charts(write func(io.Writer, chart.Chart, Request) error) func(detent.Report, Request, string) []output {
	return func(r detent.Report, q Request, path string) []output {
		return []output{{path, func(w io.Writer) error { return write(w, chart.New(r, q.info()), q) }}}
	}
}

func writeCSV(w io.Writer, c chart.Chart, _ Request) error { return chart.WriteCSV(w, c) }

func writePDF(w io.Writer, c chart.Chart, q Request) error {
	meta := pdf.Meta{Title: c.Title}
	if date, err := time.Parse(time.DateOnly, q.Date); err == nil {
		meta.Date = date
	}
	return pdf.Write(w, chart.Pages(c, q.paper()), meta)
}
