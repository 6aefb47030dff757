package export_test

import (
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// text returns a writer of a whole file.
func text(s string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, s)
		return err
	}
}

// put makes a file and returns its path.
func put(t *testing.T, dir, name, content string) string {
	t.Helper()
	path := filepath.Join(dir, name)
	require.NoError(t, os.WriteFile(path, []byte(content), 0o600))
	return path
}

func get(t *testing.T, path string) string {
	t.Helper()
	b, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(b)
}

// entries returns the names of everything in a folder: a temporary file left
// behind would be among them.
func entries(t *testing.T, dir string) []string {
	t.Helper()
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	names := []string{}
	for _, e := range list {
		names = append(names, e.Name())
	}
	return names
}

// report returns the report of the default plan with a stop and a collar.
func report(t *testing.T) detent.Report {
	t.Helper()
	p := plan.Default()
	p.Title = "Trial"
	p.Collar = &plan.Collar{
		Clearance: 0.5, OutsideDiameter: 310, Thickness: 18,
		Screws: plan.Screws{Count: 8, Circle: 285, Diameter: 4.5},
	}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 36, BothSides: true, Label: "5 sides"}}
	require.NoError(t, plan.Validate(p))
	return detent.Solve(p)
}
