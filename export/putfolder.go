package export

import (
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
)

// putFolder writes files into a new folder that takes its place in one step:
// all lie on the disk beside it first. Whatever goes wrong, what was there
// before is as it was and nothing else is left. (A program killed midway may
// leave a .stopwright-….tmp behind.)
func putFolder(ctx context.Context, q BundleRequest, files []bundled) (err error) {
	to := filepath.Clean(q.To)
	parent := filepath.Dir(to)
	staging, err := newFolder(parent)
	if err != nil {
		return cannotWrite(q.To, err)
	}
	defer func() {
		if err != nil { // a folder in its place has another name
			_ = os.RemoveAll(staging)
		}
	}()
	for _, f := range files {
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := writeNew(filepath.Join(staging, f.name), f.data); err != nil {
			return cannotWrite(filepath.Join(q.To, f.name), err)
		}
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	if err := exchange(staging, to); err != nil {
		return cannotWrite(q.To, err)
	}
	realDisk{}.syncFolder(parent)
	return nil
}

// newFolder makes a folder in another, under a name of its own.
func newFolder(parent string) (string, error) {
	path := filepath.Join(parent, fmt.Sprintf(".stopwright-%016x.tmp", rand.Uint64()))
	switch err := os.Mkdir(path, 0o777); {
	case err != nil && missing(parent):
		return "", refused("file.reason.nofolder", parent, err)
	case os.IsPermission(err):
		return "", refused("file.reason.forbidden.folder", "", err)
	default:
		return path, err
	}
}

// writeNew writes a file that is not there yet and waits until the disk has it.
func writeNew(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	if _, err = f.Write(data); err == nil {
		err = f.Sync()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	return err
}

// exchange puts a folder in the place of an older one, if there is one, which
// goes. If it cannot, the older one is put back.
func exchange(folder, to string) error {
	if _, err := os.Lstat(to); err != nil {
		return os.Rename(folder, to)
	}
	old := folder + ".old"
	if err := os.Rename(to, old); err != nil {
		return err
	}
	if err := os.Rename(folder, to); err != nil {
		_ = os.Rename(old, to)
		return err
	}
	_ = os.RemoveAll(old) // what cannot be removed is left: the new one is whole
	return nil
}
