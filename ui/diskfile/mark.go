package diskfile

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io"
	"io/fs"
	"os"
	"time"

	"stopwright/detent/plan"
)

// Mark is what a file was like when it was last read or written. The zero Mark
// is that of something that cannot be told by its content, as a pipe, or of no
// file at all: it never counts as changed.
type Mark struct {
	Size int64     `json:"size"`   // bytes
	Time time.Time `json:"time"`   // of its last change; zero: not known, the content decides
	Sum  string    `json:"sha256"` // of its content (FIPS 180-4), in hexadecimal
}

// MarkOf returns the mark of a file that holds just this plan, the time of its
// change not known. The plan must be one that [plan.Validate] accepts.
func MarkOf(p plan.Plan) Mark {
	var content bytes.Buffer
	if plan.Encode(&content, p) != nil {
		return Mark{}
	}
	sum := sha256.Sum256(content.Bytes())
	return Mark{Size: int64(content.Len()), Sum: hex.EncodeToString(sum[:])}
}

// Look reads the mark of a file. What is no regular file has the zero Mark.
func Look(path string) (Mark, error) {
	info, err := os.Stat(path)
	if err != nil || !info.Mode().IsRegular() {
		return Mark{}, err // not opened: a pipe would lose what waits in it
	}
	f, err := os.Open(path)
	if err != nil {
		return Mark{}, err
	}
	defer f.Close()
	if info, err = f.Stat(); err != nil {
		return Mark{}, err
	}
	// The time is the one before reading, so that a change meanwhile shows.
	sum := sha256.New()
	size, err := io.Copy(sum, f)
	if err != nil {
		return Mark{}, err
	}
	return Mark{size, info.ModTime(), hex.EncodeToString(sum.Sum(nil))}, nil
}

// State is what has become of a file since its mark was taken.
type State int

// The states.
const (
	Same    State = iota // it holds what it held
	Changed              // it holds something else
	Gone                 // it is not there any more
)

// Trust is how a file is compared with its mark.
type Trust int

// The ways to compare. A clock of a disk may tick only every two seconds, so
// that a change just after the mark leaves size and time alone.
const (
	TrustTime Trust = iota // same size and time: same file. Quick, for every look at the window
	ReadAll                // the content decides. Before it is written over
)

// Compare returns what has become of the file at path and, if it is there, its
// present mark. The error, that it cannot be looked at, leaves the state Same.
func (m Mark) Compare(path string, trust Trust) (State, Mark, error) {
	if m.Sum == "" {
		return Same, m, nil
	}
	if info, err := os.Stat(path); trust == TrustTime && err == nil && info.Size() == m.Size && info.ModTime().Equal(m.Time) {
		return Same, m, nil
	}
	now, err := Look(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Gone, Mark{}, nil
	case err != nil:
		return Same, m, err
	case now.Sum != m.Sum:
		return Changed, now, nil
	}
	return Same, now, nil
}
