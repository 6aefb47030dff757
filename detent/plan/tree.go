package plan

import "stopwright/assets/words"

// The parser below is used instead of encoding/json because a plan file must be
// bounded before memory is, and because that package lets pass keys that are
// given twice and replaces what is no character; it also says where an error is
// by byte, not by line.

// nodeKind is the type of a JSON value.
type nodeKind int

const (
	objectNode nodeKind = iota
	listNode
	textNode
	numberNode
	flagNode
	nullNode
)

// node is one JSON value.
type node struct {
	kind    nodeKind
	text    string   // of a text, unescaped; of a number, a flag or null, as written
	members []member // of an object, in order, keys repeated as in the file
	items   []node   // of a list
}

type member struct {
	name  string
	value node
	asked bool // a reader has looked for it
}

const (
	// maxDepth is how deep values may nest. A plan needs five levels; the rest
	// is for keys not known here, so that they are named instead.
	maxDepth = 16
	// maxNodes is how many values a file may hold. A plan with every list full
	// has fewer than 300,000.
	maxNodes = 500_000
)

// parser reads the text of a file into nodes. The first error ends it.
type parser struct {
	src   string
	pos   int
	depth int
	nodes int
	err   error
}

// parse reads src, which must be valid UTF-8, as one JSON value. After an error
// it returns what was read so far.
func parse(src string) (node, error) {
	p := parser{src: src}
	p.skipSpace()
	n := p.value()
	p.skipSpace()
	if p.err == nil && p.pos < len(p.src) {
		p.fail("syntax.after", p.found())
	}
	return n, p.err
}

// value reads the value at pos, which must be past white space.
func (p *parser) value() node {
	p.nodes++
	if p.nodes > maxNodes && p.err == nil {
		p.err = because(ErrTooMuch, "plan.toomuch.values", words.Args{"Most": maxNodes})
	}
	if p.err != nil {
		return node{}
	}
	switch c := p.peek(); {
	case c == '{':
		return p.nested(objectNode, '}')
	case c == '[':
		return p.nested(listNode, ']')
	case c == '"':
		return node{kind: textNode, text: p.text()}
	case c == '-' || isDigit(c):
		return node{kind: numberNode, text: p.number()}
	}
	for _, w := range []struct {
		kind nodeKind
		word string
	}{{flagNode, "true"}, {flagNode, "false"}, {nullNode, "null"}} {
		if p.peek() == w.word[0] {
			p.word(w.word)
			return node{kind: w.kind, text: w.word}
		}
	}
	p.fail("syntax.value", p.found())
	return node{}
}

// nested reads an object or a list up to and with its closing bracket.
func (p *parser) nested(kind nodeKind, closing byte) node {
	n := node{kind: kind}
	p.depth++
	defer func() { p.depth-- }()
	if p.depth > maxDepth {
		p.err = because(ErrTooMuch, "plan.toomuch.deep", words.Args{"Most": maxDepth})
		return n
	}
	p.pos++ // the opening bracket
	p.skipSpace()
	if p.peek() == closing {
		p.pos++
		return n
	}
	for p.err == nil {
		if kind == objectNode {
			n.members = append(n.members, p.member())
		} else {
			n.items = append(n.items, p.value())
		}
		p.skipSpace()
		switch p.peek() {
		case closing:
			p.pos++
			return n
		case ',':
			p.pos++
			p.skipSpace()
		default:
			args := p.found()
			args["Closing"] = string(closing)
			p.fail("syntax.comma", args)
		}
	}
	return n
}

// member reads a key, a colon and a value.
func (p *parser) member() member {
	if p.peek() != '"' {
		p.fail("syntax.key", p.found())
		return member{}
	}
	name := p.text()
	p.skipSpace()
	if p.peek() != ':' {
		p.fail("syntax.colon", p.found())
		return member{}
	}
	p.pos++
	p.skipSpace()
	return member{name: name, value: p.value()}
}
