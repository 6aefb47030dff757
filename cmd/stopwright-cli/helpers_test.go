package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/detent/plan"
)

// result is what a run left behind. Notes are lines of stderr that tell of
// nothing wrong, and err is the rest of it.
type result struct {
	status   int
	out, err string
	notes    string
}

func newResult(status int, out, stderr string) result {
	r := result{status: status, out: out}
	for line := range strings.Lines(stderr) {
		if strings.HasPrefix(line, "note ") {
			r.notes += line
		} else {
			r.err += line
		}
	}
	return r
}

// cli runs the program in this process.
func cli(stdin string, args ...string) result {
	var out, err bytes.Buffer
	status := run(args, strings.NewReader(stdin), &out, &err)
	return newResult(status, out.String(), err.String())
}

// silent asserts that nothing went wrong and nothing was said of it.
func (r result) silent(t *testing.T) {
	t.Helper()
	assert.Equal(t, statusGood, r.status)
	assert.Empty(t, r.err)
}

// complains asserts an exit code and that stderr, but for notes, is lines of the
// program's own, holding each of the words, and nothing else was written.
func (r result) complains(t *testing.T, status int, words ...string) {
	t.Helper()
	assert.Equal(t, status, r.status, r.err)
	assert.Empty(t, r.out)
	require.NotEmpty(t, r.err)
	for line := range strings.Lines(r.err) {
		assert.True(t, strings.HasPrefix(line, program+": ") && strings.HasSuffix(line, "\n"), line)
	}
	for _, w := range words {
		assert.Contains(t, r.err, w)
	}
}

// demo returns a demonstration's file.
func demo(t *testing.T, name string) string {
	t.Helper()
	file, err := plans.Open(name)
	require.NoError(t, err)
	return string(file)
}

// edited returns a demonstration's file with a change made to its plan.
func edited(t *testing.T, name string, change func(*plan.Plan)) string {
	t.Helper()
	p, err := plan.Decode(strings.NewReader(demo(t, name)))
	require.NoError(t, err)
	change(&p)
	var file bytes.Buffer
	require.NoError(t, plan.Encode(&file, p))
	return file.String()
}

// overlapping returns a plan in which the seats of 7.5 and 8 degrees run into
// each other.
func overlapping(t *testing.T) string {
	return edited(t, "vice-base", func(p *plan.Plan) { p.Stops = append(p.Stops, plan.Stop{Angle: 8}) })
}

// put makes a file and returns its path.
func put(t *testing.T, dir, name, content string) string {
	t.Helper()
	path := filepath.Join(dir, name)
	require.NoError(t, os.WriteFile(path, []byte(content), 0o644))
	return path
}

func get(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(b)
}

// entries returns the names of everything in a folder: a temporary file left
// behind would be among them.
func entries(t *testing.T, dir string) []string {
	t.Helper()
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	names := []string{}
	for _, e := range list {
		names = append(names, e.Name())
	}
	return names
}
