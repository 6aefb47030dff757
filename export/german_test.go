package export_test

import (
	"io/fs"
	"regexp"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/export"
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

// What an operating system may answer has a text in every language.
func TestReasonsAreSaidInGerman(t *testing.T) {
	for _, cause := range []error{
		syscall.ENOSPC, syscall.EDQUOT, syscall.EFBIG, syscall.EROFS, syscall.ENOTDIR, syscall.ENAMETOOLONG,
		syscall.ELOOP, syscall.EPIPE, fs.ErrPermission, fs.ErrNotExist,
	} {
		for _, doing := range []string{"read", "write", "remove"} {
			saidInGerman(t, &export.FileError{Doing: doing, Path: "plate.csv", Err: &fs.PathError{Op: "open", Path: "plate.csv", Err: cause}})
		}
	}
}
