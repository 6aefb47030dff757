package plan

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"stopwright/assets/words"
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
			r.add(r.path(k), m.value.said(), words.Phrase{Key: "want.once"})
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
		r.add(r.path(k), found.said(), words.Phrase{
			Key: "want.notowned", Args: words.Args{"Owners": oneOf(k.owners), "Not": k.actual},
		})
	}
	return nil
}

// value returns the value of k if it has the right type; else nil, after naming
// the problem where there is one. Only then is it asked what is wanted: most
// files have no problems.
func (r *reader) value(k key, kind nodeKind, want func() words.Saying) *node {
	n := r.find(k)
	switch {
	case n == nil:
		if k.required && k.belongs() {
			r.addUnread(r.path(k), nil, want())
		}
		return nil
	case n.kind != kind:
		r.addUnread(r.path(k), n.said(), want())
		return nil
	}
	return n
}

func (r *reader) number(k key, x *float64, l limits) {
	want := func() words.Saying { return words.Phrase{Key: "want.number", Args: words.Args{"Range": l}} }
	n := r.value(k, numberNode, want)
	if n == nil {
		return
	}
	v, err := parseNumber(n.text)
	if err != nil {
		r.addUnread(r.path(k), n.said(), want())
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
	want := func() words.Saying { return words.Phrase{Key: "want.whole", Args: words.Args{"Range": l}} }
	v := r.value(k, numberNode, want)
	if v == nil {
		return
	}
	// 8.0 is a whole number too. Numbers that an int may not hold are named
	// here; the smaller ones out of range are left to check.
	x, err := parseNumber(v.text)
	if err != nil || x != math.Trunc(x) || math.Abs(x) > math.MaxInt32 {
		r.addUnread(r.path(k), v.said(), want())
		return
	}
	*n = int(x)
}

func (r *reader) flag(k key, b *bool) {
	if n := r.value(k, flagNode, func() words.Saying { return words.Phrase{Key: "want.flag"} }); n != nil {
		*b = n.text == "true"
	}
}

func (r *reader) text(k key, s *string, w wording) {
	if n := r.value(k, textNode, func() words.Saying { return w }); n != nil {
		*s = strings.Clone(n.text) // or a plan would keep the whole file in memory
	}
}

func (r *reader) has(k key, _ bool) bool {
	return slices.ContainsFunc(r.node().members, func(m member) bool { return m.name == k.name })
}

func (r *reader) enter(k key) bool {
	n := r.value(k, objectNode, func() words.Saying { return words.Phrase{Key: "want.object", Args: words.Args{"Braces": "{ }"}} })
	if n == nil {
		return false
	}
	r.descend(k, n)
	return true
}

func (r *reader) enterList(k key, _ int, l limits) (int, bool) {
	n := r.value(k, listNode, func() words.Saying { return words.Phrase{Key: "want.list", Args: words.Args{"Brackets": "[ ]"}} })
	if n == nil {
		return 0, false
	}
	if len(n.items) > int(l.hi) { // before memory is taken for them
		r.addUnread(r.path(k), listOf(len(n.items)), l)
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
			r.add(r.path(at(m.name)), m.value.said(), words.Phrase{Key: "want.nosuchkey"})
		}
	}
}

// said returns the value as a message shows it.
func (n *node) said() words.Saying {
	switch n.kind {
	case objectNode:
		return words.Phrase{Key: "value.object"}
	case listNode:
		return listOf(len(n.items))
	case textNode:
		return quoted(n.text)
	}
	return words.Verbatim(shown(n.text))
}
