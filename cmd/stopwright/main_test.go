package main

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
)

// asProgram makes this test's own binary the program: a test can start it with
// a surrounding of its own.
const asProgram = "STOPWRIGHT_AS_PROGRAM"

func TestMain(m *testing.M) {
	switch as := os.Getenv(asProgram); as {
	case "":
		os.Exit(m.Run())
	case emptyWindow, emptyLarge:
		showEmptyWindow(as == emptyLarge)
	default:
		main()
	}
}

func TestWhatCannotBeUsed(t *testing.T) {
	folder := t.TempDir()
	file := func(name, text string) string {
		path := filepath.Join(folder, name)
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		return path
	}
	for _, c := range []struct {
		why  string
		args []string
		says string
	}{
		{"no such file", []string{filepath.Join(folder, "none")}, "none"},
		{"a folder", []string{folder}, filepath.Base(folder)},
		{"a letter", []string{file("letter", "Dear maker,")}, "letter"},
		{"an empty file", []string{file("empty", "")}, "empty"},
		{"a picture", []string{file("picture", "\x89PNG\r\n\x1a\n\x00\x00")}, "picture"},
		{"another program's JSON", []string{file("other", `{"format": "other"}`)}, "format"},
		{"no such demonstration", []string{"-demo", "none"}, "sanding-table"},
	} {
		var stderr bytes.Buffer
		assert.Equal(t, unusable, run(c.args, &stderr), c.why)
		assert.Contains(t, stderr.String(), c.says, c.why)
		assert.NotContains(t, stderr.String(), "goroutine", c.why)
	}
	var stderr bytes.Buffer
	assert.Equal(t, unusable, run([]string{"-colour", "blue"}, &stderr))
	assert.Contains(t, stderr.String(), "-demo", "the flags there are, are told")
}

func TestLoad(t *testing.T) {
	p, file, err := load("camera-head", "")
	require.NoError(t, err)
	assert.NotEmpty(t, p.Stops)
	assert.Empty(t, file.Path, "a demonstration is a new plan")

	own := filepath.Join(t.TempDir(), "own.stopwright")
	require.NoError(t, export.SavePlan(own, plan.Default()))
	p, file, err = load("camera-head", own)
	require.NoError(t, err)
	assert.True(t, plan.Equal(plan.Default(), p), "a file goes before a demonstration")
	assert.Equal(t, own, file.Path)
}
