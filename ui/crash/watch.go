package crash

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall"
	"time"
)

// rawEnding is that of a file into which the language itself writes when the
// program is torn down where nothing of it can run any more: by a fault in a
// goroutine, or one that cannot be recovered from.
const rawEnding = ".raw"

// abandoned is how old an empty raw file must be to be taken for that of a
// program killed from outside though a process of its number runs: no program is
// thought to run for as long.
const abandoned = 30 * 24 * time.Hour

// maxRaw is how much of a raw file is read, bytes: it begins with what matters.
const maxRaw = 64 << 10

// Watch has faults that nothing can be done about written into a folder. What
// it returns ends that, when the program ends well. Where the folder cannot be
// written nothing is watched.
func Watch(folder string, now time.Time, program string) (end func()) {
	if os.MkdirAll(folder, 0o700) != nil {
		return func() {}
	}
	path := filepath.Join(folder, prefix+identity(now)+rawEnding)
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		return func() {}
	}
	defer f.Close() // the language keeps a copy of its own
	_, err = fmt.Fprintln(f, program)
	if err != nil || debug.SetCrashOutput(f, debug.CrashOptions{}) != nil {
		_ = os.Remove(path)
		return func() {}
	}
	return func() {
		_ = debug.SetCrashOutput(nil, debug.CrashOptions{}) // cannot fail: nothing is opened
		_ = os.Remove(path)
	}
}

// finish makes reports out of the raw files of a folder that hold a fault.
func finish(folder string) {
	for _, path := range named(folder, rawEnding) {
		info, err := os.Stat(path)
		if err != nil {
			continue
		}
		text, err := readBeginning(path)
		if err != nil {
			continue
		}
		program, fault, _ := strings.Cut(text, "\n")
		if fault == "" { // of a program that runs, or one that was killed
			if !running(path) || time.Since(info.ModTime()) > abandoned {
				_ = os.Remove(path)
			}
			continue
		}
		what, stack, _ := strings.Cut(fault, "\n\n")
		id := strings.TrimSuffix(strings.TrimPrefix(filepath.Base(path), prefix), rawEnding)
		if _, err := writeAs(folder, id, Report{Time: info.ModTime(), Program: program, Fault: what, Stack: stack}); err == nil {
			_ = os.Remove(path)
		}
	}
}

// running reports whether the program that a raw file belongs to may still run:
// whether there is a process of the number in its name. Another may have got
// that number since; then only its age tells.
func running(path string) bool {
	id := strings.TrimSuffix(filepath.Base(path), rawEnding)
	pid, err := strconv.Atoi(id[strings.LastIndexByte(id, '-')+1:])
	if err != nil {
		return true
	}
	process, err := os.FindProcess(pid)
	if err != nil {
		return false
	}
	defer func() { _ = process.Release() }()
	// Signal 0 is never sent. A system that knows no such signal says so, and
	// has looked for the process already.
	return !errors.Is(process.Signal(syscall.Signal(0)), os.ErrProcessDone)
}

func readBeginning(path string) (string, error) {
	f, err := os.Open(path)
	if err != nil {
		return "", err
	}
	defer f.Close()
	buffer := make([]byte, maxRaw)
	n, err := f.Read(buffer)
	return string(buffer[:n]), err
}
