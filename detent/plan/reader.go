package plan

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// reader is the visitor that fills a plan from the nodes of a file. Values that
// are in the file but out of range are stored as they are, for check to name.
type reader struct {
	*tally
	trail
	nodes []*node // the object or list being read, below all that hold it
}

func newReader(root *node, t *tally) *reader {
	return &reader{tally: t, nodes: []*node{root}}
}

func (r *reader) node() *node { return r.nodes[len(r.nodes)-1] }

// find returns the value of k and marks it as asked for; nil where there is
// none. A value that is there but should not be is a problem.
func (r *reader) find(k key) *node {
	in := r.node()
	if k.isItem {
		return &in.items[k.index]
	}
	var found *node
	repeated := false
	for i := range in.members {
		m := &in.members[i]
		if m.name != k.name {
			continue
		}
		m.asked = true
		if found != nil && !repeated {
			r.add(r.path(k), m.value.String(), "given only once")
			repeated = true
		}
		if found == nil {
			found = &m.value
		}
	}
	if k.belongs() {
		return found
	}
	// Where it is not known what the object is, nothing can be said of the key.
	if found != nil && slices.Contains(k.all, k.actual) {
		r.add(r.path(k), found.String(), "left out: it belongs to "+oneOf(k.owners)+", not to "+k.actual)
	}
	return nil
}

// value returns the value of k if it has the right type; else nil, after naming
// the problem where there is one. Only then is it asked what is wanted: most
// files have no problems.
func (r *reader) value(k key, kind nodeKind, want func() string) *node {
	n := r.find(k)
	switch {
	case n == nil:
		if k.required && k.belongs() {
			r.addUnread(r.path(k), "", want())
		}
		return nil
	case n.kind != kind:
		r.addUnread(r.path(k), n.String(), want())
		return nil
	}
	return n
}

func (r *reader) number(k key, x *float64, l limits) {
	want := func() string { return "a number, " + l.String() }
	n := r.value(k, numberNode, want)
	if n == nil {
		return
	}
	v, err := parseNumber(n.text)
	if err != nil {
		r.addUnread(r.path(k), n.String(), want())
		return
	}
	*x = v
}

// parseNumber returns the number that text, a JSON number, stands for, and an
// error where it is too large for any float64. A -0 becomes 0.
func parseNumber(text string) (float64, error) {
	v, err := strconv.ParseFloat(text, 64)
	return v + 0, err
}

func (r *reader) count(k key, n *int, l limits) {
	want := func() string { return "a whole number, " + l.String() }
	v := r.value(k, numberNode, want)
	if v == nil {
		return
	}
	// 8.0 is a whole number too. Numbers that an int may not hold are named
	// here; the smaller ones out of range are left to check.
	x, err := parseNumber(v.text)
	if err != nil || x != math.Trunc(x) || math.Abs(x) > math.MaxInt32 {
		r.addUnread(r.path(k), v.String(), want())
		return
	}
	*n = int(x)
}

func (r *reader) flag(k key, b *bool) {
	if n := r.value(k, flagNode, func() string { return "true or false" }); n != nil {
		*b = n.text == "true"
	}
}

func (r *reader) text(k key, s *string, w wording) {
	if n := r.value(k, textNode, w.String); n != nil {
		*s = strings.Clone(n.text) // or a plan would keep the whole file in memory
	}
}

func (r *reader) has(k key, _ bool) bool {
	return slices.ContainsFunc(r.node().members, func(m member) bool { return m.name == k.name })
}

func (r *reader) enter(k key) bool {
	n := r.value(k, objectNode, func() string { return "an object in { }" })
	if n == nil {
		return false
	}
	r.descend(k, n)
	return true
}

func (r *reader) enterList(k key, _ int, l limits) (int, bool) {
	n := r.value(k, listNode, func() string { return "a list in [ ]" })
	if n == nil {
		return 0, false
	}
	if len(n.items) > int(l.hi) { // before memory is taken for them
		r.addUnread(r.path(k), "a list of "+strconv.Itoa(len(n.items)), l.String())
		return 0, false
	}
	r.descend(k, n)
	return len(n.items), true
}

func (r *reader) descend(k key, n *node) {
	r.push(k)
	r.nodes = append(r.nodes, n)
}

func (r *reader) leave() {
	r.nameUnknown()
	r.nodes = r.nodes[:len(r.nodes)-1]
	r.pop()
}

// nameUnknown adds a problem for every key of the object that nothing has asked
// for.
func (r *reader) nameUnknown() {
	for _, m := range r.node().members {
		if !m.asked && !r.full() {
			r.add(r.path(at(m.name)), m.value.String(), "left out: there is no such key")
		}
	}
}

// String returns the value as a message shows it.
func (n *node) String() string {
	switch n.kind {
	case objectNode:
		return "an object"
	case listNode:
		return "a list of " + strconv.Itoa(len(n.items))
	case textNode:
		return quoted(n.text)
	}
	return shown(n.text)
}
