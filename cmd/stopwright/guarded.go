package main

import (
	"fmt"
	"io"
	"runtime/debug"
	"time"

	"stopwright/assets/version"
	"stopwright/ui/crash"
)

// guarded does the work of the window and then what is to be done at the end,
// after a fault of the program too, so that the last edit is left for the next
// start. The fault is written down in a folder, "" for nowhere, and told in a
// sentence.
func guarded(folder string, stderr io.Writer, ended, work func()) (code int) {
	if folder != "" {
		defer crash.Watch(folder, time.Now(), version.Built())()
	}
	defer func() {
		fault := recover()
		stack := debug.Stack()
		ended()
		if fault != nil {
			code = faulty
			told(folder, stderr, crash.Report{
				Time: time.Now(), Program: version.Built(), Fault: fmt.Sprint(fault), Stack: string(stack),
			})
		}
	}()
	work()
	return ok
}

// told says that the program ends by a fault and where it is written down, or
// else what it is.
func told(folder string, stderr io.Writer, r crash.Report) {
	const says = "stopwright: the program ends by a fault of its own; what was not saved is offered at the next start"
	if folder != "" {
		if path, err := crash.Write(folder, r); err == nil {
			fmt.Fprintf(stderr, "%s; a report is in %s\n", says, crash.Settled(path))
			return
		}
	}
	fmt.Fprintf(stderr, "%s\n\n%s", says, r)
}
