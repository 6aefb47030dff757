package main

import (
	"context"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestHostTellsHowACommandEnded(t *testing.T) {
	status, err := host{}.run(t.Context(), typed("go", "version"))
	assert.NoError(t, err)
	assert.Zero(t, status)

	status, err = host{}.run(t.Context(), typed("go", "tool", "no-such-tool"))
	assert.NoError(t, err, "it ran, whatever it made of it")
	assert.Equal(t, 2, status, "go's own code for wrong usage")

	_, err = host{}.run(t.Context(), typed("no-such-program-anywhere"))
	assert.Error(t, err, "it could not even start")

	stopped, stop := context.WithCancel(t.Context())
	stop()
	status, err = host{}.run(stopped, typed("go", "version"))
	assert.NoError(t, err, "nobody needs to be told that they stopped it")
	assert.Equal(t, exitFailed, status)
}

func TestHostRunsACommandInItsPlace(t *testing.T) {
	dir := t.TempDir()
	text, err := host{}.output(t.Context(), command{
		words: []string{"go", "env", "GOMOD", "GOFLAGS"}, dir: dir,
		vars: []string{"GOFLAGS=-tags=ours", "GO111MODULE=on"},
	})
	require.NoError(t, err)
	assert.Equal(t, []string{os.DevNull, "-tags=ours"}, strings.Fields(text),
		"outside the project, and with the variables on top of the environment")
}

// Go builds what imports C as soon as it finds a compiler, and one without its
// headers is among the things that setup mends.
func TestSetupIsBuiltWithoutC(t *testing.T) {
	list := command{words: []string{"go", "list", "-deps", "."}, vars: []string{"CGO_ENABLED=1"}}
	packages, err := host{}.output(t.Context(), list)
	require.NoError(t, err)
	assert.Contains(t, strings.Fields(packages), "os/exec", "the list is one of packages")
	assert.NotContains(t, strings.Fields(packages), "runtime/cgo")
}

// The virtual display is there wherever the real window is tested.
func TestVirtualDisplayComesAndGoes(t *testing.T) {
	if os.Getenv("STOPWRIGHT_WINDOW_TEST") == "" {
		t.Skip("no virtual display is promised here: go run ./cmd/setup test brings one")
	}
	s := &setup{machine: host{}}
	name, end, err := host{}.virtualDisplay(t.Context())
	require.NoError(t, err)
	assert.Regexp(t, `^:\d+$`, name)
	assert.True(t, s.displayAnswers(name))
	end()
	assert.False(t, s.displayAnswers(name), "it is not left behind")
}
