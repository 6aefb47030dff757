package recent_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
	"stopwright/ui/recent"
)

// listFile is where the list is kept, in a folder that is not there yet.
func listFile(t *testing.T) string {
	t.Helper()
	return filepath.Join(t.TempDir(), "stopwright", "recent.json")
}

// file returns an absolute path of this system.
func file(t *testing.T, name string) string {
	t.Helper()
	path, err := filepath.Abs(name)
	require.NoError(t, err)
	return path
}

func TestTheLastFileStandsFirstAndOnce(t *testing.T) {
	l := recent.Open(listFile(t))
	a, b, c := file(t, "a"), file(t, "b"), file(t, "c")
	for _, f := range []string{a, b, c, a} {
		require.NoError(t, l.Add(f))
	}
	assert.Equal(t, []string{a, c, b}, l.Files())
}

func TestNoMoreThanTenAreKept(t *testing.T) {
	path := listFile(t)
	l := recent.Open(path)
	var want []string
	for i := range 12 {
		f := file(t, fmt.Sprint(i))
		require.NoError(t, l.Add(f))
		want = append([]string{f}, want...)
	}
	assert.Equal(t, want[:10], l.Files())
	assert.Equal(t, want[:10], recent.Open(path).Files())
}

func TestTheListOutlivesTheProgram(t *testing.T) {
	path := listFile(t)
	odd := file(t, "Drehteller <neu> & größer.stopwright")
	require.NoError(t, recent.Open(path).Add(odd))
	assert.Equal(t, []string{odd}, recent.Open(path).Files())
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Contains(t, string(text), "<neu> & größer", "as a person would write it")
}

func TestTwoProgramsKeepEachOthersFiles(t *testing.T) {
	path := listFile(t)
	one, two := recent.Open(path), recent.Open(path)
	a, b, c := file(t, "a"), file(t, "b"), file(t, "c")
	require.NoError(t, one.Add(a))
	require.NoError(t, two.Add(b))
	require.NoError(t, one.Add(c))
	assert.Equal(t, []string{c, b, a}, one.Files())
	require.NoError(t, two.Remove(a))
	assert.Equal(t, []string{c, b}, two.Files())
	require.NoError(t, two.Clear())
	require.NoError(t, one.Add(a))
	assert.Equal(t, []string{a}, one.Files(), "what was cleared does not come back")
}

func TestRemoveAndClear(t *testing.T) {
	path := listFile(t)
	l := recent.Open(path)
	a, b := file(t, "a"), file(t, "b")
	require.NoError(t, l.Add(a))
	require.NoError(t, l.Add(b))
	require.NoError(t, l.Remove(a))
	require.NoError(t, l.Remove(a), "one that is not there")
	assert.Equal(t, []string{b}, recent.Open(path).Files())
	require.NoError(t, l.Clear())
	assert.Empty(t, recent.Open(path).Files())
}

func TestPathsAreMadeWhole(t *testing.T) {
	l := recent.Open("")
	require.NoError(t, l.Add("a"))
	assert.Equal(t, []string{file(t, "a")}, l.Files())
	require.NoError(t, l.Add("not UTF-8 \xff"))
	assert.Equal(t, []string{file(t, "a")}, l.Files())
}

func TestADamagedListIsAnEmptyOne(t *testing.T) {
	a := file(t, "a")
	entry, err := filepath.Abs("b")
	require.NoError(t, err)
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"empty":        {"", nil},
		"half":         {`{"files": ["/a`, nil},
		"another kind": {`[1, 2]`, nil},
		"wrong type":   {`{"files": 7}`, nil},
		"by hand":      {fmt.Sprintf(`{"files": ["relative", "", %q, %q]}`, entry, entry), []string{entry}},
		"too many":     {`{"files": [` + strings.TrimSuffix(strings.Repeat(fmt.Sprintf("%q,", entry), 50), ",") + `]}`, []string{entry}},
		"endless":      {`{"files": ["` + strings.Repeat("a", 2<<20) + `"]}`, nil},
	} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "recent.json")
			require.NoError(t, os.WriteFile(path, []byte(c.text), 0o600))
			l := recent.Open(path)
			assert.Equal(t, c.want, l.Files())
			require.NoError(t, l.Add(a))
			assert.Equal(t, append([]string{a}, c.want...), recent.Open(path).Files(), "and it mends itself")
		})
	}
}

func TestAListWhoseFileWasRemovedIsCleared(t *testing.T) {
	path := listFile(t)
	l := recent.Open(path)
	require.NoError(t, l.Add(file(t, "a")))
	require.NoError(t, os.Remove(path))
	require.NoError(t, l.Add(file(t, "b")))
	assert.Equal(t, []string{file(t, "b")}, l.Files())
}

// A list that cannot be kept still serves while the program runs.
func TestAListThatCannotBeKept(t *testing.T) {
	inTheWay := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(inTheWay, nil, 0o600))
	l := recent.Open(filepath.Join(inTheWay, "recent.json"))
	a, b := file(t, "a"), file(t, "b")
	for _, f := range []string{a, b} {
		var failed *export.FileError
		require.ErrorAs(t, l.Add(f), &failed)
		assert.Contains(t, failed.Error(), "part of the path is a file, not a folder")
	}
	assert.Equal(t, []string{b, a}, l.Files())
}
