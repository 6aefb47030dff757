package export

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
)

// staged is a file that is whole but not yet in its place: it lies on the disk
// under a temporary name in the same folder or, where it goes to a device or a
// pipe, in memory.
type staged struct {
	disk disk
	path string // as the caller gave it
	to   destination
	temp string // empty: in memory
	held []byte
}

// stage makes a file without putting it in its place. On any error nothing is
// left of it.
func stage(d disk, path string, write func(io.Writer) error) (*staged, error) {
	to, err := lead(path)
	if err != nil {
		return nil, cannotWrite(path, err)
	}
	s := &staged{disk: d, path: path, to: to}
	if to.special() {
		var b bytes.Buffer
		err = write(&b)
		s.held = b.Bytes()
	} else {
		err = s.fill(write)
	}
	if err != nil {
		return nil, cannotWrite(path, err)
	}
	return s, nil
}

// fill writes the temporary file and waits until the disk has it.
func (s *staged) fill(write func(io.Writer) error) (err error) {
	mode := fs.FileMode(0o666) // what the user's own setting leaves of it, as for any new file
	if s.to.exists {
		mode = s.to.mode.Perm()
	}
	f, err := createIn(s.disk, s.to.folder(), mode)
	if err != nil {
		return err
	}
	s.temp = f.Name()
	whole := false
	defer func() {
		if !whole { // also when write panics
			_ = f.Close()
			s.discard()
		}
	}()
	b := bufio.NewWriter(f)
	if err := write(b); err != nil {
		return err
	}
	if err := b.Flush(); err != nil {
		return err
	}
	if s.to.exists {
		if err := keepMode(f, mode); err != nil {
			return err
		}
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	whole = true
	return nil
}

// keepMode gives a file the permissions that it should have been made with.
func keepMode(f openFile, mode fs.FileMode) error {
	info, err := f.Stat()
	if err != nil || info.Mode().Perm() == mode {
		return err
	}
	return f.Chmod(mode)
}

// commit puts the file in its place in one step, and asks the disk to keep its
// name too.
func (s *staged) commit() error {
	if s.to.special() {
		if err := pour(s.to.path, s.held); err != nil {
			return cannotWrite(s.path, err)
		}
		return nil
	}
	if err := s.disk.rename(s.temp, s.to.path); err != nil {
		s.discard()
		return cannotWrite(s.path, err)
	}
	s.disk.syncFolder(s.to.folder() + ".")
	return nil
}

// discard takes the temporary file away. One that cannot be removed is left.
func (s *staged) discard() {
	if s.temp != "" {
		_ = s.disk.remove(s.temp)
	}
}

// pour writes to a device or a pipe.
func pour(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	return errors.Join(err, f.Close())
}

// createIn makes a new, empty file in a folder, named as its separator ends it.
// Its own name is not made from that of any other, which may be as long as a
// name can be.
func createIn(d disk, folder string, mode fs.FileMode) (openFile, error) {
	const tries = 100 // names of 64 random bits do not meet even twice
	for try := 1; ; try++ {
		name := fmt.Sprintf("%s.stopwright-%016x.tmp", folder, rand.Uint64())
		f, err := d.create(name, mode)
		switch {
		case errors.Is(err, fs.ErrExist) && try < tries:
		case errors.Is(err, fs.ErrPermission):
			return nil, refused("file.reason.forbidden.folder", "", err)
		case errors.Is(err, fs.ErrNotExist) && missing(folder):
			return nil, refused("file.reason.nofolder", folder, err)
		case errors.Is(err, fs.ErrNotExist):
			return nil, refused("file.reason.infolder", "", err)
		default:
			return f, err
		}
	}
}

func missing(folder string) bool {
	_, err := os.Stat(folder)
	return folder != "" && err != nil
}
