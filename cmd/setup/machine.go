package main

import (
	"context"
	"strings"
)

// machine is what setup asks of the computer it runs on, and does to it. Tests
// put a made-up computer in its place.
type machine interface {
	// system is the operating system, by Go's name for it.
	system() string
	// root reports whether packages can be installed without asking anyone.
	root() bool
	// terminal reports whether somebody sits there to type a password.
	terminal() bool
	// env is a variable of the environment, empty where unset.
	env(name string) string
	// finds reports whether a program stands on the path.
	finds(program string) bool
	// readFile is the text of a file.
	readFile(path string) (string, error)
	// absolute is the path as seen from any folder.
	absolute(path string) (string, error)
	// cacheDir is this person's folder for things that can be made again.
	cacheDir() (string, error)
	// answers reports whether somebody listens at a socket of this computer: a
	// path, or a name without file, which begins with @.
	answers(socket string) bool
	// output runs a command to its end without showing it, and returns what it
	// printed; the error tells that it failed, not why.
	output(ctx context.Context, c command) (string, error)
	// run shows a command's output and waits for it. The error tells that it
	// could not be started; the status is its exit code.
	run(ctx context.Context, c command) (status int, err error)
	// virtualDisplay starts a display that nobody sees, and returns its name
	// for DISPLAY and what ends it again.
	virtualDisplay(ctx context.Context) (name string, end func(), err error)
}

// command is a program to run, as a person would type it.
type command struct {
	words []string
	dir   string   // working folder; empty: the present one
	vars  []string // NAME=value, on top of the environment
}

// typed makes a command out of the program and its arguments.
func typed(words ...string) command { return command{words: words} }

// String is the command as typed, with what contains a blank in quotes.
func (c command) String() string {
	quoted := make([]string, len(c.words))
	for i, w := range c.words {
		quoted[i] = w
		if strings.Contains(w, " ") {
			quoted[i] = `"` + w + `"`
		}
	}
	return strings.Join(quoted, " ")
}
