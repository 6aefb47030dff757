package main

import (
	"context"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// shipped are the programs that are passed on, and the systems they are built
// for: other modules go in on each.
var (
	shipped = []string{"./cmd/stopwright", "./cmd/stopwright-cli"}
	systems = []string{"linux", "windows", "darwin"}
)

// licencesDir is where the licences lie, from the project's folder.
var licencesDir = filepath.Join("assets", "licences")

// dependency is a module that goes into a program, and its folder in the cache.
type dependency struct{ path, dir string }

// dependencies lists the modules that go into the programs on one system, Go's
// own library first.
func (s *setup) dependencies(ctx context.Context, root, system string) ([]dependency, error) {
	const format = "{{with .Module}}{{if not .Main}}{{.Path}}\t{{.Dir}}{{end}}{{end}}"
	env, err := s.machine.output(ctx, command{words: []string{"go", "env", "GOROOT"}, dir: root})
	if err != nil {
		return nil, failed("go env cannot tell where Go is.")
	}
	text, err := s.machine.output(ctx, command{
		words: append([]string{"go", "list", "-deps", "-f", format}, shipped...),
		dir:   root,
		vars:  []string{"GOOS=" + system, "CGO_ENABLED=1"}, // listed, not built: no compiler is needed
	})
	if err != nil {
		return nil, failed("go list cannot tell what goes into the programs on %s.", system)
	}
	found := []dependency{{"Go", strings.TrimSpace(env)}}
	for line := range strings.Lines(text) {
		path, dir, isModule := strings.Cut(strings.TrimSpace(line), "\t")
		if d := (dependency{path, dir}); isModule && !slices.Contains(found, d) {
			found = append(found, d)
		}
	}
	return found, nil
}

// collectLicences writes one file for every module that goes into a program on
// any system, and removes those of modules that no longer do.
func (s *setup) collectLicences(ctx context.Context, args []string) error {
	if len(args) > 0 {
		return failure{exitUsage, "This takes no more words: go run ./cmd/setup licences"}
	}
	root, err := s.tree(ctx)
	if err != nil {
		return err
	}
	texts := map[string]string{}
	for _, system := range systems {
		all, err := s.dependencies(ctx, root, system)
		if err != nil {
			return err
		}
		for _, d := range all {
			if texts[d.path], err = d.licence(); err != nil {
				return failed("%v.", err)
			}
		}
	}
	into := filepath.Join(root, licencesDir)
	old, err := filepath.Glob(filepath.Join(into, "*.txt"))
	if err != nil {
		return failed("%s cannot be read: %v.", into, err)
	}
	for _, path := range old {
		if err := os.Remove(path); err != nil {
			return failed("%s cannot be renewed: %v.", path, err)
		}
	}
	for module, text := range texts {
		if err := (placed{path: filepath.Join(into, licenceFile(module)), text: text}).put(); err != nil {
			return failed("The licence of %s cannot be written: %v.", module, err)
		}
	}
	s.say("The licences of %d modules are in %s.", len(texts), into)
	return nil
}

// licenceFile names the file of a module's licence.
func licenceFile(module string) string { return strings.ReplaceAll(module, "/", "_") + ".txt" }

// licence returns the module's name and all that it says of its licence: a
// module may hold parts of others, with licences of their own.
func (d dependency) licence() (string, error) {
	var b strings.Builder
	b.WriteString(d.path + "\n")
	found := 0
	err := filepath.WalkDir(d.dir, func(path string, e fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case e.IsDir() && (e.Name() == "cmd" || e.Name() == "testdata" || d.path == "Go" && path != d.dir):
			return fs.SkipDir // no part of what goes into a program
		case e.IsDir() || !saysLicence(e.Name()):
			return nil
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		inside, err := filepath.Rel(d.dir, path)
		if err != nil {
			return err
		}
		fmt.Fprintf(&b, "\n---- %s ----\n\n%s\n", filepath.ToSlash(inside), strings.TrimSpace(string(text)))
		found++
		return nil
	})
	if err == nil && found == 0 {
		err = fmt.Errorf("%s has no licence in %s", d.path, d.dir)
	}
	return b.String(), err
}

// saysLicence reports whether a file of that name holds a licence.
func saysLicence(name string) bool {
	name = strings.ToUpper(name)
	return slices.ContainsFunc([]string{"LICENSE", "LICENCE", "COPYING", "NOTICE"}, func(begin string) bool {
		return strings.HasPrefix(name, begin) && !strings.HasSuffix(name, ".GO")
	})
}
