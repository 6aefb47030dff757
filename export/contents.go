package export

import (
	"bytes"
	_ "embed"
	"encoding/base64"
	"html/template"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// contentsName is what the page of contents is called: its letters are the same
// on every system.
const contentsName = "contents.html"

// contentsPage is the page: one file with its style inside, which needs no
// network and no script. html/template escapes all that comes from a plan.
//
//go:embed contents.html
var contentsPage string

var contentsTemplate = template.Must(template.New(contentsName).Parse(contentsPage))

// page is what the template fills in.
type page struct {
	Language, Title, Notes string
	Says                   map[string]string
	Picture                template.URL // of all parts; empty: none
	Cautions               []string
	Parts                  []pagePart
	Kinds                  []pageKind
	Findings               []pageFinding
}

type pagePart struct{ Name, Size, Thick, Material, Lies string }

type pageKind struct {
	Name    string
	Files   []pageFile
	Refused []string
}

type pageFile struct{ Name, Link, Size string }

type pageFinding struct{ Severity, Text string }

// contentsOf makes the page of contents of a collection.
func contentsOf(r detent.Report, q BundleRequest, c collection) ([]byte, error) {
	w := q.info().Words
	p := page{Language: w.Language, Title: drawing.Title(r.Plate.Plan, w, w.Text("bundle.untitled")), Notes: strings.TrimSpace(r.Plate.Plan.Notes)}
	p.Says = says(w, r.Plate, q.Date)
	p.Picture = picture(q, c)
	for _, key := range cautions {
		p.Cautions = append(p.Cautions, w.Text("caution."+key))
	}
	for _, part := range drawing.AllPartsOf(r.Plate.Plan) {
		p.Parts = append(p.Parts, partRow(w, r.Plate, part))
	}
	p.Kinds = kinds(w, c)
	for _, f := range r.Findings {
		p.Findings = append(p.Findings, pageFinding{
			w.Text("bundle.severity." + string(f.Severity)), check.Sentence(r.Plate, f, w),
		})
	}
	var b bytes.Buffer
	err := contentsTemplate.Execute(&b, p)
	return b.Bytes(), err
}

// cautions are said on every sheet.
var cautions = []string{"unplug", "clamp", "eyes", "manual"}

// says returns the page's own words.
func says(w *words.Catalogue, pl *plate.Plate, date string) map[string]string {
	out := map[string]string{}
	for _, key := range []string{
		"picture", "cautions", "parts", "part", "size", "thick", "material", "lies", "files", "checks", "nothing", "missing",
	} {
		out[key] = w.Text("bundle.page." + key)
	}
	out["sub"] = w.Text("bundle.page.undated")
	if date != "" {
		out["sub"] = w.Text("bundle.page.dated", words.Args{"Date": date})
	}
	out["counts"] = w.Text("bundle.page.counts", words.Args{
		"Stops": len(pl.Stops), "Seats": len(pl.Seats), "Catches": len(pl.Pockets), "Part": drawing.PartName(w, pl.SeatsPart),
	})
	return out
}

// partRow returns the line of one part.
func partRow(w *words.Catalogue, pl *plate.Plate, part plan.Part) pagePart {
	p := pl.Plan
	row := pagePart{
		Name: drawing.PartName(w, part), Thick: w.Length(plate.ThicknessOf(p, part)),
		Material: drawing.MaterialName(w, plate.MaterialOf(p, part)), Lies: drawing.ViewName(w, drawing.Like(pl, part)),
	}
	o := plate.OutlineOf(p, part)
	if row.Size = "⌀" + w.Length(o.Diameter); o.Diameter == 0 {
		row.Size = w.Length(o.Width) + " × " + w.Length(o.Height)
	}
	return row
}

// kinds lists the files by format, and what is left out with its reasons.
func kinds(w *words.Catalogue, c collection) []pageKind {
	own := pageKind{Name: w.Text("bundle.page.plan")}
	out := make([]pageKind, 0, len(Formats)+1)
	for _, f := range Formats {
		k := pageKind{Name: w.Text("export." + f.Name)}
		for _, file := range c.files {
			if file.format == f.Name {
				k.Files = append(k.Files, fileRow(w, file))
			}
		}
		for _, l := range c.leftOut {
			if l.Format == f.Name {
				k.Refused = strings.Split(l.Reason.In(w), "\n")
			}
		}
		out = append(out, k)
	}
	for _, file := range c.files {
		if file.format == "" {
			own.Files = append(own.Files, fileRow(w, file))
		}
	}
	return append(out, own)
}

// fileRow returns the line of one file. The link begins with ./ so that no name
// is taken for an address.
func fileRow(w *words.Catalogue, f bundled) pageFile {
	const kilo = 1000
	kB := (len(f.data) + kilo - 1) / kilo
	return pageFile{f.name, "./" + f.name, w.Text("bundle.page.kilobytes", words.Args{"N": kB})}
}

// picture returns the drawing of all parts as part of the page, where there is a
// format that a browser shows.
func picture(q BundleRequest, c collection) template.URL {
	for _, f := range c.files {
		if f.name == q.Name+".svg" {
			return template.URL("data:image/svg+xml;base64," + base64.StdEncoding.EncodeToString(f.data))
		}
	}
	return ""
}
