// Package plans embeds the demonstration plans: turning plates of our own that
// show what a plan can hold. They are plan files like any other, and reading
// them is the caller's.
package plans

import (
	"embed"
	"fmt"
	"strings"
)

//go:embed *.stopwright
var files embed.FS

// extension ends the name of a plan file.
const extension = ".stopwright"

// Demo names one demonstration plan.
type Demo struct {
	Name  string // as [Open] takes it: small letters and hyphens
	Title string // key of its title in the word catalogue
}

// File returns the name that the plan has as a file.
func (d Demo) File() string { return d.Name + extension }

// List returns the demonstration plans in the order they are offered; the first
// is the one to begin with.
func List() []Demo {
	return []Demo{
		{Name: "sanding-table", Title: "demo.sanding-table"},
		{Name: "camera-head", Title: "demo.camera-head"},
		{Name: "vice-base", Title: "demo.vice-base"},
	}
}

// Open returns the plan file of a demonstration, or an error naming those there
// are. The bytes are the caller's own.
func Open(name string) ([]byte, error) {
	for _, d := range List() {
		if d.Name == name {
			return files.ReadFile(d.File())
		}
	}
	return nil, fmt.Errorf("there is no demonstration plan %q; there are %s", name, strings.Join(names(), ", "))
}

// names returns the names of [List].
func names() []string {
	var out []string
	for _, d := range List() {
		out = append(out, d.Name)
	}
	return out
}
