// Command setup takes a fresh machine to a running window or a passed test,
// in one command each:
//
//	go run ./cmd/setup run [PLAN]    build the window and open it
//	go run ./cmd/setup test [ARGS]   run every test, the real window's included
//	go run ./cmd/setup shots DIR     write pictures of every page
//	go run ./cmd/setup install       build the program and put it on this person's desktop
//	go run ./cmd/setup uninstall     take it off again
//	go run ./cmd/setup guide         renew the pictures and the page of checks of the user's guide
//	go run ./cmd/setup licences      collect the licences of all that goes into the program
//
// It finds what is missing, installs it where it may, and otherwise says what
// to type. It needs Go alone: no C compiler, and no package of this module, so
// that it runs before anything else does.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	code := run(ctx, os.Args[1:], host{}, os.Stdout, os.Stderr)
	stop()
	os.Exit(code)
}

const usage = `Usage:
  go run ./cmd/setup run [PLAN]    build the window and open it, on PLAN or on a demonstration plan
  go run ./cmd/setup test [ARGS]   run every test, the real window's included; ARGS go to "go test"
  go run ./cmd/setup shots DIR     write pictures of every page into DIR; needs no display
  go run ./cmd/setup install       build the program and put it, its icon and its file type on your desktop
  go run ./cmd/setup uninstall     take them off again; plans and settings stay
  go run ./cmd/setup guide         renew the pictures and the page of checks of the user's guide
  go run ./cmd/setup licences      collect the licences of all that goes into the program
`

// Exit codes. A program that was started and failed passes its own code on.
const (
	exitFailed    = 1 // something is missing, or could not be built or started
	exitUsage     = 2
	exitNoDisplay = 3
)

// failure is an error with the exit code it stands for. Its sentence may be
// empty: the program that failed has then said why.
type failure struct {
	code     int
	sentence string
}

func (f failure) Error() string { return f.sentence }

// failed makes a failure with exit code 1.
func failed(format string, args ...any) error {
	return failure{exitFailed, fmt.Sprintf(format, args...)}
}

// run does what the arguments ask on machine m and returns the exit code.
func run(ctx context.Context, args []string, m machine, out, errOut io.Writer) int {
	verbs := map[string]func(*setup, context.Context, []string) error{
		"run":   (*setup).runWindow,
		"test":  (*setup).runTests,
		"shots": (*setup).writeShots,

		"install":   (*setup).installDesktop,
		"uninstall": (*setup).uninstallDesktop,
		"licences":  (*setup).collectLicences,
		"guide":     (*setup).writeGuide,
	}
	if len(args) == 0 || verbs[args[0]] == nil {
		fmt.Fprint(errOut, usage)
		return exitUsage
	}
	err := verbs[args[0]](&setup{machine: m, out: out}, ctx, args[1:])
	if err == nil {
		return 0
	}
	if err.Error() != "" {
		fmt.Fprintln(errOut, err)
	}
	if f := (failure{}); errors.As(err, &f) {
		return f.code
	}
	return exitFailed
}

// setup is one run of the command on one machine.
type setup struct {
	machine machine
	out     io.Writer
}

// say writes one line to the person waiting.
func (s *setup) say(format string, args ...any) {
	fmt.Fprintf(s.out, format+"\n", args...)
}
