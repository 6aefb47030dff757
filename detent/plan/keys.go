package plan

import (
	"regexp"
	"strconv"

	"stopwright/assets/words"
)

// Key describes one key of a plan file that holds a value.
type Key struct {
	Path     string   // as stops[].angle
	Allowed  string   // what it may be, with its unit
	Default  string   // as a file would write it; empty where there is none
	Required bool     // its list item, or the file, must give it
	Owners   []string // the shapes or kinds it belongs to; none: all
}

// Keys returns every key of a plan file that holds a value, in the order a file
// has them: the reference of the format.
func Keys() []Key {
	d := newDocument(Default())
	d.Catches = nil // so that its keys show what an item begins with
	var l lister
	visit(&l, &d)
	return l.keys
}

// Allowed returns what the key at path may be, in words and with its unit, as
// "-360 to 360 degrees" for stops[3].angle or stops[].angle. It is empty for a
// path that is no key.
func Allowed(path string) string {
	for _, k := range Keys() {
		if k.Path == withoutIndexes(path) {
			return k.Allowed
		}
	}
	return ""
}

var indexes = regexp.MustCompile(`\[\d+\]`)

// withoutIndexes empties the square brackets in a path.
func withoutIndexes(path string) string { return indexes.ReplaceAllString(path, "[]") }

// lister is the visitor that describes every key.
type lister struct {
	trail
	keys []Key
}

func (l *lister) add(k key, allowed, value string) {
	if k.required || k.unset {
		value = ""
	}
	l.keys = append(l.keys, Key{
		Path:     withoutIndexes(l.path(k)),
		Allowed:  allowed,
		Default:  value,
		Required: k.required,
		Owners:   k.owners,
	})
}

func (l *lister) number(k key, x *float64, r limits) { l.add(k, r.String(), numeral(*x)) }

func (l *lister) count(k key, n *int, r limits) { l.add(k, r.String(), strconv.Itoa(*n)) }

func (l *lister) flag(k key, b *bool) {
	l.add(k, words.English().Text("want.flag"), strconv.FormatBool(*b))
}

func (l *lister) text(k key, s *string, w wording) { l.add(k, w.String(), strconv.Quote(*s)) }

func (l *lister) has(key, bool) bool { return true }

func (l *lister) enter(k key) bool {
	l.push(k)
	return true
}

// enterList visits one item, which stands for all.
func (l *lister) enterList(k key, _ int, _ limits) (int, bool) {
	l.push(k)
	return 1, true
}

func (l *lister) leave() { l.pop() }
