package main

import (
	"context"
	"path"
	"strings"
)

// need is one thing that must be there before a command can succeed.
type need struct {
	name     string // as a person would say it
	present  func(context.Context, machine) bool
	packages map[platform]parcel // where it comes from
}

// parcel is a package and the program that installs it. An empty name means
// that the program brings just the one thing.
type parcel struct {
	manager manager
	name    string
}

// missing returns those of the needs that concern the machine's platform and
// are not met, in their order. On macOS and Windows a need without a package
// is one that the system itself meets.
func missing(ctx context.Context, m machine, needs []need) []need {
	p := platformOf(m)
	var lacking []need
	for _, n := range needs {
		_, packaged := n.packages[p]
		if (packaged || p.drawsByX11()) && !n.present(ctx, m) {
			lacking = append(lacking, n)
		}
	}
	return lacking
}

// onPath tells whether a program is there by any of its names.
func onPath(names ...string) func(context.Context, machine) bool {
	return func(_ context.Context, m machine) bool {
		for _, name := range names {
			if m.finds(name) {
				return true
			}
		}
		return false
	}
}

// compiler tells whether the C compiler that Go calls is there: on macOS a
// program of its name always is, and only offers to install the real one.
func compiler(ctx context.Context, m machine) bool {
	if m.system() == "darwin" {
		_, err := m.output(ctx, typed("xcode-select", "-p"))
		return err == nil
	}
	if own := strings.Fields(m.env("CC")); len(own) > 0 {
		return m.finds(own[0])
	}
	return m.finds("gcc")
}

// includeDirs are searched by C compilers without being told to.
var includeDirs = []string{"/usr/include", "/usr/local/include"}

// header tells whether a C header is where compilers look, or pkg-config knows
// another place for the library it belongs to.
func header(file, library string) func(context.Context, machine) bool {
	return func(ctx context.Context, m machine) bool {
		for _, dir := range includeDirs {
			if _, err := m.readFile(path.Join(dir, file)); err == nil {
				return true
			}
		}
		if library == "" {
			return false
		}
		_, err := m.output(ctx, typed("pkg-config", "--exists", library))
		return err == nil
	}
}

// pythons are tried in turn. A Python from elsewhere that comes first on the
// path does not see the modules that Debian installs for its own.
var pythons = []string{"/usr/bin/python3", "python3", "python"}

// pythonModule tells whether any Python can import a module.
func pythonModule(module string) func(context.Context, machine) bool {
	return func(ctx context.Context, m machine) bool {
		for _, python := range pythons {
			if _, err := m.output(ctx, typed(python, "-c", "import "+module)); err == nil {
				return true
			}
		}
		return false
	}
}
