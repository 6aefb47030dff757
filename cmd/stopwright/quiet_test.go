package main

import (
	"bytes"
	"log"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The toolkit logs a message, its cause and its place as lines of their own.
func TestNoiseIsDroppedAndTheRestIsKept(t *testing.T) {
	var out bytes.Buffer
	l := log.New(&sieve{to: &out}, "", log.LstdFlags)
	for _, line := range []string{
		"Fyne error:  Preferences load error:",
		"  Cause: EOF",
		"  At: app/preferences.go:120",
		"Fyne error:  Failed to focus",
		"  Cause: it is gone",
		"  At: canvas.go:1",
		"Fyne error:  Getting favorite locations",
		"  Cause: no MUSIC folder",
		"something else",
	} {
		l.Println(line)
	}
	got := out.String()
	for _, kept := range []string{"Failed to focus", "it is gone", "canvas.go", "something else"} {
		assert.Contains(t, got, kept)
	}
	for _, dropped := range []string{"Preferences", "EOF", "preferences.go", "favorite", "MUSIC"} {
		assert.NotContains(t, got, dropped)
	}
}

// A writer must say that it took what it dropped, or the log believes it failed.
func TestTheSieveTakesEveryByte(t *testing.T) {
	var out bytes.Buffer
	s := &sieve{to: &out}
	for _, line := range []string{"Preferences load error", "  Cause: EOF", "kept"} {
		n, err := s.Write([]byte(line))
		require.NoError(t, err)
		assert.Len(t, line, n)
	}
	assert.Equal(t, "kept", out.String())
}
