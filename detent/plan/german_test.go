package plan_test

import (
	"encoding/json"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// englishWords are ones that no German sentence has.
var englishWords = regexp.MustCompile(`\b(must|the|is|it|of|be|found|expected|cannot|there|with|file|only)\b`)

// saidInGerman: an error has a German sentence of its own, with nothing English
// left in it but what it quotes.
func saidInGerman(t testing.TB, err error) {
	t.Helper()
	german, inErr := words.In("de")
	require.NoError(t, inErr)
	text := german.Told(err)
	assert.NotEqual(t, err.Error(), text)
	unquoted := regexp.MustCompile(`"[^"]*"`).ReplaceAllString(text, "")
	assert.NotRegexp(t, englishWords, unquoted)
	assert.NotRegexp(t, `\[[a-z.]+\.[a-z.]+\]`, unquoted, "a text is missing")
}

// Whatever a key may be is said in German: its range, its unit, its words.
func TestEveryKeyIsSaidInGerman(t *testing.T) {
	for _, k := range plan.Keys() {
		var root map[string]any
		require.NoError(t, json.Unmarshal([]byte(minimal), &root))
		steps := strings.Split(k.Path, ".")
		at := root
		for _, step := range steps[:len(steps)-1] {
			name, listed := strings.CutSuffix(step, "[]")
			child := map[string]any{}
			if at[name] = child; listed {
				at[name] = []any{child}
			}
			at = child
		}
		last, listed := strings.CutSuffix(steps[len(steps)-1], "[]")
		wrong := map[string]any{} // no key holds an object
		if at[last] = wrong; listed {
			at[last] = []any{wrong}
		}
		text, err := json.Marshal(root)
		require.NoError(t, err)
		_, err = plan.Decode(strings.NewReader(string(text)))
		require.Error(t, err, k.Path)
		saidInGerman(t, err)
	}
}
