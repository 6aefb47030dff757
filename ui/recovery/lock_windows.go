package recovery

import (
	"errors"
	"os"
	"syscall"
)

// sharingViolation is the answer to opening a file that another program has
// opened for itself alone (ERROR_SHARING_VIOLATION).
const sharingViolation = syscall.Errno(32)

// lockFile opens a file for this program alone, making it if need be, until it
// is closed. It gives errHeld where another holds it.
func lockFile(path string) (*os.File, error) {
	name, err := syscall.UTF16PtrFromString(path)
	if err != nil {
		return nil, err
	}
	const share = 0 // with nobody
	h, err := syscall.CreateFile(name, syscall.GENERIC_READ|syscall.GENERIC_WRITE, share, nil,
		syscall.OPEN_ALWAYS, syscall.FILE_ATTRIBUTE_NORMAL, 0)
	if errors.Is(err, sharingViolation) {
		return nil, errHeld
	}
	if err != nil {
		return nil, &os.PathError{Op: "open", Path: path, Err: err}
	}
	return os.NewFile(uintptr(h), path), nil
}

// unlock gives up a lock and, if asked, removes its file after: one that is
// open cannot be removed. If another program is quicker it removes it instead.
func unlock(f *os.File, remove bool) {
	_ = f.Close()
	if remove {
		_ = os.Remove(f.Name())
	}
}
