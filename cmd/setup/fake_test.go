package main

import (
	"bytes"
	"context"
	"errors"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// fake is a made-up computer. What is not put in is not there.
type fake struct {
	os        string
	release   string // text of /etc/os-release
	isRoot    bool
	hasPerson bool // at a terminal
	vars      map[string]string
	programs  []string
	files     []string
	succeeds  []string // commands whose output is asked for and that do not fail
	listening []string // sockets that answer

	complete         bool // everything that can be asked for is there
	stubborn         bool // installing leaves all as it was
	statuses         map[string]int
	noVirtualDisplay error

	ran   []command
	ended bool // the virtual display
}

const (
	goodMod = "module stopwright\n\ngo 1.25.0\n"
	askGo   = "go env GOMOD GOVERSION"
)

// The folders of the made-up computer, written as the real one writes them.
var (
	root    = filepath.FromSlash("/home/maker/stopwright")
	goMod   = filepath.Join(root, "go.mod")
	cache   = filepath.FromSlash("/home/maker/.cache")
	program = filepath.Join(cache, "stopwright", "stopwright")
)

func (f *fake) system() string         { return f.os }
func (f *fake) root() bool             { return f.isRoot }
func (f *fake) terminal() bool         { return f.hasPerson }
func (f *fake) env(name string) string { return f.vars[name] }

func (f *fake) finds(program string) bool { return f.complete || slices.Contains(f.programs, program) }

func (f *fake) readFile(path string) (string, error) {
	switch {
	case path == "/etc/os-release" && f.release != "":
		return f.release, nil
	case path == goMod:
		return goodMod, nil
	case f.complete || slices.Contains(f.files, path):
		return "", nil
	}
	return "", fs.ErrNotExist
}

func (f *fake) absolute(path string) (string, error) {
	return filepath.Join(filepath.Dir(root), path), nil
}
func (f *fake) cacheDir() (string, error) { return cache, nil }

func (f *fake) answers(socket string) bool { return slices.Contains(f.listening, socket) }

func (f *fake) output(_ context.Context, c command) (string, error) {
	switch {
	case c.String() == askGo:
		return goMod + "\ngo1.26.1\n", nil
	case f.complete || slices.Contains(f.succeeds, c.String()):
		return "", nil
	}
	return "", errors.New("exit status 1")
}

func (f *fake) run(_ context.Context, c command) (int, error) {
	f.ran = append(f.ran, c)
	if strings.Contains(c.String(), "install") && !f.stubborn {
		f.complete = true
	}
	for part, status := range f.statuses {
		if strings.Contains(c.String(), part) {
			return status, nil
		}
	}
	return 0, nil
}

func (f *fake) virtualDisplay(context.Context) (string, func(), error) {
	return ":7", func() { f.ended = true }, f.noVirtualDisplay
}

// typed returns the commands that were run, as a person would type them.
func (f *fake) typed() []string {
	var all []string
	for _, c := range f.ran {
		all = append(all, c.String())
	}
	return all
}

// perform runs setup on the machine and returns all that a person sees of it.
func perform(t *testing.T, m machine, args ...string) (code int, out, errOut string) {
	t.Helper()
	var o, e bytes.Buffer
	code = run(t.Context(), args, m, &o, &e)
	return code, o.String(), e.String()
}
