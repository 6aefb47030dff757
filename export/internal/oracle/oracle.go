// Package oracle finds, for tests only, the programs of other makers that read
// our files again: what they see in a file is the check that we wrote it well.
package oracle

import (
	"fmt"
	"os"
	"os/exec"
	"testing"
)

// FullTests names the environment variable that says every reader must be
// there. The setup command sets it to 1 once it has installed them.
const FullTests = "STOPWRIGHT_FULL_TESTS"

// EzDXF names Debian's python3-ezdxf: [Need] returns the Python that has it.
const EzDXF = "ezdxf"

// Debian's own Python comes first: its packages are not seen by any other
// Python that stands earlier on the path.
var pythons = []string{"/usr/bin/python3", "python3", "python"}

// Need returns the path of a reader: [EzDXF], or the name of a command such as
// pdftotext, pdftoppm, pdfinfo or ogrinfo. A reader that is absent fails the
// test when [FullTests] is set, and skips it otherwise.
func Need(t testing.TB, reader string) string {
	t.Helper()
	path, err := find(reader)
	if err == nil {
		return path
	}
	if must() {
		t.Fatalf("%v, and %s is set", err, FullTests)
	}
	t.Skipf("%v; set %s=1 to make this a failure", err, FullTests)
	return ""
}

// must reports whether an absent reader is a failure.
func must() bool {
	v := os.Getenv(FullTests)
	return v != "" && v != "0"
}

func find(reader string) (string, error) {
	if reader == EzDXF {
		return findModule(EzDXF)
	}
	path, err := exec.LookPath(reader)
	if err != nil {
		return "", fmt.Errorf("no %s on this machine", reader)
	}
	return path, nil
}

// findModule returns the first Python that can import the module.
func findModule(module string) (string, error) {
	for _, python := range pythons {
		path, err := exec.LookPath(python)
		if err != nil {
			continue
		}
		if exec.Command(path, "-c", "import "+module).Run() == nil {
			return path, nil
		}
	}
	return "", fmt.Errorf("no Python with the module %s on this machine", module)
}
