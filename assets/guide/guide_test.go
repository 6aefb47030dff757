package guide_test

import (
	"bytes"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/guide"
	"stopwright/assets/words"
	"stopwright/detent/check"
)

func TestEveryLanguageHasTheWholeGuide(t *testing.T) {
	english, err := guide.Pages("en")
	require.NoError(t, err)
	for _, language := range words.Languages() {
		pages, err := guide.Pages(language)
		require.NoError(t, err, language)
		for i, p := range pages {
			where := language + " " + p.Name
			assert.NotEmpty(t, p.Title, where)
			assert.NotContains(t, p.Title, "#", where)
			assert.NotEmpty(t, p.Text, where)
			assert.NotContains(t, p.Text, "|---", "%s: the window shows no tables", where)
			for _, mark := range []string{"\n## ", "\n- ", "\n1. ", "!["} {
				assert.Equal(t, strings.Count(english[i].Text, mark), strings.Count(p.Text, mark), "%s says as much as the English one: %q", where, mark)
			}
		}
	}
	_, err = guide.Pages("xx")
	assert.ErrorContains(t, err, `the guide in "xx"`)
}

// No file lies there that is no page and on no page.
func TestEveryFileIsShown(t *testing.T) {
	for _, language := range words.Languages() {
		pages, err := guide.Pages(language)
		require.NoError(t, err)
		var want []string
		for _, name := range guide.Names {
			want = append(want, name+".md")
		}
		for _, name := range guide.Pictures(pages) {
			want = append(want, name)
			data, err := guide.Picture(language, name)
			if assert.NoError(t, err, "make it: go run ./cmd/setup guide") {
				_, err = png.Decode(bytes.NewReader(data))
				assert.NoError(t, err, name)
			}
		}
		entries, err := os.ReadDir(language)
		require.NoError(t, err)
		var there []string
		for _, e := range entries {
			there = append(there, e.Name())
		}
		assert.ElementsMatch(t, want, there, language)
	}
}

func TestThePageOfChecksIsTheChecksOwn(t *testing.T) {
	for _, language := range words.Languages() {
		c, err := words.In(language)
		require.NoError(t, err)
		held, err := os.ReadFile(filepath.Join(language, guide.Checks+".md"))
		require.NoError(t, err)
		assert.Equal(t, check.Page(c), strings.ReplaceAll(string(held), "\r\n", "\n"), "write it anew: go run ./cmd/setup guide")
	}
}
