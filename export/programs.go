package export

import (
	"io"
	"os"
	"path/filepath"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/export/router"
)

// programs gives the files of the router: one program for each part in which
// there is something to cut, beside the file asked for, which is the card of
// them all and moves nothing. Where programs are refused there is only that
// file, and writing it fails with the [*router.Refusal].
func programs(r detent.Report, q Request, path string) []output {
	all, err := router.All(r.Plate, q.info().Words)
	if err != nil {
		return []output{{path, func(io.Writer) error { return err }}}
	}
	cards := make([]router.Card, len(all))
	for i, p := range all {
		cards[i] = router.Card{Program: p, File: filepath.Base(beside(path, string(p.Part)))}
	}
	files := []output{{path, func(w io.Writer) error {
		return router.WriteCard(w, r.Plate.Plan, cards, q.info())
	}}}
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
		return files // a device, a pipe, or a mistake
	}
	for _, p := range all {
		files = append(files, output{beside(path, string(p.Part)), func(w io.Writer) error {
			return router.Write(w, p, q.info())
		}})
	}
	return files
}

// Refused is the error of a format that must not be made of a plan, whatever the
// disk: it says why, one reason a line.
type Refused interface {
	error
	words.Saying
	Refused()
}

// Refuses returns why the format cannot be made of a report; nil: it can.
func (f Format) Refuses(r detent.Report, q Request) error {
	if f.Name != routerFormat {
		return nil
	}
	_, err := router.All(r.Plate, q.info().Words)
	return err
}

// routerFormat is the one format that may be refused.
const routerFormat = "router"
