package measure

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestSyntaxErrorIsOneSentence(t *testing.T) {
	for _, c := range []struct {
		err  SyntaxError
		want string
		why  string
	}{
		{
			SyntaxError{Angle, "abc", NotUnderstood},
			"“abc” is not an angle: write 12.5, 12°30' or 180/7",
			"no more to say than what would be understood",
		},
		{
			SyntaxError{Angle, "31°60'", MinutesRange},
			"“31°60'” is not an angle: minutes must be less than 60; write 12.5, 12°30' or 180/7",
			"with the reason",
		},
		{
			SyntaxError{Length, "1,234.5", Separators},
			"“1,234.5” is not a length: more than one point or comma can be read two ways, so leave out marks for thousands; write 12.5 mm, 3/16\" or 1 3/16 in",
			"says how to write it instead",
		},
		{
			SyntaxError{Number, " ", Empty},
			"a number is missing: write 12.5 or 3/16",
			"nothing to quote",
		},
		{
			SyntaxError{Length, "a\nb\x00" + strings.Repeat("é", 100), TooLong},
			"“a b " + strings.Repeat("é", 36) + "…” is not a length: it is longer than 64 characters; write 12.5 mm, 3/16\" or 1 3/16 in",
			"one line, shortened between characters",
		},
	} {
		assert.Equal(t, c.want, c.err.Error(), c.why)
	}
}

func TestEveryReasonHasWords(t *testing.T) {
	seen := map[string]Reason{}
	for reason := NotUnderstood; reason <= TooMany; reason++ {
		text := (&SyntaxError{Angle, "x", reason}).Error()
		assert.NotContains(t, seen, text, "reason %d reads like %d", reason, seen[text])
		seen[text] = reason
	}
}

func TestExamplesInMessagesAreUnderstood(t *testing.T) {
	parse := map[Kind]func(string) error{
		Length: func(s string) error { _, err := ParseLength(s, Millimetre); return err },
		Angle:  func(s string) error { _, err := ParseAngle(s); return err },
		Number: func(s string) error { _, err := ParseNumber(s); return err },
		Force:  func(s string) error { _, err := ParseForce(s); return err },
		Rate:   func(s string) error { _, err := ParseRate(s); return err },
	}
	for kind, words := range kindWords {
		for _, example := range strings.Split(strings.ReplaceAll(words.examples, " or ", ", "), ", ") {
			assert.NoError(t, parse[kind](example), example)
		}
	}
}
