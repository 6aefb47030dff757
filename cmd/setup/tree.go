package main

import (
	"context"
	goversion "go/version"
	"path/filepath"
	"strings"
)

// module is the name that go.mod must give, lest another project be built.
const module = "stopwright"

// tree finds the folder of the project and sees that the Go at hand is new
// enough to build it.
func (s *setup) tree(ctx context.Context) (root string, err error) {
	text, err := s.machine.output(ctx, typed("go", "env", "GOMOD", "GOVERSION"))
	if err != nil {
		return "", failed("The go command is not on the path: install Go, then give the same command again.")
	}
	goMod, have, _ := strings.Cut(strings.TrimSpace(text), "\n")
	goMod = strings.TrimSpace(goMod)
	described, err := s.machine.readFile(goMod)
	if err != nil || directive(described, "module") != module {
		return "", failed("Start this from the project's folder, where go.mod is.")
	}
	// Experiments and vendors add words to the version.
	have, _, _ = strings.Cut(strings.TrimSpace(have), " ")
	want := "go" + directive(described, "go")
	if goversion.IsValid(have) && goversion.Compare(have, want) < 0 {
		return "", failed("This needs Go %s or newer, and here is %s: install a newer Go, then give the same command again.",
			strings.TrimPrefix(want, "go"), strings.TrimPrefix(have, "go"))
	}
	return filepath.Dir(goMod), nil
}

// directive returns what a line of go.mod says after its keyword.
func directive(goMod, keyword string) string {
	for line := range strings.Lines(goMod) {
		if value, ok := strings.CutPrefix(line, keyword+" "); ok {
			return strings.TrimSpace(value)
		}
	}
	return ""
}
