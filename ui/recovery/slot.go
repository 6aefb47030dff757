package recovery

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"

	"stopwright/export"
)

// The endings of the two files of a slot.
const (
	copyEnding = ".copy"
	lockEnding = ".lock"
)

// errHeld means that another program holds a lock.
var errHeld = errors.New("another program keeps this")

// slot is a place for one copy, held by this program.
type slot struct {
	base string // of both files, without the ending
	lock *os.File
}

// newSlot makes a slot of this program's own, and the folder if need be. Its
// name only has to be new; that it tells when and by which process it was made
// is for the person who looks into the folder.
func newSlot(folder string, now time.Time) (*slot, error) {
	if err := os.MkdirAll(folder, 0o700); err != nil { // plans are nobody else's business
		return nil, cannotKeep(folder, err)
	}
	const tries = 1000 // slots of one process in one second
	for try := range tries {
		id := fmt.Sprintf("%s-%d-%d", now.UTC().Format("20060102T150405"), os.Getpid(), try)
		s := &slot{base: filepath.Join(folder, id)}
		if _, err := os.Lstat(s.base + copyEnding); !errors.Is(err, fs.ErrNotExist) {
			continue
		}
		lock, err := lockFile(s.base + lockEnding)
		switch {
		case errors.Is(err, errHeld):
			continue
		case err != nil:
			return nil, cannotKeep(folder, err)
		}
		s.lock = lock
		return s, nil
	}
	return nil, cannotKeep(folder, fs.ErrExist)
}

func cannotKeep(folder string, err error) error {
	return &export.FileError{Doing: "write", Path: folder, Err: err}
}

// claim takes over a slot left behind, or gives errHeld.
func claim(folder, id string) (*slot, error) {
	s := &slot{base: filepath.Join(folder, id)}
	var err error
	s.lock, err = lockFile(s.base + lockEnding)
	return s, err
}

// stands reports whether an open file is still the one of that path: another
// program may have removed it between opening and locking, or somebody the
// folder.
func stands(f *os.File, path string) bool {
	mine, err := f.Stat()
	if err != nil {
		return false
	}
	there, err := os.Lstat(path)
	return err == nil && os.SameFile(mine, there)
}

// whole reports whether the slot is still this program's.
func (s *slot) whole() bool { return stands(s.lock, s.lock.Name()) }

// write replaces the copy.
func (s *slot) write(content []byte) error {
	return export.WriteFile(s.base+copyEnding, func(w io.Writer) error {
		_, err := w.Write(content)
		return err
	})
}

// release gives up the slot and leaves the copy for the next start.
func (s *slot) release() { unlock(s.lock, false) }

// remove removes the copy and gives up the slot. A copy that cannot be removed
// stays, and will be offered.
func (s *slot) remove() error {
	err := os.Remove(s.base + copyEnding)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		s.release()
		return err
	}
	unlock(s.lock, true)
	return nil
}
