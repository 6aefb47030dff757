package plan

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"stopwright/assets/words"
)

// Decode reads a plan file: JSON in UTF-8, of at most 16 MB, with or without a
// byte order mark. Keys that the file leaves out have the values of [Default].
// A -0 is read as 0. It never reads further than one byte past the limit, and
// the memory it uses is bounded by that limit.
//
// The error is one of
//   - an error of r, wrapped;
//   - [ErrNotPlan] or [ErrTooMuch], wrapped in a sentence;
//   - a [*SyntaxError], with line and column;
//   - a [*VersionError], for a file of a newer version, whatever else is wrong
//     with it;
//   - [Problems], with every key that is missing, unknown, repeated, of the
//     wrong type or out of range.
func Decode(r io.Reader) (Plan, error) {
	src, err := readText(r)
	if err != nil {
		return Plan{}, err
	}
	root, err := parse(src)
	if v, ok := newerVersion(root); ok {
		return Plan{}, &VersionError{Version: v}
	}
	if err != nil {
		return Plan{}, err
	}
	if !isPlan(root) {
		return Plan{}, because(ErrNotPlan, "plan.notplan.other", words.Args{"Format": formatName})
	}
	d := document{Plan: Default()}
	d.Catches = nil // a file's catches replace the default, they do not fill it in
	var t tally
	rd := newReader(&root, &t)
	visit(rd, &d)
	rd.nameUnknown()
	check(&d, &t)
	if err := t.err(); err != nil {
		return Plan{}, err
	}
	return d.Plan, nil
}

// readText reads what may be the text of a plan file, without its byte order
// mark.
func readText(r io.Reader) (string, error) {
	var b strings.Builder
	if _, err := io.Copy(&b, io.LimitReader(r, MaxFileBytes+1)); err != nil {
		return "", fmt.Errorf("the plan cannot be read: %w", err)
	}
	if b.Len() > MaxFileBytes {
		return "", because(ErrTooMuch, "plan.toomuch.read", words.Args{"Most": MaxFileBytes >> 20})
	}
	src := strings.TrimPrefix(b.String(), "\uFEFF")
	switch begin := strings.TrimLeft(src, whiteSpace); {
	case begin == "":
		return "", because(ErrNotPlan, "plan.notplan.empty", nil)
	case begin[0] != '{':
		return "", because(ErrNotPlan, "plan.notplan.begins", words.Args{"Brace": "{"})
	}
	if i := invalidUTF8(src); i < len(src) {
		p := parser{src: src, pos: i}
		if !utf8.FullRuneInString(src[i:]) { // only the rest of a character is missing
			p.pos = len(src)
		}
		p.fail("syntax.utf8")
		return "", p.err
	}
	return src, nil
}

// invalidUTF8 returns the index of the first byte that is not UTF-8, the length
// of s where there is none.
func invalidUTF8(s string) int {
	for i, r := range s {
		if r == utf8.RuneError && !strings.HasPrefix(s[i:], string(utf8.RuneError)) {
			return i
		}
	}
	return len(s)
}

// isPlan reports whether root is meant as a plan, so that its faults are worth
// naming: it says so, or it has one of the parts that every plan must have.
func isPlan(root node) bool {
	for _, m := range root.members {
		switch m.name {
		case "format":
			if m.value.kind == textNode && m.value.text == formatName {
				return true
			}
		case "arrangement", "turntable", "base", "catch", "catches", "seat", "stops":
			return true
		}
	}
	return false
}

// newerVersion returns the version of a plan that a newer program wrote.
func newerVersion(root node) (version string, ok bool) {
	for _, m := range root.members {
		if m.name == "version" && m.value.kind == numberNode {
			x, err := parseNumber(m.value.text)
			return shown(m.value.text), err == nil && x > Version && isPlan(root)
		}
	}
	return "", false
}
