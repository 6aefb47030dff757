package main

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Whatever goes into a program on this system has its licence in assets, word
// for word.
func TestEveryModuleHasItsLicence(t *testing.T) {
	var out bytes.Buffer
	s := &setup{machine: host{}, out: &out}
	root, err := filepath.Abs(projectRoot)
	require.NoError(t, err)
	all, err := s.dependencies(t.Context(), root, runtime.GOOS)
	require.NoError(t, err)
	require.Greater(t, len(all), 10, "they were found")
	for _, d := range all {
		text, err := os.ReadFile(filepath.Join(projectRoot, licencesDir, licenceFile(d.path)))
		if !assert.NoError(t, err, "collect them: go run ./cmd/setup licences") {
			continue
		}
		if d.path == "Go" { // whose copy on this machine may be another release
			assert.Contains(t, string(text), "The Go Authors")
			continue
		}
		want, err := d.licence()
		require.NoError(t, err)
		assert.Equal(t, plainLines(want), plainLines(string(text)), d.path)
	}
}

// plainLines leaves out how lines end, which version control may change.
func plainLines(s string) string { return strings.ReplaceAll(s, "\r", "") }

func TestTheLicenceOfAModuleIsAllThatItHolds(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{
		"LICENSE": "mine\n", "part/COPYING.txt": "another's", "part/license.go": "package part",
		"cmd/LICENSE": "of no part", "testdata/LICENSE": "of no part", "README": "read",
	} {
		path := filepath.Join(dir, filepath.FromSlash(name))
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	}
	text, err := dependency{"example.org/part", dir}.licence()
	require.NoError(t, err)
	assert.Equal(t, "example.org/part\n\n---- LICENSE ----\n\nmine\n\n---- part/COPYING.txt ----\n\nanother's\n", text)

	_, err = dependency{"example.org/none", t.TempDir()}.licence()
	assert.ErrorContains(t, err, "example.org/none has no licence")
}

func TestLicencesTakesNoMoreWords(t *testing.T) {
	code, _, errOut := perform(t, ready(), "licences", "all")
	assert.Equal(t, exitUsage, code)
	assert.Contains(t, errOut, "no more words")
}
