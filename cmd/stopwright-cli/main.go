// Command stopwright-cli does the work of the window from a shell: it makes a
// demonstration plan or the plan of a trial, checks a plan, reports what follows
// from it, and exports drawings and the drilling chart. It needs no display and no
// C compiler.
//
// Its exit codes are those of [run].
package main

import (
	"os"
	"os/signal"
	"syscall"
)

func main() {
	// Without this, a reader of our output that goes away would end the program
	// before it can say so and exit as promised.
	signal.Ignore(syscall.SIGPIPE)
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
