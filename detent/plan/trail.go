package plan

import (
	"slices"
	"strconv"
	"strings"
)

// key names one value of a plan file: a member of an object, or an item of a
// list, and says what is special about it.
type key struct {
	name   string
	index  int  // of a list's item
	isItem bool // and not a member

	required bool // a file must give it: it has no default
	terse    bool // left out of a file where it is empty, false, or the usual number
	usual    float64
	unset    bool // the plan holds no value for it, and need not

	// The key belongs only where another key, say the base's shape, is one of
	// the owners; empty: everywhere.
	owners []string
	actual string   // what that other key is
	all    []string // what it may be
}

// at returns the key of an object's member.
func at(name string) key { return key{name: name} }

// item returns the key of a list's item.
func item(i int) key { return key{index: i, isItem: true} }

// needed makes the key one that a file must give.
func (k key) needed() key { k.required = true; return k }

// brief makes the key one that is left out where it is empty or false.
func (k key) brief() key { k.terse = true; return k }

// unless makes the key of a number one that is left out where it is the usual.
func (k key) unless(usual float64) key { k.terse, k.usual = true, usual; return k }

// of makes the key one that belongs only where actual, one of all, is among
// owners.
func (k key) of(actual string, all []string, owners ...string) key {
	k.actual, k.all, k.owners = actual, all, owners
	return k
}

// belongs reports whether the key has a place in the object.
func (k key) belongs() bool { return len(k.owners) == 0 || slices.Contains(k.owners, k.actual) }

// trail is where in a plan file a visit has come to.
type trail []key

func (t *trail) push(k key) { *t = append(*t, k) }

func (t *trail) pop() { *t = (*t)[:len(*t)-1] }

// path returns the path of a key of the object or list the visit is in, as
// stops[3].angle.
func (t trail) path(k key) string {
	var b strings.Builder
	for _, step := range append(t[:len(t):len(t)], k) {
		switch {
		case step.isItem:
			b.WriteString("[" + strconv.Itoa(step.index) + "]")
		case !isPlainName(step.name):
			b.WriteString("[" + string(quoted(step.name)) + "]")
		case b.Len() > 0:
			b.WriteString("." + step.name)
		default:
			b.WriteString(step.name)
		}
	}
	return b.String()
}

// isPlainName reports whether a message can show a key as it stands. Keys that
// come from a file need not be.
func isPlainName(s string) bool {
	for _, r := range s {
		if (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') && (r < '0' || r > '9') && r != '_' && r != '-' {
			return false
		}
	}
	return s != "" && len(s) <= maxShown
}
