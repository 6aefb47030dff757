package main

import (
	"context"
	"path/filepath"
)

// writeShots has the window draw every page into pictures. Built with the
// toolkit's own headless driver it needs neither a display nor a C compiler.
func (s *setup) writeShots(ctx context.Context, args []string) error {
	if len(args) != 1 {
		return failure{exitUsage, "Give the folder for the pictures: go run ./cmd/setup shots DIR"}
	}
	root, err := s.tree(ctx)
	if err != nil {
		return err
	}
	dir, err := s.machine.absolute(args[0])
	if err != nil {
		return failed("%s is not a folder to write to: %v.", args[0], err)
	}
	s.say("Drawing every page into %s: a minute or two the first time.", dir)
	return s.pass(ctx, unseen(root, "-shots", dir))
}

// writeGuide renews what is made of the user's guide, its pictures and the page
// of the checks, where they lie in the project.
func (s *setup) writeGuide(ctx context.Context, args []string) error {
	if len(args) > 0 {
		return failure{exitUsage, "This takes no more words: go run ./cmd/setup guide"}
	}
	root, err := s.tree(ctx)
	if err != nil {
		return err
	}
	dir := filepath.Join(root, "assets", "guide")
	s.say("Drawing the guide's pictures into %s: a minute or two the first time.", dir)
	return s.pass(ctx, unseen(root, "-guide", dir))
}

// unseen is the window's program without a display.
func unseen(root string, args ...string) command {
	return command{
		words: append([]string{"go", "run", "-tags", "ci", "./cmd/stopwright"}, args...),
		dir:   root,
		vars:  []string{"CGO_ENABLED=0"},
	}
}
