// Package wordstest checks, for tests only, that what a program says is said in
// every language.
package wordstest

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
)

// englishWords are ones that no German sentence has.
var englishWords = regexp.MustCompile(`\b(must|the|is|it|of|be|found|expected|cannot|there|with|file|only)\b`)

// SaidInGerman fails the test unless an error has a German sentence of its own,
// with nothing English left in it but what it quotes.
func SaidInGerman(t testing.TB, err error) {
	t.Helper()
	german, inErr := words.In("de")
	require.NoError(t, inErr)
	text := german.Told(err)
	assert.NotEqual(t, err.Error(), text)
	unquoted := regexp.MustCompile(`"[^"]*"`).ReplaceAllString(text, "")
	assert.NotRegexp(t, englishWords, unquoted)
	assert.NotRegexp(t, `\[[a-z.]+\.[a-z.]+\]`, unquoted, "a text is missing")
}
