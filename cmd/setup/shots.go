package main

import "context"

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
	return s.pass(ctx, command{
		words: []string{"go", "run", "-tags", "ci", "./cmd/stopwright", "-shots", dir},
		dir:   root,
		vars:  []string{"CGO_ENABLED=0"},
	})
}
