package measure

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// maxText is the longest text that is read, in characters. It keeps every
// result finite: nothing above 1e64 or, divided, below 1e-64 can be written.
const maxText = 64

// class is what a token is.
type class int

const (
	number class = iota // text holds digits and at most one point
	word                // text holds letters, in lower case
	symbol              // text holds one of / - + : ° ' " or something unknown
)

// token is one number, word or mark of a text, in a single spelling.
type token struct {
	class  class
	text   string
	spaced bool // there is space before it
}

// is reports whether the token is the given mark.
func (t token) is(mark string) bool { return t.class == symbol && t.text == mark }

// whole reports whether the token is a number without decimals.
func (t token) whole() bool { return t.class == number && !strings.Contains(t.text, ".") }

// marks maps the many ways to type a mark, or to paste it from print, to one.
var marks = map[rune]string{
	'/': "/", '⁄': "/", '∕': "/", '÷': "/",
	'-': "-", '−': "-", '‐': "-", '‑': "-", '‒': "-", '–': "-",
	'+': "+", ':': ":",
	'°': "°", 'º': "°", '˚': "°",
	'\'': "'", '′': "'", '’': "'", '´': "'",
	'"': `"`, '″': `"`, '”': `"`, '“': `"`,
}

// vulgar holds the fractions that are one character: numerator, denominator.
var vulgar = map[rune][2]string{
	'½': {"1", "2"}, '⅓': {"1", "3"}, '⅔': {"2", "3"}, '¼': {"1", "4"}, '¾': {"3", "4"},
	'⅕': {"1", "5"}, '⅖': {"2", "5"}, '⅗': {"3", "5"}, '⅘': {"4", "5"},
	'⅙': {"1", "6"}, '⅚': {"5", "6"}, '⅐': {"1", "7"},
	'⅛': {"1", "8"}, '⅜': {"3", "8"}, '⅝': {"5", "8"}, '⅞': {"7", "8"},
	'⅑': {"1", "9"}, '⅒': {"1", "10"},
}

// scan splits a text into tokens.
func scan(text string) ([]token, Reason) {
	if utf8.RuneCountInString(text) > maxText {
		return nil, TooLong
	}
	var tokens []token
	spaced := false
	add := func(c class, text string) {
		tokens = append(tokens, token{c, text, spaced})
		spaced = false
	}
	for runes := []rune(text); len(runes) > 0; {
		r, n := runes[0], 1
		switch {
		case blank(r):
			spaced = true
		case isDigit(r) || isSeparator(r):
			n = span(runes, func(r rune) bool { return isDigit(r) || isSeparator(r) })
			digits, reason := decimal(string(runes[:n]))
			if reason != 0 {
				return nil, reason
			}
			add(number, digits)
		case vulgar[r] != [2]string{}:
			add(number, vulgar[r][0])
			add(symbol, "/")
			add(number, vulgar[r][1])
		case marks[r] != "":
			mark := marks[r]
			if mark == "'" && len(runes) > 1 && marks[runes[1]] == "'" {
				mark, n = `"`, 2 // two single marks for a double one
			}
			add(symbol, mark)
		case unicode.IsLetter(r):
			n = span(runes, unicode.IsLetter)
			add(word, strings.ToLower(string(runes[:n])))
			if n < len(runes) && runes[n] == '.' {
				n++ // an abbreviation's point, as in "3/16 in."
			}
		default:
			add(symbol, string(r))
		}
		runes = runes[n:]
	}
	if len(tokens) == 0 {
		return nil, Empty
	}
	return tokens, 0
}

// decimal returns a run of digits, points and commas with its one separator, if
// any, as a point.
func decimal(run string) (string, Reason) {
	run = strings.ReplaceAll(run, ",", ".")
	switch {
	case strings.Count(run, ".") > 1:
		return "", Separators
	case run == ".":
		return "", NotUnderstood
	}
	return run, 0
}

// span returns how many runes at the start satisfy ok.
func span(runes []rune, ok func(rune) bool) int {
	for i, r := range runes {
		if !ok(r) {
			return i
		}
	}
	return len(runes)
}

func isDigit(r rune) bool     { return '0' <= r && r <= '9' }
func isSeparator(r rune) bool { return r == '.' || r == ',' }

// blank reports whether r is space of any width, or one of the invisible
// characters that come along when text is pasted.
func blank(r rune) bool {
	return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r)
}
