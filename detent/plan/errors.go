package plan

import "stopwright/assets/words"

// ErrNotPlan is wrapped by the errors of [Decode] that mean the file is
// something else than a plan.
var ErrNotPlan error = &words.Error{Saying: words.Phrase{Key: "plan.notplan"}}

// ErrTooMuch is wrapped by the errors of [Decode] and [Encode] that mean the
// file is larger than any plan may be.
var ErrTooMuch error = &words.Error{Saying: words.Phrase{Key: "plan.toomuch"}}

// because returns an error that wraps what, and says why as well.
func because(what error, why string, args words.Args) error {
	return &words.Error{
		Saying: words.Phrase{Key: "plan.because", Args: words.Args{"What": what, "Why": words.Phrase{Key: why, Args: args}}},
		Cause:  what,
	}
}

// VersionError means that a file was written by a newer program.
type VersionError struct {
	Version string // as the file gives it, shortened
}

func (e *VersionError) Error() string { return e.In(words.English()) }

// In says it in the language of a catalogue.
func (e *VersionError) In(c *words.Catalogue) string {
	return c.Text("plan.newer", words.Args{"Version": e.Version, "Reads": Version})
}

// SyntaxError means that a file cannot be read as JSON (RFC 8259).
type SyntaxError struct {
	Line      int // from 1
	Column    int // in characters, from 1
	Reason    words.Saying
	Truncated bool // the file is in order as far as it goes, but ends in the middle
}

func (e *SyntaxError) Error() string { return e.In(words.English()) }

// In says it in the language of a catalogue.
func (e *SyntaxError) In(c *words.Catalogue) string {
	return c.Text("syntax.at", words.Args{"Line": e.Line, "Column": e.Column, "Reason": e.Reason})
}
