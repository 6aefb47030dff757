package plan

import (
	"math"
	"strconv"

	"stopwright/assets/words"
)

// Validate returns [Problems] with every value of p that is out of range or
// does not agree with another, and nil where there is none.
//
// A size that does not belong to the base's shape, or to a feature's kind, is
// not part of the plan and only has to be a finite number.
func Validate(p Plan) error {
	d := newDocument(p)
	var t tally
	check(&d, &t)
	return t.err()
}

// check adds the problems of d to t, apart from values that t says were never
// read.
func check(d *document, t *tally) {
	c := &checker{tally: t}
	visit(c, d)
	c.relations(&d.Plan)
}

// checker is the visitor that compares every value with its range.
type checker struct {
	*tally
	trail
}

// refuse adds a problem, unless the value was never read.
func (c *checker) refuse(k key, value, want words.Saying) {
	if path := c.path(k); !c.hasUnread(path) {
		c.add(path, value, want)
	}
}

func (c *checker) number(k key, x *float64, l limits) {
	switch {
	case !k.belongs():
		if math.IsNaN(*x) || math.IsInf(*x, 0) {
			c.refuse(k, inFile(*x), words.Phrase{Key: "want.finite"})
		}
	case !l.allow(*x):
		c.refuse(k, inFile(*x), l)
	}
}

func (c *checker) count(k key, n *int, l limits) {
	if !l.allow(float64(*n)) {
		c.refuse(k, words.Verbatim(strconv.Itoa(*n)), l)
	}
}

func (c *checker) flag(key, *bool) {}

func (c *checker) text(k key, s *string, w wording) {
	if !w.allow(*s) {
		c.refuse(k, quoted(*s), w)
	}
}

func (c *checker) has(_ key, present bool) bool { return present }

func (c *checker) enter(k key) bool {
	c.push(k)
	return true
}

func (c *checker) enterList(k key, n int, l limits) (int, bool) {
	if !l.allow(float64(n)) {
		c.refuse(k, listOf(n), l)
	}
	if n > int(l.hi) { // its items would only be a thousand more problems
		return 0, false
	}
	c.push(k)
	return n, true
}

func (c *checker) leave() { c.pop() }
