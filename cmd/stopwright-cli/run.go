package main

import (
	"bufio"
	"fmt"
	"io"
	"strings"
)

// The exit codes.
const (
	statusGood      = 0  // done, and no finding is an error
	statusFindings  = 1  // done, and some finding is an error
	statusUnusable  = 2  // the plan or the command cannot be used; nothing is written
	statusUnwritten = 3  // a file or the output could not be written
	statusFault     = 70 // a fault of this program: EX_SOFTWARE of the BSD sysexits
)

const program = "stopwright-cli"

// shell holds the streams that a verb works with.
type shell struct {
	in  io.Reader
	out *bufio.Writer
	err io.Writer
}

// run does what the arguments say and returns the exit code. Errors go to
// stderr, one line each.
//
// A panic is a defect of the program, whatever the input, so it has a code of
// its own that no plan can earn.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) (status int) {
	sh := &shell{in: stdin, out: bufio.NewWriter(stdout), err: stderr}
	defer func() {
		if fault := recover(); fault != nil {
			status = sh.fault(fmt.Sprint(fault))
		}
	}()
	err := dispatch(sh, args)
	if flushed := sh.out.Flush(); flushed != nil {
		err = &outputError{flushed}
	}
	return sh.settle(err)
}

// dispatch finds the verb and runs it.
func dispatch(sh *shell, args []string) error {
	if len(args) == 0 {
		return &usageError{says: "what should be done is missing"}
	}
	name, rest := args[0], args[1:]
	switch name {
	case "help", "-h", "-help", "--help":
		return help(sh, rest)
	}
	v, ok := verbNamed(name)
	if !ok {
		return &usageError{says: fmt.Sprintf("there is no verb %q", name)}
	}
	return v.run(sh, rest)
}

// verb is one thing the program does.
type verb struct {
	name  string
	usage string // its help
	run   func(sh *shell, args []string) error
}

// verbs lists what the program does, in the order of its help.
func verbs() []verb {
	return []verb{
		{"new", newUsage, runNew},
		{"check", checkUsage, runCheck},
		{"report", reportUsage, runReport},
		{"trial", trialUsage, runTrial},
		{"export", exportUsage, runExport},
		{"bundle", bundleUsage, runBundle},
	}
}

func verbNamed(name string) (verb, bool) {
	for _, v := range verbs() {
		if v.name == name {
			return v, true
		}
	}
	return verb{}, false
}

// fault tells, in one line, of something that should not have happened.
func (sh *shell) fault(what string) int {
	sh.complain("internal fault", oneLine(what)+"; please report it, with the plan")
	return statusFault
}

// complain writes one line for each line of the reason to stderr.
func (sh *shell) complain(subject, reason string) {
	for line := range strings.SplitSeq(reason, "\n") {
		fmt.Fprintf(sh.err, "%s: %s: %s\n", program, subject, oneLine(line))
	}
}
