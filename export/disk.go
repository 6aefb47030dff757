package export

import (
	"io"
	"io/fs"
	"os"
)

// disk is what writing a file asks of the operating system, step by step, so
// that a test can refuse any step or end the program there.
type disk interface {
	// create makes a new file and opens it to be written.
	create(name string, mode fs.FileMode) (openFile, error)
	rename(from, to string) error
	remove(name string) error
	// syncFolder asks for the names in a folder to be kept. Not every system
	// can; the files themselves are safe.
	syncFolder(name string)
}

// openFile is a file being written.
type openFile interface {
	io.WriteCloser
	Name() string
	Stat() (fs.FileInfo, error)
	Chmod(fs.FileMode) error
	Sync() error
}

// realDisk is the operating system's own.
type realDisk struct{}

func (realDisk) create(name string, mode fs.FileMode) (openFile, error) {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return nil, err
	}
	return f, nil
}

func (realDisk) rename(from, to string) error { return os.Rename(from, to) }

func (realDisk) remove(name string) error { return os.Remove(name) }

func (realDisk) syncFolder(name string) {
	if dir, err := os.Open(name); err == nil {
		_ = dir.Sync()
		_ = dir.Close()
	}
}
