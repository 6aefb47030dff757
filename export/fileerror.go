package export

import (
	"errors"
	"io/fs"
	"strconv"
	"strings"
	"syscall"

	"stopwright/assets/words"
)

// FileError says in plain words which file could not be read, written or
// removed, and why. It unwraps to the cause.
type FileError struct {
	Doing string // "read", "write" or "remove"
	Path  string // as the caller gave it
	Err   error
}

func (e *FileError) Error() string { return e.In(words.English()) }

// In says it in the language of a catalogue: on one line, or one for each thing
// that is wrong inside the file.
func (e *FileError) In(c *words.Catalogue) string {
	return c.Text("file.because", words.Args{"What": e.Subject(), "Why": Reason(e.Err)})
}

// Unwrap returns the cause.
func (e *FileError) Unwrap() error { return e.Err }

// Subject returns what could not be done, without the reason, as in
//
//	cannot write "plate.dxf"
func (e *FileError) Subject() words.Saying {
	return words.Phrase{Key: "file.cannot." + e.Doing, Args: words.Args{"File": quoted(e.Path)}}
}

func cannotRead(path string, err error) error {
	return &FileError{Doing: "read", Path: path, Err: err}
}

func cannotWrite(path string, err error) error {
	return &FileError{Doing: "write", Path: path, Err: err}
}

// quoted returns a path in quotes, on one line, with a backslash left single:
// it is a folder's mark on some systems and no escape.
func quoted(path string) string { return strings.ReplaceAll(strconv.Quote(path), `\\`, `\`) }

// refused returns an error that knows its reason better than the operating
// system does: a text, which may name a folder, and what was answered; nil:
// nothing was.
func refused(key, folder string, err error) error {
	return &words.Error{Saying: words.Phrase{Key: key, Args: words.Args{"Folder": quoted(folder)}}, Cause: err}
}

var errIsFolder = refused("file.reason.folder", "", nil)

// reasons puts what an operating system may answer into words. The first that
// fits is said.
var reasons = []struct {
	cause error
	key   string // of its text
}{
	{syscall.ENOSPC, "file.reason.full"},
	{syscall.EDQUOT, "file.reason.quota"},
	{syscall.EFBIG, "file.reason.large"},
	{syscall.EROFS, "file.reason.readonly"},
	{syscall.ENOTDIR, "file.reason.path"},
	{syscall.ENAMETOOLONG, "file.reason.long"},
	{syscall.ELOOP, "file.reason.circle"},
	{syscall.EPIPE, "file.reason.pipe"},
	{fs.ErrPermission, "file.reason.forbidden"},
	{fs.ErrNotExist, "file.reason.none"},
}

// Reason says in plain words why a file or stream could not be read or written:
// what is known of the operating system's answer, else what the error says.
func Reason(err error) words.Saying {
	var known words.Saying
	if errors.As(err, &known) {
		return known
	}
	for _, r := range reasons {
		if errors.Is(err, r.cause) {
			return words.Phrase{Key: r.key}
		}
	}
	if p := (*fs.PathError)(nil); errors.As(err, &p) { // its path is said already
		return words.Verbatim(p.Err.Error())
	}
	return words.Verbatim(err.Error())
}
