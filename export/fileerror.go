package export

import (
	"errors"
	"io/fs"
	"strconv"
	"strings"
	"syscall"
)

// FileError says in plain words which file could not be read or written, and
// why. It unwraps to the cause.
type FileError struct {
	Doing  string // "read" or "write"
	Path   string // as the caller gave it
	Reason string // one line, or one for each thing that is wrong inside the file
	Err    error
}

func (e *FileError) Error() string { return e.Subject() + ": " + e.Reason }

// Unwrap returns the cause.
func (e *FileError) Unwrap() error { return e.Err }

// Subject returns what could not be done, without the reason, as in
//
//	cannot write "plate.dxf"
func (e *FileError) Subject() string { return "cannot " + e.Doing + " " + quoted(e.Path) }

func cannotRead(path string, err error) error {
	return &FileError{Doing: "read", Path: path, Reason: Reason(err), Err: err}
}

func cannotWrite(path string, err error) error {
	return &FileError{Doing: "write", Path: path, Reason: Reason(err), Err: err}
}

// quoted returns a path in quotes, on one line, with a backslash left single:
// it is a folder's mark on some systems and no escape.
func quoted(path string) string { return strings.ReplaceAll(strconv.Quote(path), `\\`, `\`) }

// plainError is an error that knows its reason better than the operating
// system does.
type plainError struct {
	words string
	err   error // nil: none beneath
}

func (e *plainError) Error() string { return e.words }

func (e *plainError) Unwrap() error { return e.err }

var errIsFolder = &plainError{words: "it is a folder"}

// reasons puts what an operating system may answer into words. The first that
// fits is said.
var reasons = []struct {
	cause error
	words string
}{
	{syscall.ENOSPC, "the disk is full"},
	{syscall.EDQUOT, "your share of the disk is used up"},
	{syscall.EFBIG, "the file would be larger than is allowed here"},
	{syscall.EROFS, "the disk can only be read"},
	{syscall.ENOTDIR, "part of the path is a file, not a folder"},
	{syscall.ENAMETOOLONG, "the name is too long"},
	{syscall.ELOOP, "its links lead round in a circle"},
	{syscall.EPIPE, "what should read it has gone"},
	{fs.ErrPermission, "you are not allowed to"},
	{fs.ErrNotExist, "there is no such file"},
}

// Reason says in plain words why a file or stream could not be read or written:
// what is known of the operating system's answer, else what the error says.
func Reason(err error) string {
	if p := (*plainError)(nil); errors.As(err, &p) {
		return p.words
	}
	for _, r := range reasons {
		if errors.Is(err, r.cause) {
			return r.words
		}
	}
	if p := (*fs.PathError)(nil); errors.As(err, &p) { // its path is said already
		return p.Err.Error()
	}
	return err.Error()
}
