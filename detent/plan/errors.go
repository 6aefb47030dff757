package plan

import (
	"errors"
	"fmt"
)

// ErrNotPlan is wrapped by the errors of [Decode] that mean the file is
// something else than a plan.
var ErrNotPlan = errors.New("this is not a plan file")

// ErrTooMuch is wrapped by the errors of [Decode] and [Encode] that mean the
// file is larger than any plan may be.
var ErrTooMuch = errors.New("this is more than a plan file may hold")

// VersionError means that a file was written by a newer program.
type VersionError struct {
	Version string // as the file gives it, shortened
}

func (e *VersionError) Error() string {
	return fmt.Sprintf("this plan is version %s, this program reads version %d: open it with a newer program", e.Version, Version)
}

// SyntaxError means that a file cannot be read as JSON (RFC 8259).
type SyntaxError struct {
	Line      int // from 1
	Column    int // in characters, from 1
	Reason    string
	Truncated bool // the file is in order as far as it goes, but ends in the middle
}

func (e *SyntaxError) Error() string {
	return fmt.Sprintf("line %d, column %d: %s", e.Line, e.Column, e.Reason)
}
