package measure

import (
	"strings"
	"unicode"
)

// Kind is what a text was meant to be.
type Kind int

// The kinds.
const (
	Length Kind = iota + 1
	Angle
	Number
	Force
	Rate // of a spring
)

// Reason is why a text was not understood.
type Reason int

// The reasons. The zero Reason is none: the text was understood.
const (
	NotUnderstood Reason = iota + 1
	Empty                // nothing but space
	TooLong              // more than 64 characters
	Separators           // more than one point or comma in a number
	PowerOfTen           // 1e3
	UnknownUnit          // a word or mark after the number that is none of the kind's
	ZeroDivisor          // 1/0
	ImproperMixed        // 1 16/3
	DegreesFirst         // minutes or seconds without degrees
	MinutesRange         // 60 minutes or more
	SecondsRange         // 60 seconds or more
	DecimalPlace         // decimals before the last of degrees, minutes, seconds

	// Only in a list: see [ParseStops].
	CommaUnclear   // commas that may stand for decimals or between stops
	SpaceUnclear   // spaces that may stand between stops or between degrees and minutes
	ColumnsUnclear // a second column that may hold stops or labels
	ManyColumns    // more columns than angle and label
	TooMany        // more than [MaxListed] stops
)

// SyntaxError reports a text that cannot be read. Kind and Reason are for a
// caller that words it in another language; Error words it in English.
type SyntaxError struct {
	Kind   Kind
	Text   string // as typed
	Reason Reason
}

// Shown returns the text as fit to stand in a message of one line.
func (e *SyntaxError) Shown() string { return shown(e.Text) }

// Error says in one sentence what was typed and what would be understood.
func (e *SyntaxError) Error() string {
	kind := kindWords[e.Kind]
	if e.Reason == Empty {
		return kind.name + " is missing: write " + kind.examples
	}
	var b strings.Builder
	b.WriteString("“" + shown(e.Text) + "” is not " + kind.name + ": ")
	if why := reasonWords[e.Reason]; why != "" {
		b.WriteString(why + "; ")
	}
	b.WriteString("write " + kind.examples)
	return b.String()
}

var kindWords = map[Kind]struct{ name, examples string }{
	Length: {"a length", `12.5 mm, 3/16" or 1 3/16 in`},
	Angle:  {"an angle", "12.5, 12°30' or 180/7"},
	Number: {"a number", "12.5 or 3/16"},
	Force:  {"a force", "12 N, 1.2 kg or 2 1/2 lb"},
	Rate:   {"a spring rate", "0.72 N/mm or 4.1 lb/in"},
}

// reasonWords leaves out NotUnderstood, which has no more to say than what
// would be understood.
var reasonWords = map[Reason]string{
	TooLong:       "it is longer than 64 characters",
	Separators:    "more than one point or comma can be read two ways, so leave out marks for thousands",
	PowerOfTen:    "powers of ten are not read, so write all the digits",
	UnknownUnit:   "the unit is not one of those read here",
	ZeroDivisor:   "it divides by zero",
	ImproperMixed: "the fraction after a whole number must be less than one",
	DegreesFirst:  "it must begin with the degrees, if only with 0°",
	MinutesRange:  "minutes must be less than 60",
	SecondsRange:  "seconds must be less than 60",
	DecimalPlace:  "only the last of degrees, minutes and seconds may have decimals",

	CommaUnclear:   "a comma between digits may be for decimals or stand between stops, so part stops by semicolons",
	SpaceUnclear:   "numbers with only space between may be several stops or degrees, minutes and seconds, so part stops by semicolons, or mark the degrees",
	ColumnsUnclear: "the second number may be another stop or a label, so take one column, or both with a line of headings above them",
	ManyColumns:    "a line with a label has two columns, the angle and the label",
	TooMany:        "a list has at most 10,000 stops",
}

// shown returns typed text fit to stand in a one-line message: short, and free
// of line breaks and other characters that do not print.
func shown(text string) string {
	const limit = 40 // characters: about the width of an entry field
	text = strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return ' '
		}
		return r
	}, text)
	if runes := []rune(text); len(runes) > limit {
		text = string(runes[:limit]) + "…"
	}
	return text
}
