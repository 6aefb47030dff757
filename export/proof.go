package export

import (
	"io"

	"stopwright/detent"
	"stopwright/export/chart"
)

// proofs gives the file of the proof sheet.
func proofs(r detent.Report, q Request, path string) []output {
	return []output{{path, func(w io.Writer) error {
		return q.printed(w, r, chart.ProofPages(r, q.info(), q.paper()))
	}}}
}
