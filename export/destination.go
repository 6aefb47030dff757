package export

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// destination is where a path leads.
type destination struct {
	path   string      // through symbolic links; it need not exist yet
	exists bool        // there is something there now
	mode   fs.FileMode // of what is there
}

// special reports whether it is a device or a pipe, which is written to but
// never replaced.
func (d destination) special() bool { return d.exists && !d.mode.IsRegular() }

// folder returns the folder it lies in, ending in a separator; empty: here.
// Nothing is tidied: what a/../b means depends on where a leads.
func (d destination) folder() string {
	dir, _ := filepath.Split(d.path)
	return dir
}

// lead finds where path leads, and refuses what can be no file or may not be
// written.
func lead(path string) (destination, error) {
	if path == "" {
		return destination{}, refused("file.reason.unnamed", "", nil)
	}
	info, err := os.Stat(path)
	switch {
	case err == nil && info.IsDir():
		return destination{}, errIsFolder
	case err == nil && !info.Mode().IsRegular():
		return destination{path: path, exists: true, mode: info.Mode()}, nil
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return destination{}, err
	case os.IsPathSeparator(path[len(path)-1]):
		return destination{}, refused("file.reason.ending", "", nil)
	}
	d := destination{exists: err == nil}
	if d.path, err = followed(path); err != nil || !d.exists {
		return d, err
	}
	d.mode = info.Mode()
	// A rename would replace even a file that is not to be written.
	f, err := os.OpenFile(d.path, os.O_WRONLY, 0)
	if err != nil {
		return d, err
	}
	return d, f.Close()
}

// maxLinks is how many symbolic links are followed: as many as Linux does.
const maxLinks = 40

// followed returns what path leads to through symbolic links, whether it exists
// or not.
func followed(path string) (string, error) {
	for range maxLinks {
		info, err := os.Lstat(path)
		if err != nil || info.Mode()&fs.ModeSymlink == 0 {
			return path, nil // what is wrong shows when the file is made
		}
		link, err := os.Readlink(path)
		if err != nil {
			return "", err
		}
		if !filepath.IsAbs(link) {
			link = destination{path: path}.folder() + link
		}
		path = link
	}
	return "", syscall.ELOOP
}
