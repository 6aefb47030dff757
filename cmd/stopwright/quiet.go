package main

import (
	"bytes"
	"io"
	"log"
	"os"
)

// noise is what the toolkit logs that concerns nobody, as it finds its own
// settings missing or the desktop without favourite folders at an ordinary
// start; or that is told in a sentence of our own.
var noise = [][]byte{
	[]byte("X11: Failed to open display"),
	[]byte("Preferences load error"),
	[]byte("Getting favorite locations"),
	[]byte("Error parsing user locale"), // one as C, that names no language
}

// quietToolkit keeps noise out of the log, with the lines that follow it.
func quietToolkit() { log.SetOutput(&sieve{to: os.Stderr}) }

// sieve drops noise. The toolkit logs a message and its cause in lines of their
// own, the cause indented.
type sieve struct {
	to      io.Writer
	dropped bool // the last message, and so its cause
}

func (s *sieve) Write(line []byte) (int, error) {
	cause := bytes.Contains(line, []byte("  Cause:")) || bytes.Contains(line, []byte("  At:"))
	if !cause {
		s.dropped = false
		for _, n := range noise {
			s.dropped = s.dropped || bytes.Contains(line, n)
		}
	}
	if s.dropped {
		return len(line), nil
	}
	return s.to.Write(line)
}
