package measure

import (
	"math/big"
	"strings"
)

// cursor walks over the tokens of a text.
type cursor struct {
	tokens []token
	at     int
}

// value is one number of a text, with how it was written.
type value struct {
	*big.Rat
	whole    bool // without decimals or fraction
	fraction bool // with a division bar
}

// read reads a whole text as [parse] does, its reason made an error.
func read(kind Kind, text string, body func(*cursor) (*big.Rat, Reason)) (float64, error) {
	x, reason := parse(text, body)
	if reason != 0 {
		return 0, &SyntaxError{Kind: kind, Text: text, Reason: reason}
	}
	return x, nil
}

// parse reads a whole text: a sign, and what body makes of the rest. The sign
// goes for all that follows, so that -0°30' is half a degree below zero.
func parse(text string, body func(*cursor) (*big.Rat, Reason)) (float64, Reason) {
	tokens, reason := scan(text)
	if reason != 0 {
		return 0, reason
	}
	c := &cursor{tokens: tokens}
	negative := c.accept("-")
	if !negative {
		c.accept("+")
	}
	r, reason := body(c)
	if reason != 0 {
		return 0, reason
	}
	if negative {
		r.Neg(r)
	}
	x, _ := r.Float64()
	return x, 0
}

// done reports whether all tokens are read.
func (c *cursor) done() bool { return c.at == len(c.tokens) }

// peek returns the token i places on; an empty symbol past the end.
func (c *cursor) peek(i int) token {
	if c.at+i < len(c.tokens) {
		return c.tokens[c.at+i]
	}
	return token{class: symbol}
}

// accept steps over the given mark if it comes next.
func (c *cursor) accept(mark string) bool {
	if !c.peek(0).is(mark) {
		return false
	}
	c.at++
	return true
}

// end gives the reason against whatever is left unread; none if nothing is.
func (c *cursor) end() Reason {
	if c.done() {
		return 0
	}
	return c.unexpected()
}

// unexpected gives the reason against the next token, where it cannot stand.
func (c *cursor) unexpected() Reason {
	next := c.peek(0)
	afterNumber := c.at > 0 && c.tokens[c.at-1].class == number
	power := c.peek(1)
	switch {
	case !afterNumber:
		return NotUnderstood
	case next.class == word && next.text == "e" &&
		(power.class == number || power.is("-") || power.is("+")):
		return PowerOfTen
	case next.class == word, next.is("'"), next.is(`"`), next.is("°"):
		return UnknownUnit
	}
	return NotUnderstood
}

// value reads one unsigned number: 12.5, 3/16, 1 3/16 or 1-3/16.
func (c *cursor) value() (value, Reason) {
	if w, n, d, length := c.mixed(); length > 0 {
		return c.mixedValue(w, n, d, length)
	}
	first := c.peek(0)
	if first.class != number {
		return value{}, c.unexpected()
	}
	c.at++
	v := value{Rat: rational(first.text), whole: first.whole()}
	if !c.peek(0).is("/") || c.peek(1).class != number {
		return v, 0
	}
	divisor := rational(c.peek(1).text)
	c.at += 2
	if divisor.Sign() == 0 {
		return value{}, ZeroDivisor
	}
	return value{Rat: v.Quo(v.Rat, divisor), fraction: true}, 0
}

// mixed recognises a whole number with a fraction after it, and returns the
// three numbers and how many tokens they take; 0 if something else comes next.
// A hyphen may join the two, but only without space: 1 - 3/16 is a sum, and
// sums are not read.
func (c *cursor) mixed() (w, n, d token, length int) {
	i := 1
	if c.peek(1).is("-") && !c.peek(1).spaced && !c.peek(2).spaced {
		i = 2
	}
	w, n, d = c.peek(0), c.peek(i), c.peek(i+2)
	if w.whole() && n.whole() && c.peek(i+1).is("/") && d.whole() {
		return w, n, d, i + 3
	}
	return w, n, d, 0
}

// mixedValue reads what mixed recognised.
func (c *cursor) mixedValue(w, n, d token, length int) (value, Reason) {
	c.at += length
	over, under := rational(n.text), rational(d.text)
	switch {
	case under.Sign() == 0:
		return value{}, ZeroDivisor
	case over.Cmp(under) >= 0:
		return value{}, ImproperMixed
	}
	over.Quo(over, under)
	return value{Rat: over.Add(over, rational(w.text)), fraction: true}, 0
}

// rational returns the exact value of digits with at most one point among them.
func rational(digits string) *big.Rat {
	whole, decimals, _ := strings.Cut(digits, ".")
	over, _ := new(big.Int).SetString("0"+whole+decimals, 10)
	under := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(decimals))), nil)
	return new(big.Rat).SetFrac(over, under)
}
