package plan_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/assets/words/wordstest"
	"stopwright/detent/plan"
)

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
		wordstest.SaidInGerman(t, err)
	}
}
