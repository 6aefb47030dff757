package plan

import (
	"encoding/json"
	"errors"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

// FuzzParse compares the parser with encoding/json: both must accept the same
// texts, and find the same values in them. Only what the parser refuses on
// purpose, surrogate halves and files too large, is left out.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		`{}`, `[]`, ` [ 1 , 2 ] `, `{"a": {"b": [null, true, false]}}`, `"\u00e9\ud83d\ude00\/\b\f\n\r\t\"\\"`,
		`-0.5e+10`, `0`, `-0`, `1E-5`, `01`, `1.`, `.5`, `-`, `1e`, `[1,]`, `{"a":1,}`, `{"a"}`, `nul`, `tru e`, `"\x"`,
		`"\u12"`, "\"\t\"", `{} {}`, ``, `[[[[[[[[[[[[[[[[[`, `"\ud83d"`, `"\ude00\ud83d"`, `{"a" "b"}`, "\"\x7f\u2028\"",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) {
			return // refused before the parser
		}
		root, err := parse(text)
		var syntax *SyntaxError
		switch {
		case errors.Is(err, ErrTooMuch):
			return
		case errors.As(err, &syntax) && strings.Contains(syntax.Error(), "surrogate"):
			return
		}
		var want any
		decoder := json.NewDecoder(strings.NewReader(text))
		decoder.UseNumber()
		require.Equal(t, json.Valid([]byte(text)), err == nil, "%q: %v", text, err)
		if err != nil {
			require.LessOrEqual(t, syntax.Column, utf8.RuneCountInString(text)+1)
			require.LessOrEqual(t, syntax.Line, strings.Count(text, "\n")+1)
			return
		}
		require.NoError(t, decoder.Decode(&want))
		require.Equal(t, want, plain(root), "%q", text)
	})
}

// plain returns a node as encoding/json would have read it, where of a repeated
// key the last one counts.
func plain(n node) any {
	switch n.kind {
	case objectNode:
		object := map[string]any{}
		for _, m := range n.members {
			object[m.name] = plain(m.value)
		}
		return object
	case listNode:
		list := []any{}
		for _, item := range n.items {
			list = append(list, plain(item))
		}
		return list
	case textNode:
		return n.text
	case numberNode:
		return json.Number(n.text)
	case flagNode:
		b, _ := strconv.ParseBool(n.text)
		return b
	}
	return nil
}
