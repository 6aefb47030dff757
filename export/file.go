package export

import (
	"bytes"
	"io"
	"os"

	"stopwright/detent/plan"
)

// WriteFile writes a file so that it is there whole or not at all: write fills
// a temporary file in the same folder, which takes the place of the old one
// when the disk has all of it. On any error, one of write's included, the old
// file is as it was and nothing else is left. (A program killed midway may
// leave a .stopwright-….tmp behind.)
//
// A symbolic link is followed, to a file that does not exist yet too. A file
// that is replaced keeps its permissions, but not its other hard links; one that
// may not be written is not replaced. A device or a pipe is written to as it
// is, once write has come to its end.
//
// The error is a [*FileError].
func WriteFile(path string, write func(io.Writer) error) error {
	return writeFile(realDisk{}, path, write)
}

func writeFile(d disk, path string, write func(io.Writer) error) error {
	s, err := stage(d, path, write)
	if err != nil {
		return err
	}
	return s.commit()
}

// ReadPlan reads a plan file. The error is a [*FileError]; what it unwraps to
// is described at [plan.Decode].
func ReadPlan(path string) (plan.Plan, error) {
	f, err := os.Open(path)
	if err != nil {
		return plan.Plan{}, cannotRead(path, err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return plan.Plan{}, cannotRead(path, errIsFolder)
	}
	p, err := plan.Decode(f)
	if err != nil {
		return plan.Plan{}, cannotRead(path, err)
	}
	return p, nil
}

// SavePlan writes a plan file as [WriteFile] does. A plan that
// [plan.Validate] refuses is not written. The error is a [*FileError].
func SavePlan(path string, p plan.Plan) error {
	var file bytes.Buffer
	if err := plan.Encode(&file, p); err != nil {
		return cannotWrite(path, err)
	}
	return WriteFile(path, func(w io.Writer) error {
		_, err := w.Write(file.Bytes())
		return err
	})
}
