package plan

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"stopwright/assets/words"
)

// Problem is one thing about a plan that cannot be accepted.
type Problem struct {
	Path  string       // the key, as stops[3].angle
	Value words.Saying // what it is, as a file would write it, shortened; nil: missing
	Want  words.Saying // what is allowed, with its unit; reads on from "must be"
}

// String returns the problem as one line in English.
func (p Problem) String() string { return p.In(words.English()) }

// In returns the problem as one line in the language of a catalogue. Numbers
// and words that a file holds are said as the file writes them.
func (p Problem) In(c *words.Catalogue) string {
	if p.Value == nil {
		return c.Text("problem.missing", words.Args{"Key": p.Path, "Want": p.Want})
	}
	return c.Text("problem.is", words.Args{"Key": p.Path, "Value": p.Value, "Want": p.Want})
}

// Problems are the problems of one plan, at least one, in the order of the
// file's keys except that values that cannot be read come first. After the
// first 1000 no more are gathered.
type Problems []Problem

const (
	maxProblems = 1000 // gathered: a hostile file cannot fill memory with them
	maxPrinted  = 50   // printed: more than fit a screen help nobody
)

func (ps Problems) Error() string { return ps.In(words.English()) }

// In returns one line a problem in the language of a catalogue, and after the
// first 50 how many there are besides.
func (ps Problems) In(c *words.Catalogue) string {
	var b strings.Builder
	for i, p := range ps {
		if i == maxPrinted {
			key := "problem.more"
			if len(ps) >= maxProblems {
				key = "problem.more.least"
			}
			b.WriteString("\n" + c.Text(key, words.Args{"N": len(ps) - i}))
			break
		}
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(p.In(c))
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

func (t *tally) add(path string, value, want words.Saying) {
	if !t.full() {
		t.problems = append(t.problems, Problem{Path: path, Value: value, Want: want})
	}
}

// addUnread adds a problem that leaves the value at path unread.
func (t *tally) addUnread(path string, value, want words.Saying) {
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
func quoted(s string) words.Verbatim { return words.Verbatim(strconv.Quote(shown(s))) }

// inFile returns a number as a file would write it.
func inFile(x float64) words.Verbatim { return words.Verbatim(numeral(x)) }

// listOf says that a value is a list of n items.
func listOf(n int) words.Saying {
	return words.Phrase{Key: "value.list", Args: words.Args{"N": n}}
}
