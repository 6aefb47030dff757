package pdf

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"stopwright/assets/fonts"
	"stopwright/export/drawing"
)

// Meta is what a PDF says of itself. No sheet shows it.
type Meta struct {
	Title string
	Date  time.Time // made and changed; zero: a fixed date, so that bytes repeat
}

// noDate is the date of a file whose caller gives none.
var noDate = time.Date(2000, time.January, 1, 0, 0, 0, 0, time.UTC)

const (
	unit    = "mm"
	upright = "P" // the size is used as given, whichever side is longer
	family  = "drawing"
	maker   = "Stopwright"
)

// Write writes the pages, in order, as one PDF file. Nothing is written when a
// page cannot be drawn: no page at all, a size or a number that is not above 0
// or not finite. Characters the drawing font lacks appear as question marks.
func Write(w io.Writer, pages []drawing.Page, meta Meta) error {
	if len(pages) == 0 {
		return errors.New("pdf: no page to write")
	}
	for i, p := range pages {
		if err := check(p); err != nil {
			return fmt.Errorf("pdf: page %d: %w", i+1, err)
		}
	}
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: unit, OrientationStr: upright, Size: size(pages[0])})
	f.SetAutoPageBreak(false, 0)
	f.SetMargins(0, 0, 0)
	f.SetCatalogSort(true)
	describe(f, meta)
	f.AddUTF8FontFromBytes(family, "", fonts.Regular)
	for _, p := range pages {
		f.AddPageFormat(upright, size(p))
		newPen(f, p.Height).page(p)
	}
	if err := f.Output(w); err != nil {
		return fmt.Errorf("pdf: %w", err)
	}
	return nil
}

func size(p drawing.Page) fpdf.SizeType { return fpdf.SizeType{Wd: p.Width, Ht: p.Height} }

// describe fills in the document's own description.
func describe(f *fpdf.Fpdf, meta Meta) {
	date := meta.Date
	if date.IsZero() {
		date = noDate
	}
	f.SetCreationDate(date.UTC())
	f.SetModificationDate(date.UTC())
	f.SetTitle(basic(meta.Title), true)
	f.SetCreator(maker, true)
	f.SetProducer(maker, true)
}

// basic keeps a description within the basic plane of Unicode and on one line:
// the library encodes nothing beyond it.
func basic(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case r < ' ':
			return ' '
		case r > 0xFFFF:
			return '?'
		}
		return r
	}, strings.ToValidUTF8(s, "?"))
	return strings.TrimSpace(s)
}
