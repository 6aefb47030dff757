//go:build !ci

package main

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// program returns the program, not started yet: with a home of its own, the
// other variables given, and nothing else of ours that says where to show.
func program(t testing.TB, vars []string, args ...string) (*exec.Cmd, *bytes.Buffer) {
	t.Helper()
	self, err := os.Executable()
	require.NoError(t, err)
	home := t.TempDir()
	c := exec.Command(self, args...)
	c.Dir = home
	c.Env = append([]string{
		asProgram + "=1", "HOME=" + home, "XDG_CONFIG_HOME=" + home, "PATH=" + os.Getenv("PATH"), "LC_ALL=C.UTF-8",
	}, vars...)
	var stderr bytes.Buffer
	c.Stderr = &stderr
	return c, &stderr
}

// ended runs the program to its end and returns how it ended and what it said.
func ended(t testing.TB, vars []string, args ...string) (code int, said string) {
	t.Helper()
	c, stderr := program(t, vars, args...)
	err := c.Run()
	if exit := (*exec.ExitError)(nil); errors.As(err, &exit) {
		return exit.ExitCode(), stderr.String()
	}
	require.NoError(t, err)
	return 0, stderr.String()
}

// oneSentence checks that a person is told in a line what is wrong, and not
// where the program was.
func oneSentence(t testing.TB, said string) {
	t.Helper()
	assert.Equal(t, 1, strings.Count(said, "\n"), said)
	assert.True(t, strings.HasPrefix(said, "stopwright: "), said)
	assert.NotContains(t, said, "goroutine")
	assert.NotContains(t, said, ".go:")
}
