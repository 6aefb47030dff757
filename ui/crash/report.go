package crash

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"time"

	"stopwright/export"
)

const (
	// prefix begins the name of every file of this package.
	prefix = "fault-"
	// ending is that of a report; one that nobody was told of yet has fresh
	// before it.
	ending = ".txt"
	fresh  = ".new"
	// stamp is the time in a name.
	stamp = "20060102T150405"
	// maxFault is how much of a fault's own words is kept, bytes.
	maxFault = 500
)

// Report is what is written down about one fault.
type Report struct {
	Time    time.Time
	Program string // version and what it was built with
	Fault   string // what went wrong, as the language says it
	Stack   string // as [runtime/debug.Stack] writes it
}

// String returns the report as its file has it.
func (r Report) String() string {
	var b strings.Builder
	b.WriteString("Stopwright ended by a fault of its own.\n\n")
	fmt.Fprintf(&b, "Time     %s\n", r.Time.UTC().Format(time.RFC3339))
	fmt.Fprintf(&b, "Program  %s\n", r.Program)
	fmt.Fprintf(&b, "Fault    %s\n\nIt came through:\n", discreet(r.Fault))
	for _, place := range places(r.Stack) {
		b.WriteString("  " + place + "\n")
	}
	b.WriteString("\nNothing of the plan is in this report.\n")
	return b.String()
}

// Write writes a report into a folder, making it if need be, and returns its
// path. The error is an [export.FileError].
func Write(folder string, r Report) (path string, err error) {
	return writeAs(folder, identity(r.Time), r)
}

// identity is what tells the files of this program apart from those of others.
func identity(now time.Time) string {
	return fmt.Sprintf("%s-%d", now.UTC().Format(stamp), os.Getpid())
}

func writeAs(folder, id string, r Report) (path string, err error) {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return "", &export.FileError{Doing: "write", Path: folder, Err: err}
	}
	path = filepath.Join(folder, prefix+id+fresh+ending)
	return path, export.WriteFile(path, func(w io.Writer) error {
		_, err := io.WriteString(w, r.String())
		return err
	})
}

// discreet makes a fault one line of bearable length, without the person's home
// folder.
func discreet(fault string) string {
	if home, err := os.UserHomeDir(); err == nil && len(home) > 1 {
		fault = strings.ReplaceAll(fault, home, "~")
	}
	fault = strings.Join(strings.Fields(fault), " ")
	if len(fault) > maxFault {
		fault = strings.ToValidUTF8(fault[:maxFault], "") + "…"
	}
	return fault
}
