package export

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"unicode"

	"stopwright/assets/words"
	"stopwright/detent"
)

// BundleRequest says what a bundle holds and where it is put. Of the request,
// the paths do not count: every format is made.
type BundleRequest struct {
	Request
	To      string // a folder to be made, or a zip file if it ends in .zip
	Name    string // what the files are called, as [BundleName] gives it; empty: plate
	Replace bool   // put it in the place of an older bundle
}

// Bundled says what was written.
type Bundled struct {
	Path    string
	Files   []string // names, the page of contents first
	LeftOut []LeftOut
}

// ExistsError means that there is something already where a bundle is to go.
type ExistsError struct{ Path string }

func (e *ExistsError) Error() string { return e.In(words.English()) }

// In says it in the language of a catalogue.
func (e *ExistsError) In(c *words.Catalogue) string {
	return c.Text("bundle.exists", words.Args{"File": quoted(e.Path)})
}

// Bundle writes everything that can be made of a report into a new folder or a
// zip file: each of [Formats], the plan, and a page of contents that leads to
// them. It is there whole or not at all: all is made first, and put in its place
// in one step. A format that is refused is left out, and told.
//
// Tell is called before each file is made, from the goroutine of the call. The
// error is an [*ExistsError], a [*FileError], or that of the context. Equal
// reports and requests give equal bytes.
func Bundle(ctx context.Context, r detent.Report, q BundleRequest, tell func(Progress)) (Bundled, error) {
	if q.Name == "" {
		q.Name = anyName
	}
	put := putFolder
	if isZip(q.To) {
		put = putZip
	}
	if err := q.vacant(); err != nil {
		return Bundled{}, err
	}
	c, err := collect(ctx, r, q, tell)
	if err == nil {
		tell(Progress{Done: len(c.files), Total: len(c.files)})
		err = put(ctx, q, c.files)
	}
	if stopped := ctx.Err(); stopped != nil && err != nil {
		return Bundled{}, stopped
	}
	if err != nil {
		return Bundled{}, err
	}
	out := Bundled{Path: q.To, LeftOut: c.leftOut}
	for _, f := range c.files {
		out.Files = append(out.Files, f.name)
	}
	return out, nil
}

// vacant returns why a bundle cannot be put where it should go.
func (q BundleRequest) vacant() error {
	info, err := os.Lstat(q.To)
	switch {
	case q.To == "":
		return cannotWrite(q.To, refused("bundle.reason.unnamed", "", nil))
	case err != nil:
		return nil // what is wrong with the path itself shows when it is made
	case !q.Replace:
		return &ExistsError{q.To}
	case isZip(q.To) == info.IsDir() || !isZip(q.To) && !info.IsDir():
		return cannotWrite(q.To, refused("bundle.reason.other", "", nil))
	case info.IsDir():
		return q.onlyBundled()
	}
	return nil
}

// onlyBundled refuses to replace a folder that holds anything but a bundle of
// the same name.
func (q BundleRequest) onlyBundled() error {
	entries, err := os.ReadDir(q.To)
	if err != nil {
		return cannotWrite(q.To, err)
	}
	for _, e := range entries {
		ours := e.Name() == contentsName || strings.HasPrefix(e.Name(), q.Name)
		if !ours || !e.Type().IsRegular() {
			return cannotWrite(q.To, refused("bundle.reason.foreign", e.Name(), nil))
		}
	}
	return nil
}

// BundlePath returns where a bundle goes that a maker wants in a place: into a
// new folder in a folder that is there, named after the plan and the date, else
// to the place itself.
func BundlePath(place, name, date string) string {
	info, err := os.Stat(place)
	if err != nil || !info.IsDir() {
		return filepath.Clean(place)
	}
	return filepath.Join(place, Dated(name, date))
}

// Dated returns a name with the date behind it, if there is one.
func Dated(name, date string) string {
	if date == "" {
		return name
	}
	return name + "-" + date
}

// anyName is what files are called whose plan has no name.
const anyName = "plate"

// BundleName returns what a bundle's files are called: a plan's title or file
// name with all but letters and digits as hyphens, short, and nothing that a
// system keeps for itself.
func BundleName(title string) string {
	const most = 60 // characters: with the longest ending well under what any disk takes
	fields := strings.FieldsFunc(title, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	name := []rune(strings.ToLower(strings.Join(fields, "-")))
	if len(name) > most {
		name = name[:most]
	}
	plain := strings.Trim(string(name), "-")
	if plain == "" || reserved[plain] {
		return anyName
	}
	return plain
}

// reserved are the names that Windows keeps for devices, whatever their ending.
var reserved = map[string]bool{
	"con": true, "prn": true, "aux": true, "nul": true,
	"com1": true, "com2": true, "com3": true, "com4": true, "com5": true, "com6": true, "com7": true, "com8": true, "com9": true,
	"lpt1": true, "lpt2": true, "lpt3": true, "lpt4": true, "lpt5": true, "lpt6": true, "lpt7": true, "lpt8": true, "lpt9": true,
}
