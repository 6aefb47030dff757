package check

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
)

// Every check is described in every language, and no words are missing.
func TestThePageDescribesEveryCheck(t *testing.T) {
	for _, language := range words.Languages() {
		c, err := words.In(language)
		require.NoError(t, err)
		page := Page(c)
		assert.NotContains(t, page, "[", "%s: words are missing", language)
		assert.NotContains(t, page, "{{", language)
		parts := strings.Split(page, "\n## ")
		require.Len(t, parts, 1+len(All))
		for i, k := range All {
			for _, part := range []string{
				c.Text("check." + k.ID + ".title"), c.Text("check." + k.ID + ".why"), c.Text("remedy." + k.ID),
				c.Text("checkpage." + string(k.Severity)), "`" + k.ID + "`",
			} {
				assert.Contains(t, parts[i+1], part, k.ID)
			}
			assert.Equal(t, k.fix != nil, strings.Contains(parts[i+1], c.Text("checkpage.mends")), k.ID)
		}
	}
}
