package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/ui/crash"
)

func TestAFaultEndsInOrderAndIsWrittenDown(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "recovery")
	var stderr bytes.Buffer
	ended := 0
	code := guarded(folder, &stderr, func() { ended++ }, func() {
		var none []int
		_ = none[len(stderr.String())]
	})
	assert.Equal(t, faulty, code)
	assert.Equal(t, 1, ended, "the last edit is kept all the same")
	assert.Equal(t, 1, strings.Count(stderr.String(), "\n"), "one sentence")

	reports := crash.Find(folder)
	require.Len(t, reports, 1)
	text, err := os.ReadFile(reports[0])
	require.NoError(t, err)
	assert.Contains(t, string(text), "index out of range [0] with length 0")
	assert.Contains(t, string(text), "stopwright/cmd/stopwright.TestAFaultEndsInOrderAndIsWrittenDown.func2 (stopwright/guarded_test.go:")
	assert.Contains(t, stderr.String(), filepath.Base(crash.Settled(reports[0])))
}

func TestAFaultWithNowhereToWriteItIsTold(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	for _, folder := range []string{"", filepath.Join(file, "no folder")} {
		var stderr bytes.Buffer
		code := guarded(folder, &stderr, func() {}, func() { panic("a wheel has come off") })
		assert.Equal(t, faulty, code)
		assert.Contains(t, stderr.String(), "a wheel has come off")
		assert.Contains(t, stderr.String(), "guarded_test.go:")
	}
}

func TestARunWithoutFaultLeavesNothing(t *testing.T) {
	folder := t.TempDir()
	var stderr bytes.Buffer
	ended := false
	assert.Equal(t, ok, guarded(folder, &stderr, func() { ended = true }, func() {}))
	assert.True(t, ended)
	assert.Empty(t, stderr.String())
	left, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Empty(t, left)
}
