package plan

import (
	"strconv"
	"strings"
	"unicode/utf16"
	"unicode/utf8"

	"stopwright/assets/words"
)

// peek returns the next byte, 0 at the end of the file. A real zero byte is an
// error wherever it stands, so the two need not be told apart here.
func (p *parser) peek() byte {
	if p.pos < len(p.src) {
		return p.src[p.pos]
	}
	return 0
}

// whiteSpace are the characters JSON allows between values.
const whiteSpace = " \t\r\n"

func (p *parser) skipSpace() {
	for p.pos < len(p.src) && strings.IndexByte(whiteSpace, p.src[p.pos]) >= 0 {
		p.pos++
	}
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// fail records the first error, at pos, by the text that says what is wrong. At
// the end of the file that is always that the file ends.
func (p *parser) fail(key string, args ...words.Args) {
	if p.err != nil {
		return
	}
	reason := words.Phrase{Key: key}
	if len(args) > 0 {
		reason.Args = args[0]
	}
	e := &SyntaxError{Reason: reason}
	e.Line, e.Column = position(p.src, p.pos)
	if p.pos >= len(p.src) {
		e.Truncated = true
		e.Reason = words.Phrase{Key: "syntax.truncated"}
	}
	p.err = e
}

// position returns the line and column of the byte at pos, both from 1.
func position(src string, pos int) (line, column int) {
	before := src[:pos]
	line = 1 + strings.Count(before, "\n")
	column = 1 + utf8.RuneCountInString(before[strings.LastIndexByte(before, '\n')+1:])
	return line, column
}

// found names the character at pos to the text that asks for it.
func (p *parser) found() words.Args {
	r, _ := utf8.DecodeRuneInString(p.src[p.pos:])
	return words.Args{"Found": strconv.QuoteRune(r)}
}

// unlike records that something else was expected at pos.
func (p *parser) unlike(expected string) {
	args := p.found()
	args["Expected"] = expected
	p.fail("syntax.expected", args)
}

// word reads one of the words true, false and null, whose first letter is at
// pos.
func (p *parser) word(w string) {
	for i := range len(w) {
		if p.peek() != w[i] {
			p.unlike(w)
			return
		}
		p.pos++
	}
}

// number reads a number and returns it as written.
func (p *parser) number() string {
	start := p.pos
	if p.peek() == '-' {
		p.pos++
	}
	if p.peek() == '0' {
		p.pos++
		if isDigit(p.peek()) {
			p.fail("syntax.zero")
		}
	} else {
		p.digits()
	}
	if p.peek() == '.' {
		p.pos++
		p.digits()
	}
	if c := p.peek(); c == 'e' || c == 'E' {
		p.pos++
		if c := p.peek(); c == '+' || c == '-' {
			p.pos++
		}
		p.digits()
	}
	return p.src[start:p.pos]
}

// digits reads one digit or more.
func (p *parser) digits() {
	if !isDigit(p.peek()) {
		p.fail("syntax.digit", p.found())
	}
	for isDigit(p.peek()) {
		p.pos++
	}
}

// text reads a text in double quotes, the first of them at pos.
func (p *parser) text() string {
	p.pos++
	start := p.pos
	var b strings.Builder // used from the first escape on
	for p.err == nil {
		switch c := p.peek(); {
		case c == '"':
			rest := p.src[start:p.pos]
			p.pos++
			if b.Len() == 0 {
				return rest
			}
			b.WriteString(rest)
			return b.String()
		case c == '\\':
			b.WriteString(p.src[start:p.pos])
			p.pos++
			b.WriteRune(p.escaped())
			start = p.pos
		case c < ' ':
			p.fail("syntax.control")
		default:
			p.pos++
		}
	}
	return ""
}

// escapes are the characters that may follow a backslash, and what they mean,
// in pairs.
const escapes = "\"\"\\\\//b\bf\fn\nr\rt\t"

// escaped reads what follows a backslash.
func (p *parser) escaped() rune {
	c := p.peek()
	if c == 'u' {
		p.pos++
		return p.unicode()
	}
	for i := 0; i < len(escapes); i += 2 {
		if escapes[i] == c {
			p.pos++
			return rune(escapes[i+1])
		}
	}
	p.fail("syntax.escape", p.found())
	return 0
}

// unicode reads the four hexadecimal digits after \u, and where they are the
// first half of a surrogate pair, the other half as well. A half alone is no
// character and is refused, since it could not be written back.
func (p *parser) unicode() rune {
	start := p.pos
	r := p.hex4()
	if !utf16.IsSurrogate(r) {
		return r
	}
	const begin = `\u`
	switch rest := p.src[p.pos:]; {
	case strings.HasPrefix(rest, begin):
		p.pos += len(begin)
		if r = utf16.DecodeRune(r, p.hex4()); r != utf8.RuneError {
			return r
		}
		p.pos = start
	case strings.HasPrefix(begin, rest): // the file ends before the other half
		p.pos = len(p.src)
	default:
		p.pos = start
	}
	p.fail("syntax.surrogate")
	return 0
}

// hex4 reads four hexadecimal digits.
func (p *parser) hex4() rune {
	start := p.pos
	for range 4 {
		if c := p.peek() | 0x20; !isDigit(p.peek()) && (c < 'a' || c > 'f') {
			p.fail("syntax.hex", p.found())
			return 0
		}
		p.pos++
	}
	v, _ := strconv.ParseUint(p.src[start:p.pos], 16, 16) // cannot fail: four such digits
	return rune(v)
}
