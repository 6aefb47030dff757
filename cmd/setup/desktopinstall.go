package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// byHand is said where this command puts nothing in place.
const byHand = "On %s the program is packaged by hand: README.md says how."

// installDesktop builds the program and puts it, its icon, its entry in the
// menu and its file type into this person's own folders.
func (s *setup) installDesktop(ctx context.Context, args []string) error {
	dirs, root, err := s.desktop(ctx, args)
	if err != nil {
		return err
	}
	toml, err := s.machine.readFile(filepath.Join(root, "FyneApp.toml"))
	if err != nil {
		return failed("FyneApp.toml cannot be read: %v.", err)
	}
	if err := s.provide(ctx, "To build the program", toBuild); err != nil {
		return err
	}
	program, err := s.build(ctx, root)
	if err != nil {
		return err
	}
	for _, p := range dirs.installation(root, program, described(toml)) {
		if err := p.put(); err != nil {
			return failed("%s could not be put in place: %v.", p.path, err)
		}
		s.say("  %s", p.path)
	}
	s.renew(ctx, dirs)
	s.say("Installed. The program is called %s, and stands in the menu of the desktop.", module)
	return nil
}

// uninstallDesktop removes all that installDesktop puts in place. Plans and
// settings stay.
func (s *setup) uninstallDesktop(ctx context.Context, args []string) error {
	dirs, root, err := s.desktop(ctx, args)
	if err != nil {
		return err
	}
	removed := 0
	for _, p := range dirs.installation(root, "", nil) {
		switch err := os.Remove(p.path); {
		case err == nil:
			s.say("  %s", p.path)
			removed++
		case !errors.Is(err, fs.ErrNotExist):
			return failed("%s could not be removed: %v.", p.path, err)
		}
	}
	if removed == 0 {
		s.say("Nothing was installed.")
		return nil
	}
	s.renew(ctx, dirs)
	s.say("Removed. Plans and settings are where they were.")
	return nil
}

// desktop finds the folders of this person's desktop and of the project.
func (s *setup) desktop(ctx context.Context, args []string) (dirs desktopDirs, root string, err error) {
	if len(args) > 0 {
		return dirs, "", failure{exitUsage, "This takes no more words: go run ./cmd/setup install, or uninstall"}
	}
	if p := platformOf(s.machine); !p.drawsByX11() {
		return dirs, "", failed(byHand, p)
	}
	dirs, found := desktopDirsOf(s.machine)
	if !found {
		return dirs, "", failed("There is no home folder to install into: HOME is not set.")
	}
	root, err = s.tree(ctx)
	return dirs, root, err
}

// renew has the desktop take notice. It does so by itself sooner or later where
// a program for it is missing or fails.
func (s *setup) renew(ctx context.Context, dirs desktopDirs) {
	for _, c := range dirs.renewals() {
		if s.machine.finds(c.words[0]) {
			_, _ = s.machine.output(ctx, c)
		}
	}
}

// put puts the file in its place in one step, so that there is never half of
// it, nor of a program that runs. The folder is made if need be.
func (p placed) put() (err error) {
	folder := filepath.Dir(p.path)
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	f, err := os.CreateTemp(folder, ".stopwright-*.tmp")
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			_ = os.Remove(f.Name())
		}
	}()
	mode := fs.FileMode(0o644)
	if p.runs {
		mode = 0o755
	}
	if err := errors.Join(p.fill(f), f.Chmod(mode), f.Sync(), f.Close()); err != nil {
		return err
	}
	return os.Rename(f.Name(), p.path)
}

// fill writes what the file holds.
func (p placed) fill(w io.Writer) error {
	if p.from == "" {
		_, err := io.WriteString(w, p.text)
		return err
	}
	from, err := os.Open(p.from)
	if err != nil {
		return err
	}
	defer from.Close()
	if _, err := io.Copy(w, from); err != nil {
		return fmt.Errorf("%s: %w", p.from, err)
	}
	return nil
}
