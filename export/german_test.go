package export_test

import (
	"io/fs"
	"syscall"
	"testing"

	"stopwright/assets/words/wordstest"
	"stopwright/export"
)

// What an operating system may answer has a text in every language.
func TestReasonsAreSaidInGerman(t *testing.T) {
	for _, cause := range []error{
		syscall.ENOSPC, syscall.EDQUOT, syscall.EFBIG, syscall.EROFS, syscall.ENOTDIR, syscall.ENAMETOOLONG,
		syscall.ELOOP, syscall.EPIPE, fs.ErrPermission, fs.ErrNotExist,
	} {
		for _, doing := range []string{"read", "write", "remove"} {
			wordstest.SaidInGerman(t, &export.FileError{Doing: doing, Path: "plate.csv", Err: &fs.PathError{Op: "open", Path: "plate.csv", Err: cause}})
		}
	}
}
