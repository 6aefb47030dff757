package plan

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Problem is one thing about a plan that cannot be accepted.
type Problem struct {
	Path  string // the key, as stops[3].angle
	Value string // what it is, as a file would write it, shortened; empty: missing
	Want  string // what is allowed, with its unit; reads on from "must be"
}

// String returns the problem as one line.
func (p Problem) String() string {
	value := p.Value
	if value == "" {
		value = "missing"
	}
	return p.Path + " is " + value + ", must be " + p.Want
}

// Problems are the problems of one plan, at least one, in the order of the
// file's keys except that values that cannot be read come first. After the
// first 1000 no more are gathered.
type Problems []Problem

const (
	maxProblems = 1000 // gathered: a hostile file cannot fill memory with them
	maxPrinted  = 50   // printed: more than fit a screen help nobody
)

// Error returns one line a problem, and after the first 50 how many there are
// besides.
func (ps Problems) Error() string {
	var b strings.Builder
	for i, p := range ps {
		if i == maxPrinted {
			atLeast := ""
			if len(ps) >= maxProblems {
				atLeast = "at least "
			}
			fmt.Fprintf(&b, "\n… and %s%d more", atLeast, len(ps)-i)
			break
		}
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(p.String())
	}
	return b.String()
}

// tally gathers problems while a plan is read and checked.
type tally struct {
	problems Problems
	// unread holds the paths whose value could not be read. What the plan holds
	// there is only a default, and is not judged.
	unread map[string]bool
}

func (t *tally) full() bool { return len(t.problems) >= maxProblems }

func (t *tally) add(path, value, want string) {
	if !t.full() {
		t.problems = append(t.problems, Problem{Path: path, Value: value, Want: want})
	}
}

// addUnread adds a problem that leaves the value at path unread.
func (t *tally) addUnread(path, value, want string) {
	if t.full() {
		return
	}
	t.add(path, value, want)
	if t.unread == nil {
		t.unread = map[string]bool{}
	}
	t.unread[path] = true
}

// hasUnread reports whether the value at path, or one that holds it, could not
// be read.
func (t *tally) hasUnread(path string) bool {
	if len(t.unread) == 0 {
		return false
	}
	for path != "" {
		if t.unread[path] {
			return true
		}
		path = path[:max(0, strings.LastIndexAny(path, ".["))]
	}
	return false
}

// err returns the problems, or nil where there are none.
func (t *tally) err() error {
	if len(t.problems) == 0 {
		return nil
	}
	return t.problems
}

// maxShown is how many characters of a file's own text a message repeats.
const maxShown = 40

// shown returns s short enough for a message.
func shown(s string) string {
	if utf8.RuneCountInString(s) <= maxShown {
		return s
	}
	return string([]rune(s)[:maxShown]) + "…"
}

// quoted returns s as a message shows a text: on one line, in quotes, short.
func quoted(s string) string { return strconv.Quote(shown(s)) }
