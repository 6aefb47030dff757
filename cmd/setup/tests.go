package main

import (
	"context"
	"slices"
	"strings"
)

// Variables that the tests look for.
const (
	// windowTest says that a display is there which a test may fill with a
	// real window, and that xdotool is there to work it.
	windowTest = "STOPWRIGHT_WINDOW_TEST=1"
	// fullTests says that every independent reader of our files is there, so
	// that a test without one fails instead of staying out.
	fullTests = "STOPWRIGHT_FULL_TESTS=1"
)

// plainLocale makes tests read alike everywhere. The window toolkit grumbles
// about a locale that names no language, hence the second.
var plainLocale = []string{"LC_ALL=C.UTF-8", "LANGUAGE=en"}

// runTests runs go test over the whole project, or over the packages named,
// with the flags given.
func (s *setup) runTests(ctx context.Context, args []string) error {
	root, err := s.tree(ctx)
	if err != nil {
		return err
	}
	if err := s.provide(ctx, "To run every test", toTest); err != nil {
		return err
	}
	tests := command{
		words: append([]string{"go", "test"}, testArguments(args)...),
		dir:   root,
		vars:  slices.Concat(plainLocale, []string{"CGO_ENABLED=1"}),
	}
	if platformOf(s.machine).drawsByX11() {
		name, end, err := s.machine.virtualDisplay(ctx)
		if err != nil {
			return failed("The virtual display could not be started: %v.", err)
		}
		defer end()
		tests.vars = append(tests.vars, "DISPLAY="+name, windowTest, fullTests)
	}
	s.say("Testing. The first time, about four minutes of building come before it.")
	return s.pass(ctx, tests)
}

// testArguments puts the whole project in front of the arguments unless they
// name packages of it themselves.
func testArguments(args []string) []string {
	for _, a := range args {
		if a == "." || strings.HasPrefix(a, "./") || strings.HasPrefix(a, module+"/") {
			return args
		}
	}
	return append([]string{"./..."}, args...)
}
