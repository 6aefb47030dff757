package router

import (
	"strings"
	"unicode"
)

// widest is how many characters a line of a program has at most: small
// controllers take 80, its end included.
const widest = 76

// spelled is how characters that are common in plans are written in ASCII.
var spelled = strings.NewReplacer(
	"ä", "ae", "ö", "oe", "ü", "ue", "Ä", "Ae", "Ö", "Oe", "Ü", "Ue", "ß", "ss",
	"⌀", "dia ", "°", " deg", "±", "+-", "–", "-", "—", "-", "−", "-", "·", ".", "×", "x",
	"½", "1/2", "¼", "1/4", "¾", "3/4", "⅔", "2/3", "µ", "u", "…", "...", "→", "->", "≤", "<=", "≥", ">=",
	"(", "[", ")", "]", ";", ",",
)

// plainSigns are the signs a comment keeps. Parentheses would end it; % ends a
// program; ! ? ~ are obeyed by small controllers wherever they stand; a ; begins
// a comment of its own.
const plainSigns = ` .,:+-*=<>#&'"_[]/@^|`

// sanitised returns a text as a comment may hold it: printable ASCII on one
// line, without what a controller might obey. What it cannot spell becomes an
// underscore.
func sanitised(s string) string {
	s = spelled.Replace(strings.Join(strings.Fields(s), " "))
	return strings.Map(func(r rune) rune {
		switch {
		case r < unicode.MaxASCII && (unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune(plainSigns, r)):
			return r
		case unicode.IsControl(r):
			return -1
		}
		return '_'
	}, s)
}

// comments returns a text as comments in parentheses, one a line, broken at
// spaces where it is long.
func comments(text string) []string {
	var out []string
	for rest := sanitised(text); rest != ""; {
		var line string
		line, rest = broken(rest, widest-len("()"))
		out = append(out, "("+inert(line)+")")
	}
	return out
}

// broken cuts off as much of s as fits a line, at a space if there is one.
func broken(s string, most int) (line, rest string) {
	most -= len(guard)
	if len(s) <= most {
		return s, ""
	}
	cut := strings.LastIndexByte(s[:most+1], ' ')
	if cut <= 0 {
		return s[:most], s[most:]
	}
	return s[:cut], strings.TrimLeft(s[cut:], " ")
}

// active are the words with which a comment, when it begins with one and a
// comma, is a command: MSG of NISTIR 6556, the others of
// interpreters made after it.
var active = []string{"MSG", "DEBUG", "PRINT", "LOG", "LOGOPEN", "LOGAPPEND", "LOGCLOSE", "PROBEOPEN", "PROBECLOSE", "PY", "ABORT", "AXIS", "PREVIEW"}

// guard is put before what would be a command.
const guard = "- "

// inert returns a comment that no controller obeys.
func inert(line string) string {
	first, _, _ := strings.Cut(strings.TrimLeft(line, " "), ",")
	first = strings.ToUpper(strings.ReplaceAll(first, " ", ""))
	for _, word := range active {
		if first == word {
			return guard + line
		}
	}
	return line
}
