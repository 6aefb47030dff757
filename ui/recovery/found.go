package recovery

import (
	"errors"
	"io/fs"
	"os"
	"slices"
	"strings"

	"stopwright/detent/plan"
	"stopwright/export"
)

// Found is a copy left behind. Until [Found.Release], [Found.Discard] or
// [Keeper.Adopt] no other program is offered it.
type Found struct {
	Copy
	Err error // why it cannot be read; nil if it can

	slot *slot
}

// Find returns the copies left behind in a folder, the newest first and those
// that cannot be read last. One that tells nothing new, as its file holds the same plan, is removed. A folder that
// is not there has none.
func Find(folder string) ([]*Found, error) {
	entries, err := os.ReadDir(folder)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, &export.FileError{Doing: "read", Path: folder, Err: err}
	}
	var found, unreadable []*Found
	for _, id := range ids(entries) {
		s, err := claim(folder, id)
		if err != nil {
			continue // somebody's, or not to be touched
		}
		f := &Found{slot: s}
		f.Copy, f.Err = readCopy(s.base + copyEnding)
		if errors.Is(f.Err, fs.ErrNotExist) || f.Err == nil && f.savedAlready() {
			_ = s.remove()
			continue
		}
		if f.Err != nil {
			unreadable = append(unreadable, f)
		} else {
			found = append(found, f)
		}
	}
	slices.SortStableFunc(found, func(a, b *Found) int { return b.Time.Compare(a.Time) })
	return append(found, unreadable...), nil
}

// ids returns the names of the slots among a folder's files, each once.
func ids(entries []os.DirEntry) []string {
	var out []string
	for _, e := range entries {
		for _, ending := range []string{copyEnding, lockEnding} {
			if id, ok := strings.CutSuffix(e.Name(), ending); ok && !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	return out
}

// savedAlready reports whether the file of a copy holds its plan: the program
// ended just after it was saved.
func (f *Found) savedAlready() bool {
	if f.Mark.Sum == "" { // it has no file, or one like a pipe, which would have to be waited for
		return false
	}
	p, err := export.ReadPlan(f.Path)
	return err == nil && plan.Equal(p, f.Plan)
}

// Release leaves the copy for the next start.
func (f *Found) Release() { f.slot.release() }

// Discard removes the copy. The error means that it is still there.
func (f *Found) Discard() error {
	if err := f.slot.remove(); err != nil {
		path := f.slot.base + copyEnding
		return &export.FileError{Doing: "remove", Path: path, Err: err}
	}
	return nil
}
