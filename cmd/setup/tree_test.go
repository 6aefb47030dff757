package main

import (
	"context"
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
)

// toolchain is a machine with its own answer to go env.
type toolchain struct {
	fake
	answer string
	err    error
}

func (m *toolchain) output(context.Context, command) (string, error) { return m.answer, m.err }

func TestTree(t *testing.T) {
	const (
		noGo   = "The go command is not on the path: install Go, then give the same command again."
		noTree = "Start this from the project's folder, where go.mod is."
		tooOld = "This needs Go 1.25.0 or newer, and here is 1.24.9: install a newer Go, then give the same command again."
	)
	for _, c := range []struct {
		why, answer string
		err         error
		complaint   string // empty: found
	}{
		{"newer", goMod + "\ngo1.26.8\n", nil, ""},
		{"exactly the oldest", goMod + "\ngo1.25.0\n", nil, ""},
		{"the one before", goMod + "\ngo1.24.9\n", nil, tooOld},
		{"words after the version do not hide it", goMod + "\ngo1.24.9 X:nogreenteagc\n", nil, tooOld},
		{"a version of the developers' own is theirs to answer for", goMod + "\ndevel +a1b2c3\n", nil, ""},
		{"lines as Windows ends them", goMod + "\r\ngo1.26.8\r\n", nil, ""},
		{"outside any project", "/dev/null\ngo1.26.8\n", nil, noTree},
		{"modules switched off", "\ngo1.26.8\n", nil, noTree},
		{"no go", "", errors.New("not found"), noGo},
	} {
		s := &setup{machine: &toolchain{answer: c.answer, err: c.err}}
		dir, err := s.tree(t.Context())
		if c.complaint != "" {
			assert.EqualError(t, err, c.complaint, c.why)
			continue
		}
		assert.NoError(t, err, c.why)
		assert.Equal(t, root, dir, c.why)
	}
}

// other is a machine standing in another project.
type other struct{ fake }

func (*other) readFile(string) (string, error) { return "module stopwrights\n\ngo 1.25.0\n", nil }

func TestAnotherProjectIsNotBuilt(t *testing.T) {
	_, err := (&setup{machine: &other{}}).tree(t.Context())
	assert.ErrorContains(t, err, "Start this from the project's folder")
}
