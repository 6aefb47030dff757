package main

import (
	"fmt"
	"strings"
)

// withoutDisplay is what can still be done where no window can open.
const withoutDisplay = "Start this from a desktop; or write pictures of every page with\n" +
	"  go run ./cmd/setup shots DIR\n" +
	"and the drawings and the drilling chart of a plan with\n" +
	"  go run ./cmd/stopwright-cli export PLAN --dxf FILE --pdf FILE"

// display reports by a failure that there is no display for a window. It asks
// before anything is installed or built, so that nobody waits for nothing.
func (s *setup) display() error {
	if !platformOf(s.machine).drawsByX11() {
		return nil
	}
	name := s.machine.env("DISPLAY")
	switch {
	case name == "" && s.machine.env("WAYLAND_DISPLAY") != "":
		return noDisplay("the desktop's X11 service, Xwayland, is not running")
	case name == "":
		return noDisplay("DISPLAY is not set")
	case !s.displayAnswers(name):
		return noDisplay(fmt.Sprintf("nothing answers at DISPLAY %s", name))
	}
	return nil
}

// displayAnswers asks a display of this computer, :N or :N.SCREEN, whether it
// is there. One on another computer is left for the window to find.
func (s *setup) displayAnswers(name string) bool {
	number, local := strings.CutPrefix(name, ":")
	if !local {
		return true
	}
	number, _, _ = strings.Cut(number, ".")
	socket := "/tmp/.X11-unix/X" + number
	// Linux keeps the same name a second time where no file system is needed;
	// an @ in front says so.
	return s.machine.answers(socket) || s.machine.answers("@"+socket)
}

func noDisplay(why string) error {
	return failure{exitNoDisplay, fmt.Sprintf("There is no display to open a window on: %s.\n%s", why, withoutDisplay)}
}
