package main

import (
	"errors"
	"fmt"
	"strings"
	"unicode"

	"stopwright/assets/words"
	"stopwright/export"
)

// errFindings means that the work is done and some finding is an error, which
// has been told already.
var errFindings = errors.New("some finding is an error")

// usageError means that the command cannot be understood.
type usageError struct {
	verb string // whose help says more; empty: the program's
	says string
}

func (e *usageError) Error() string { return e.says }

// inputError means that what was read from standard input is no plan.
type inputError struct{ error }

func (e *inputError) Unwrap() error { return e.error }

// outputError means that standard output could not be written.
type outputError struct{ error }

func (e *outputError) Unwrap() error { return e.error }

// settle tells an error and returns the exit code for it.
func (sh *shell) settle(err error) int {
	var (
		usage   *usageError
		input   *inputError
		output  *outputError
		clash   *export.ClashError
		file    *export.FileError
		refused export.Refused
	)
	switch {
	case err == nil:
		return statusGood
	case errors.Is(err, errFindings):
		return statusFindings
	case errors.As(err, &usage):
		sh.complain("usage", fmt.Sprintf("%s; see: %s", usage.says, strings.TrimSpace(program+" help "+usage.verb)))
		return statusUnusable
	case errors.As(err, &input):
		sh.complain("cannot read standard input", told(export.Reason(input.error)))
		return statusUnusable
	case errors.As(err, &output):
		sh.complain("cannot write standard output", told(export.Reason(output.error)))
		return statusUnwritten
	case errors.As(err, &clash):
		sh.complain("cannot write", clash.Error())
		return statusUnusable
	case errors.As(err, &file) && (file.Doing == "read" || errors.As(err, &refused)):
		sh.complain(told(file.Subject()), told(export.Reason(file.Err)))
		return statusUnusable
	case errors.As(err, &file):
		subject := told(file.Subject())
		sh.complain(subject, strings.TrimPrefix(err.Error(), subject+": "))
		return statusUnwritten
	}
	if status, told := sh.settleBundle(err); told {
		return status
	}
	if status, told := sh.settleTrial(err); told {
		return status
	}
	return sh.fault(err.Error())
}

// told says something as this program speaks.
func told(s words.Saying) string { return s.In(words.English()) }

// oneLine keeps a text that may come from a file on one line, and out of the
// terminal's controls.
func oneLine(s string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || unicode.In(r, unicode.Zl, unicode.Zp, unicode.Bidi_Control) {
			return ' '
		}
		return r
	}, s)
}
