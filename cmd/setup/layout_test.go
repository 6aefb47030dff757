package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// projectRoot is where go.mod stands, seen from here.
const projectRoot = "../.."

// topLevel is all that stands there besides dot files.
var topLevel = []string{
	"DEVELOPERS.md", "FyneApp.toml", "README.md", "assets", "cmd", "detent", "export", "go.mod", "go.sum", "testdata", "ui",
}

// storeys lists the packages from the ground up. A package may import those of
// lower storeys and no others: so leaves and writers never see each other, and
// nothing that reckons sees a file or a screen. A name that ends in / stands
// for it and all packages below it, which may import each other. Tests may look
// up: a demonstration plan's own test has it checked.
var storeys = [][]string{
	{"assets/", "cmd/setup"},
	{"detent/geom"},
	{"detent/measure", "detent/squares"},
	{"detent/angles", "detent/ball", "detent/stock", "detent/budget", "detent/room", "detent/cutline", "detent/proving"},
	{"detent/plan"},
	{"detent/plan/plantest"},
	{"detent/plate"},
	{"detent/check"},
	{"detent"},
	{"export/drawing", "export/internal/oracle"},
	{"export/tile"},
	{"export/dxf", "export/svg", "export/pdf", "export/chart", "export/router", "export/template", "export/scale", "export/coupon"},
	{"export"},
	{"ui/", "cmd/stopwright-cli"},
	{"cmd/stopwright/"},
}

// toolkit is the window toolkit, and toolkitApp its one package that cannot be
// built without C. Each may be imported by these packages only.
const (
	toolkit    = "fyne.io/fyne/v2"
	toolkitApp = toolkit + "/app"
)

var (
	toolkitUsers    = []string{"ui/", "cmd/stopwright"}
	toolkitAppUsers = []string{"cmd/stopwright"}
)

func TestTopLevel(t *testing.T) {
	built := ignored(t)
	entries, err := os.ReadDir(projectRoot)
	require.NoError(t, err)
	var there []string
	for _, e := range entries {
		name := e.Name()
		if !strings.HasPrefix(name, ".") && !built(name) {
			there = append(there, name)
		}
	}
	assert.ElementsMatch(t, topLevel, there)
}

// ignored reads .gitignore and tells the names at the top level that it lets
// pass: programs built by hand, which are no part of the project.
func ignored(t *testing.T) func(name string) bool {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(projectRoot, ".gitignore"))
	require.NoError(t, err)
	patterns := strings.Fields(string(text))
	return func(name string) bool {
		return slices.ContainsFunc(patterns, func(pattern string) bool {
			match, err := path.Match(strings.TrimPrefix(pattern, "/"), name)
			return err == nil && match
		})
	}
}

func TestImportsPointDownwards(t *testing.T) {
	files := sourceFiles(t)
	require.Greater(t, len(files), 100, "the project was found")
	for _, f := range files {
		_, known := storeyOf(f.pkg)
		if !assert.True(t, known, "%s has no storey: give it one in this test, or put its files where they belong", f.pkg) {
			continue
		}
		for _, to := range f.imports {
			inside, ours := strings.CutPrefix(to, module+"/")
			switch {
			case to == "C":
				assert.Fail(t, "C code", "%s: only the window toolkit may need a C compiler", f.path)
			case to == toolkitApp:
				assert.True(t, within(f.pkg, toolkitAppUsers), "%s imports %s, which needs C: only %v may", f.path, to, toolkitAppUsers)
			case to == toolkit || strings.HasPrefix(to, toolkit+"/"):
				assert.True(t, within(f.pkg, toolkitUsers), "%s imports %s: only %v may", f.path, to, toolkitUsers)
			case ours && !strings.HasSuffix(f.path, "_test.go"):
				assert.True(t, mayImport(f.pkg, inside), "%s imports %s, which does not lie below it", f.path, inside)
			}
		}
	}
}

// mayImport reports whether the storeys let one package import another.
func mayImport(from, to string) bool {
	above, knownAbove := storeyOf(from)
	below, knownBelow := storeyOf(to)
	return knownAbove && knownBelow && (below < above || sameHouse(from, to))
}

// storeyOf tells how high a package stands.
func storeyOf(pkg string) (storey int, known bool) {
	for i, packages := range storeys {
		if within(pkg, packages) {
			return i, true
		}
	}
	return 0, false
}

// within reports whether a package is one of those named.
func within(pkg string, named []string) bool {
	return slices.ContainsFunc(named, func(name string) bool {
		below, open := strings.CutSuffix(name, "/")
		return pkg == below || open && strings.HasPrefix(pkg, name)
	})
}

// sameHouse reports whether two packages lie below one open name.
func sameHouse(a, b string) bool {
	for _, packages := range storeys {
		for _, name := range packages {
			open := []string{name}
			if strings.HasSuffix(name, "/") && within(a, open) && within(b, open) {
				return true
			}
		}
	}
	return false
}

// sourceFile is one Go file and what it imports.
type sourceFile struct {
	path, pkg string // from the project's folder, with slashes
	imports   []string
}

// sourceFiles reads every Go file of the project. Files are only parsed, so
// that no C compiler and no module from elsewhere has to be there.
func sourceFiles(t *testing.T) []sourceFile {
	t.Helper()
	project := os.DirFS(projectRoot)
	var files []sourceFile
	err := fs.WalkDir(project, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name := entry.Name()
		switch {
		case entry.IsDir() && file != "." && (strings.HasPrefix(name, ".") || name == "testdata"):
			return fs.SkipDir
		case entry.IsDir() || !strings.HasSuffix(name, ".go"):
			return nil
		}
		text, err := fs.ReadFile(project, file)
		if err != nil {
			return err
		}
		parsed, err := parser.ParseFile(token.NewFileSet(), file, text, parser.ImportsOnly)
		if err != nil {
			return err
		}
		f := sourceFile{path: file, pkg: path.Dir(file)}
		for _, spec := range parsed.Imports {
			to, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			f.imports = append(f.imports, to)
		}
		files = append(files, f)
		return nil
	})
	require.NoError(t, err)
	return files
}

// The rules themselves have to be able to fail.
func TestStoreysKeepWhatTheyShould(t *testing.T) {
	for _, c := range []struct {
		from, to string
		may      bool
		why      string
	}{
		{"detent/ball", "detent/geom", true, "leaves may use geometry"},
		{"detent/ball", "detent/measure", true, "and measures"},
		{"detent/ball", "detent/budget", false, "but not each other"},
		{"detent/plan", "detent/plate", false, "the plan knows nothing of what follows from it"},
		{"export/dxf", "export/drawing", true, "writers write drawings"},
		{"export/dxf", "export/pdf", false, "and not by way of each other"},
		{"detent", "export", false, "what reckons knows no files"},
		{"cmd/stopwright-cli", "ui", false, "the shell's program needs no window"},
		{"cmd/stopwright", "ui/theme", true, "the window's program assembles it"},
		{"ui/plate", "ui/theme", true, "the window's packages share"},
		{"cmd/setup", "assets/icons", false, "setup must build before anything else does"},
		{"assets/words", "assets/fonts", true, "assets are one store"},
		{"detent", "assets/words", true, "anyone may use them"},
	} {
		for _, pkg := range []string{c.from, c.to} {
			_, known := storeyOf(pkg)
			require.True(t, known, "%s: a package without storey proves nothing", pkg)
		}
		assert.Equal(t, c.may, mayImport(c.from, c.to), "%s imports %s: %s", c.from, c.to, c.why)
	}
}
