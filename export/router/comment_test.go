package router_test

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/plan"
)

// commentsIn returns the comments of a program, as an interpreter sees them.
func commentsIn(t require.TestingT, file string) []string {
	m := &machine{backOff: 0.254}
	require.NoError(t, interpret(file, m))
	return m.comments
}

func TestCommentsObeyNobody(t *testing.T) {
	for _, c := range []struct{ why, title, want string }{
		{"letters as they are", "Table no. 7", "Table no. 7"},
		{"a parenthesis would end the comment", "a) G0 Z-50 (b", "a] G0 Z-50 [b"},
		{"a message", "MSG, hello", "- MSG, hello"},
		{"a message in small letters, spaced", "  m sg , hello", "- m sg , hello"},
		{"an interpreter's own command", "LOGOPEN,/etc/passwd", "- LOGOPEN,/etc/passwd"},
		{"a word that only begins like one", "Message, hello", "Message, hello"},
		{"umlauts", "Größe: 45° ± ½", "Groesse: 45 deg +- 1/2"},
		{"what small controllers obey anywhere", "stop! wait? ~ $X %", "stop_ wait_ _ _X _"},
		{"line breaks", "one\r\nM3 S9\ntwo", "one M3 S9 two"},
		{"a letter there is no spelling for", "車", "_"},
		{"a null and a bell", "a\x00\x07b", "ab"},
	} {
		p := trial()
		p.Title = c.title
		program := made(t, p, plan.PartBase)
		file := text(t, program)
		assert.Contains(t, commentsIn(t, file), c.want, c.why)
		assert.NotContains(t, file, "\r", c.why)
	}
}

// Whatever a maker writes into a plan, the program moves as without it, and no
// line is longer than small controllers take.
func TestWordsOfAPlanMoveNothing(t *testing.T) {
	plain := replayed(t, text(t, made(t, trial(), plan.PartBase))).motions
	rapid.Check(t, func(r *rapid.T) {
		p := trial()
		p.Title = rapid.String().Draw(r, "title")
		p.Features[0].Label = rapid.String().Draw(r, "label")
		if plan.Validate(p) != nil {
			r.Skip("more than a plan may hold")
		}
		file := text(t, made(t, p, plan.PartBase))
		for _, line := range strings.Split(file, "\n") {
			require.LessOrEqual(r, len(line), 78)
			require.Negative(r, strings.IndexFunc(line, func(c rune) bool { return c > unicode.MaxASCII || c < ' ' }))
			require.Negative(r, strings.IndexAny(line, "!?~$;"))
		}
		m := &machine{at: vec{0, 0, 50}, backOff: 0.254, tool: 1}
		require.NoError(r, interpret(file, m))
		require.True(r, slices.Equal(plain, m.motions), "the same motions")
		for _, c := range m.comments {
			first, _, command := strings.Cut(strings.ToUpper(strings.ReplaceAll(c, " ", "")), ",")
			require.False(r, command && (first == "MSG" || first == "DEBUG" || first == "PRINT" || first == "LOG"), c)
		}
	})
}

func TestALongTitleIsBroken(t *testing.T) {
	p := trial()
	long := strings.TrimSpace(strings.Repeat("longword ", 40))
	p.Title = long + " " + strings.Repeat("q", 200)
	all := commentsIn(t, text(t, made(t, p, plan.PartBase)))
	assert.Contains(t, strings.Join(all, " "), long, "broken at spaces")
	assert.Contains(t, strings.Join(all, ""), strings.Repeat("q", 200), "and where there are none, anywhere")
}
