package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// built builds the program as it is meant to be, without a C compiler, and
// returns its path.
func built(t *testing.T) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), program)
	if runtime.GOOS == "windows" {
		path += ".exe"
	}
	build := exec.Command("go", "build", "-o", path, ".")
	build.Env = append(os.Environ(), "CGO_ENABLED=0")
	said, err := build.CombinedOutput()
	require.NoError(t, err, string(said))
	return path
}

func TestTheBuiltProgramRuns(t *testing.T) {
	said, err := exec.Command(built(t), "new").Output()
	require.NoError(t, err)
	assert.Equal(t, demo(t, "sanding-table"), string(said))
}

// With the window's toolkit among what it is made of, the program could not be
// had on a machine without a display.
func TestNothingOfTheWindowIsBuiltIn(t *testing.T) {
	said, err := exec.Command("go", "list", "-deps", ".").Output()
	require.NoError(t, err)
	packages := strings.Fields(string(said))
	require.Contains(t, packages, "stopwright/export", "the list is one of packages")
	for _, p := range packages {
		assert.False(t, strings.HasPrefix(p, "fyne.io/") || strings.HasPrefix(p, "stopwright/ui") || p == "runtime/cgo", p)
	}
}
