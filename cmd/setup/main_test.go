package main

import (
	"errors"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ready is a desktop machine that lacks nothing.
func ready() *fake {
	return &fake{
		os: "linux", release: "ID=debian", complete: true,
		vars:      map[string]string{"DISPLAY": ":0"},
		listening: []string{"/tmp/.X11-unix/X0"},
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{nil, {"help"}, {"Run"}, {""}, {"-h", "run"}} {
		m := ready()
		code, out, errOut := perform(t, m, args...)
		assert.Equal(t, exitUsage, code, args)
		assert.Empty(t, out, args)
		assert.Equal(t, usage, errOut, args)
		assert.Empty(t, m.ran, args)
	}
}

func TestRunBuildsAndOpensTheWindow(t *testing.T) {
	for _, c := range []struct {
		why  string
		args []string
		want string
	}{
		{"nothing named: a plan that shows what it does", nil, program + " -demo sanding-table"},
		{"a plan of one's own", []string{"my table.stopwright"}, program + ` "my table.stopwright"`},
		{"another demonstration", []string{"-demo", "camera-head"}, program + " -demo camera-head"},
	} {
		m := ready()
		code, out, errOut := perform(t, m, append([]string{"run"}, c.args...)...)
		assert.Zero(t, code, c.why)
		assert.Empty(t, errOut, c.why)
		assert.Contains(t, out, "about four minutes the first time", c.why)
		require.Len(t, m.ran, 2, c.why)
		assert.Equal(t, "go build -buildvcs=false -tags=no_animations,no_emoji -o "+program+" ./cmd/stopwright", m.typed()[0], c.why)
		assert.Equal(t, root, m.ran[0].dir, "built in the project")
		assert.Equal(t, c.want, m.typed()[1], c.why)
		assert.Empty(t, m.ran[1].dir, "opened where the person stands, so that their plan is found")
	}
}

func TestRunOnWindowsOpensNoConsole(t *testing.T) {
	m := &fake{os: "windows", complete: true}
	code, _, _ := perform(t, m, "run")
	assert.Zero(t, code)
	assert.Equal(t, []string{
		"go build -buildvcs=false -tags=no_animations,no_emoji -ldflags=-H=windowsgui -o " + program + ".exe ./cmd/stopwright",
		program + ".exe -demo sanding-table",
	}, m.typed())
}

func TestRunPassesTheProgramsExitCodeOn(t *testing.T) {
	m := ready()
	m.statuses = map[string]int{"-demo": exitNoDisplay}
	code, _, errOut := perform(t, m, "run")
	assert.Equal(t, exitNoDisplay, code)
	assert.Empty(t, errOut, "the program has said why")
}

func TestRunSaysThatABuildFailed(t *testing.T) {
	m := ready()
	m.statuses = map[string]int{"go build": 1}
	code, _, errOut := perform(t, m, "run")
	assert.Equal(t, exitFailed, code)
	assert.Equal(t, "The window could not be built; the lines above say why.\n", errOut)
	assert.Len(t, m.ran, 1)
}

func TestTestsRunOnAVirtualDisplay(t *testing.T) {
	for _, c := range []struct {
		why  string
		args []string
		want string
	}{
		{"everything unless told otherwise", nil, "go test ./..."},
		{"flags concern everything too", []string{"-run", "Seat", "-v"}, "go test ./... -run Seat -v"},
		{"packages named by folder", []string{"-race", "./detent/...", "./export/..."}, "go test -race ./detent/... ./export/..."},
		{"packages named in full", []string{"stopwright/detent", "-v"}, "go test stopwright/detent -v"},
		{"this folder", []string{"."}, "go test ."},
	} {
		m := ready()
		code, _, errOut := perform(t, m, append([]string{"test"}, c.args...)...)
		assert.Zero(t, code, c.why)
		assert.Empty(t, errOut, c.why)
		assert.Equal(t, []string{c.want}, m.typed(), c.why)
		assert.Equal(t, root, m.ran[0].dir, c.why)
		assert.Subset(t, m.ran[0].vars,
			[]string{"DISPLAY=:7", "STOPWRIGHT_WINDOW_TEST=1", "STOPWRIGHT_FULL_TESTS=1", "CGO_ENABLED=1"}, c.why)
		assert.True(t, m.ended, "no display is left behind")
	}
}

func TestTestsWithoutX11LeaveTheRealWindowOut(t *testing.T) {
	m := &fake{os: "darwin", succeeds: []string{"xcode-select -p"}}
	code, _, _ := perform(t, m, "test")
	assert.Zero(t, code)
	require.Len(t, m.ran, 1)
	assert.Equal(t, append(append([]string{}, plainLocale...), "CGO_ENABLED=1"), m.ran[0].vars)
}

func TestTestsPassTheirExitCodeOn(t *testing.T) {
	m := ready()
	m.statuses = map[string]int{"go test": 2}
	code, _, errOut := perform(t, m, "test")
	assert.Equal(t, 2, code)
	assert.Empty(t, errOut, "the last lines seen are those of go test")
	assert.True(t, m.ended)
}

func TestTestsSayThatTheDisplayDidNotStart(t *testing.T) {
	m := ready()
	m.noVirtualDisplay = errors.New("no room for it")
	code, _, errOut := perform(t, m, "test")
	assert.Equal(t, exitFailed, code)
	assert.Equal(t, "The virtual display could not be started: no room for it.\n", errOut)
	assert.Empty(t, m.ran)
}

func TestShotsNeedGoAlone(t *testing.T) {
	m := &fake{os: "linux"}
	code, _, _ := perform(t, m, "shots", "pages")
	assert.Zero(t, code)
	assert.Equal(t, []string{"go run -tags ci ./cmd/stopwright -shots " + filepath.Join(filepath.Dir(root), "pages")}, m.typed(),
		"the folder is the person's, wherever the project stands")
	assert.Equal(t, []string{"CGO_ENABLED=0"}, m.ran[0].vars)

	for _, args := range [][]string{{"shots"}, {"shots", "a", "b"}} {
		code, _, errOut := perform(t, m, args...)
		assert.Equal(t, exitUsage, code, args)
		assert.Contains(t, errOut, "Give the folder", args)
	}
}
