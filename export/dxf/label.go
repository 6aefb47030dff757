package dxf

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf16"
)

// maxLabel is the longest text value in AC1015, bytes (DXF Reference, group code
// value types).
const maxLabel = 2049

// cut ends a label that was too long.
const cut = "..."

// label returns text as one line of a TEXT entity, in ASCII.
//
// White space of any kind becomes single spaces, other control characters go,
// so that no text can end its record and start another. Then, after the DXF
// Reference: %%d, %%c and %%p are degree, diameter and plus-minus; \U+XXXX is
// any letter outside ASCII, in UTF-16; a caret is followed by a space. A percent
// sign, or a backslash, that would begin such a code by chance is escaped, so
// that a reader shows what the maker typed. A label that would be longer than
// a reader takes is cut, and ends in three dots.
func label(text string) string {
	runes := []rune(oneLine(text))
	var b strings.Builder
	whole := 0 // length up to which cut still fits
	for i, r := range runes {
		b.WriteString(escape(r, runes[i+1:]))
		if b.Len() > maxLabel {
			return b.String()[:whole] + cut
		}
		if b.Len() <= maxLabel-len(cut) {
			whole = b.Len()
		}
	}
	return b.String()
}

// oneLine joins the words of text with single spaces, without control
// characters.
func oneLine(text string) string {
	shown := strings.Map(func(r rune) rune {
		if unicode.IsControl(r) && !unicode.IsSpace(r) {
			return -1
		}
		return r
	}, text)
	return strings.Join(strings.Fields(shown), " ")
}

// escape returns how r is written in front of rest.
func escape(r rune, rest []rune) string {
	switch {
	case r == '°':
		return "%%d"
	case r == '⌀':
		return "%%c"
	case r == '±':
		return "%%p"
	case r == '^':
		return "^ "
	case r == '%' && len(rest) > 0 && strings.ContainsRune("%°⌀±", rest[0]):
		return "%%%" // a plain percent sign
	case r == '\\' && len(rest) > 1 && strings.ContainsRune("UuMm", rest[0]) && rest[1] == '+':
		return unicodeEscape(r)
	case r < 0x80:
		return string(r)
	default:
		return unicodeEscape(r)
	}
}

func unicodeEscape(r rune) string {
	var s string
	for _, u := range utf16.AppendRune(nil, r) {
		s += fmt.Sprintf(`\U+%04X`, u)
	}
	return s
}
