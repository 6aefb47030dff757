// Command stopwright opens the window.
//
//	stopwright [PLAN]        open a plan, or the one to begin with
//	stopwright -demo NAME    open a demonstration plan
//	stopwright -shots DIR    write pictures of every page (built with tag ci)
//	stopwright -guide DIR    write the guide's pictures and page of checks (the same)
//
// It exits with 0, with 2 when it cannot use what it was given, with 3 when
// there is no display, and with 70 after a fault of its own.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"stopwright/assets/icons"
	_ "stopwright/cmd/stopwright/internal/plainlocale" // before the toolkit starts
	"stopwright/detent/plan"
	"stopwright/ui"
	"stopwright/ui/diskfile"
)

// The exit codes.
const (
	ok        = 0
	unusable  = 2
	noDisplay = 3
	faulty    = 70 // EX_SOFTWARE of the BSD sysexits
)

// settled is when the first frame has long been painted. What was needed to make
// the window, half of all the memory, is then given back to the system.
const settled = 3 * time.Second

// appID names the program to the desktop.
const appID = "app.stopwright.desktop"

func main() { os.Exit(run(os.Args[1:], os.Stderr)) }

// run does everything but end the process.
func run(args []string, stderr io.Writer) int {
	flags := flag.NewFlagSet("stopwright", flag.ContinueOnError)
	flags.SetOutput(stderr)
	demo := flags.String("demo", "sanding-table", "open a demonstration plan by `NAME`")
	shots := flags.String("shots", "", "write pictures of every page into `DIR`")
	guide := flags.String("guide", "", "write the guide's pictures and page of checks into `DIR`")
	if err := flags.Parse(args); err != nil {
		return unusable
	}
	p, file, err := load(*demo, flags.Arg(0))
	if err != nil {
		fmt.Fprintln(stderr, "stopwright:", err)
		return unusable
	}
	if err := ready(*shots != "" || *guide != ""); err != nil {
		fmt.Fprintln(stderr, "stopwright:", err)
		return noDisplay
	}
	quietToolkit()
	a := app.NewWithID(appID)
	a.SetIcon(fyne.NewStaticResource("stopwright.png", icons.Small))
	switch {
	case *shots != "":
		return without(ui.Shots, a, *shots, stderr)
	case *guide != "":
		return without(ui.WriteGuide, a, *guide, stderr)
	}
	return open(a, p, file, stderr)
}

// load reads the plan to open, and its file if it comes from one.
func load(demo, path string) (plan.Plan, diskfile.File, error) {
	if path == "" {
		p, err := ui.Example(demo)
		return p, diskfile.File{}, err
	}
	return diskfile.Read(path)
}

// open shows the window until it is closed.
func open(a fyne.App, p plan.Plan, file diskfile.File, stderr io.Writer) int {
	w, err := newWindow(a, p)
	if err != nil {
		fmt.Fprintln(stderr, "stopwright:", err)
		return noDisplay
	}
	w.KeepIn(ui.OwnFolder())
	return guarded(w.FaultFolder(), stderr, w.Ended, func() {
		if file.Path != "" {
			w.Opened(file)
		}
		w.Show()
		w.OfferRecovery()
		time.AfterFunc(settled, debug.FreeOSMemory)
		a.Run()
	})
}

// newWindow makes the window. The toolkit panics where a display that is named
// cannot be used; here, and only here, that is told like a missing one.
func newWindow(a fyne.App, p plan.Plan) (w *ui.Window, err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = fmt.Errorf("the display %s cannot be used: %v", os.Getenv("DISPLAY"), fault)
		}
	}()
	return ui.NewWindow(a, p), nil
}

// without has files written by a window that nobody sees.
func without(write func(fyne.App, string) ([]string, error), a fyne.App, folder string, stderr io.Writer) int {
	written, err := write(a, folder)
	for _, path := range written {
		fmt.Fprintln(stderr, path)
	}
	if err != nil {
		fmt.Fprintln(stderr, "stopwright:", err)
		return noDisplay
	}
	return ok
}
