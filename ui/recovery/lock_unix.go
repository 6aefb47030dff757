//go:build !windows

package recovery

import (
	"errors"
	"os"
	"syscall"
)

// lockFile opens a file, making it if need be, and locks it against every other
// program until it is closed. It gives errHeld where another holds it.
func lockFile(path string) (*os.File, error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return nil, err
	}
	for {
		err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		if !errors.Is(err, syscall.EINTR) {
			break
		}
	}
	// Any other error is that of a disk without locks.
	if errors.Is(err, syscall.EWOULDBLOCK) || !stands(f, path) {
		_ = f.Close()
		return nil, errHeld
	}
	return f, nil
}

// unlock gives up a lock and, if asked, removes its file first: while it is
// held nobody else can take the file for theirs.
func unlock(f *os.File, remove bool) {
	if remove {
		_ = os.Remove(f.Name())
	}
	_ = f.Close()
}
