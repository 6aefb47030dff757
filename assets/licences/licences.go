// Package licences holds the licences of all that goes into the program: Go's
// own library, and every module. They are collected by
//
//	go run ./cmd/setup licences
package licences

import (
	"embed"
	"strings"
)

//go:embed *.txt
var files embed.FS

// Licence is what one module says of its licence.
type Licence struct {
	Module string // by its import path; "Go" for the language's own library
	Text   string
}

// All returns every licence, by module.
func All() []Licence {
	entries, _ := files.ReadDir(".") // cannot fail: they are compiled in
	out := make([]Licence, 0, len(entries))
	for _, e := range entries {
		text, _ := files.ReadFile(e.Name())
		module, rest, _ := strings.Cut(string(text), "\n")
		out = append(out, Licence{module, strings.TrimSpace(rest)})
	}
	return out
}
