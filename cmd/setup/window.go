package main

import (
	"context"
	"path/filepath"
	"time"
)

// demonstration opens the window on a plan that shows what it does.
var demonstration = []string{"-demo", "sanding-table"}

// tags are of the toolkit. Without no_animations a blinking cursor has the whole
// window painted again and again. Without no_emoji the toolkit keeps a font of
// coloured pictographs in memory, twice, 12 MB, for words that hardly ever have
// one; they come from the system's fonts instead.
const tags = "no_animations,no_emoji"

// buildNotice is how often a long build says that it still goes on.
const buildNotice = 30 * time.Second

// runWindow builds the window and opens it, on the plan given or else on a
// demonstration.
func (s *setup) runWindow(ctx context.Context, args []string) error {
	root, err := s.tree(ctx)
	if err != nil {
		return err
	}
	if err := s.display(); err != nil {
		return err
	}
	if err := s.provide(ctx, "To build the window and open it", toBuild); err != nil {
		return err
	}
	program, err := s.build(ctx, root)
	if err != nil {
		return err
	}
	if len(args) == 0 {
		args = demonstration
	}
	s.say("Opening the window.")
	return s.pass(ctx, typed(append([]string{program}, args...)...))
}

// build makes the window's program and returns its path.
func (s *setup) build(ctx context.Context, root string) (program string, err error) {
	cache, err := s.machine.cacheDir()
	if err != nil {
		return "", failed("There is no place to build in: %v.", err)
	}
	program = filepath.Join(cache, module, module)
	words := []string{
		"go", "build",
		"-buildvcs=false", // a clone owned by somebody else must build too
		"-tags=" + tags,
	}
	if platformOf(s.machine) == windows {
		program += ".exe"
		words = append(words, "-ldflags=-H=windowsgui") // else a console opens with the window
	}
	s.say("Building the window: about four minutes the first time, a few seconds later on.")
	done := s.tick()
	err = s.pass(ctx, command{
		words: append(words, "-o", program, "./cmd/stopwright"),
		dir:   root,
		// Where Go found no C compiler it turns C off, and says so in a way
		// that helps nobody.
		vars: []string{"CGO_ENABLED=1"},
	})
	done()
	if err != nil {
		return "", failed("The window could not be built; the lines above say why.")
	}
	return program, nil
}

// tick says every now and then that the build goes on, until it is told to stop.
func (s *setup) tick() (stop func()) {
	ended, quiet := make(chan struct{}), make(chan struct{})
	begun := time.Now()
	go func() {
		defer close(quiet)
		ticker := time.NewTicker(buildNotice)
		defer ticker.Stop()
		for {
			select {
			case now := <-ticker.C:
				s.say("  still building after %v", now.Sub(begun).Round(time.Second))
			case <-ended:
				return
			}
		}
	}()
	return func() {
		close(ended)
		<-quiet
	}
}

// pass runs a command in the person's sight. Its exit code becomes setup's.
func (s *setup) pass(ctx context.Context, c command) error {
	status, err := s.machine.run(ctx, c)
	switch {
	case err != nil:
		return failed("%s could not be started: %v.", c.words[0], err)
	case status != 0:
		return failure{code: status}
	}
	return nil
}
