package crash

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// keep is how many reports stay in the folder; older ones go when a start has
// told of newer.
const keep = 10

// Find returns the reports in a folder that nobody was told of yet, oldest
// first. What ended programs left unfinished is finished first: see [Watch]. A
// folder that cannot be read has none.
func Find(folder string) []string {
	finish(folder)
	return named(folder, fresh+ending)
}

// Told marks reports so that they are not found again, and removes the oldest
// if there are many. One that cannot be renamed is found again: too much is
// better than too little.
func Told(reports []string) {
	for _, path := range reports {
		_ = os.Rename(path, Settled(path))
	}
	if len(reports) == 0 {
		return
	}
	all := named(filepath.Dir(reports[0]), ending)
	for _, path := range all[:max(0, len(all)-keep)] {
		_ = os.Remove(path)
	}
}

// Settled returns the path that a report has once [Told] was called with it.
func Settled(path string) string { return strings.TrimSuffix(path, fresh+ending) + ending }

// named returns this package's files in a folder whose names have an ending, by
// time: their names begin with it.
func named(folder, ending string) []string {
	entries, _ := os.ReadDir(folder)
	var out []string
	for _, e := range entries {
		if strings.HasPrefix(e.Name(), prefix) && strings.HasSuffix(e.Name(), ending) {
			out = append(out, filepath.Join(folder, e.Name()))
		}
	}
	slices.Sort(out)
	return out
}
