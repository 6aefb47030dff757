package diskfile

import (
	"io/fs"
	"os"
	"path/filepath"

	"stopwright/detent/plan"
	"stopwright/export"
)

// File is the file of a plan as it was when last read or written. The zero File
// is that of a plan which has none yet.
type File struct {
	Path     string // absolute where the system can tell
	Mark     Mark
	ReadOnly bool // it may be read but is not to be written
}

// Read reads a plan and its file. The error is an [export.FileError].
func Read(path string) (plan.Plan, File, error) {
	f := File{Path: whole(path)}
	// The mark is taken first: what is written to the file meanwhile then shows
	// as a change.
	f.Mark, _ = Look(f.Path) // what is wrong shows when it is read
	p, err := export.ReadPlan(f.Path)
	if err != nil {
		return plan.Plan{}, File{}, err
	}
	f.ReadOnly = ReadOnly(f.Path)
	return p, f, nil
}

// Save writes a plan to a file as [export.SavePlan] does, and returns that
// file. The error is an [export.FileError].
func Save(path string, p plan.Plan) (File, error) {
	path = whole(path)
	if err := export.SavePlan(path, p); err != nil {
		return File{}, err
	}
	if info, err := os.Stat(path); err != nil || !info.Mode().IsRegular() {
		return File{Path: path}, nil // a device
	}
	return File{Path: path, Mark: MarkOf(p)}, nil
}

// whole makes a path independent of the folder the program runs in.
func whole(path string) string {
	if abs, err := filepath.Abs(path); err == nil {
		return abs
	}
	return path
}

// ReadOnly reports whether a file is there but is not to be written: it is
// marked so for everybody, which also binds an administrator who could, or the
// system refuses to open it for writing.
func ReadOnly(path string) bool {
	info, err := os.Stat(path)
	if err != nil || !info.Mode().IsRegular() {
		return false
	}
	return marked(info.Mode()) || refused(path)
}

func marked(mode fs.FileMode) bool { return mode.Perm()&0o222 == 0 }

func refused(path string) bool {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return true
	}
	_ = f.Close() // nothing was written
	return false
}
