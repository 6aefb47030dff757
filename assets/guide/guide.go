// Package guide holds the user's guide, a page a task, in Markdown with its
// pictures beside it, a folder a language. The window shows it under Help, and
// it reads well where it lies.
//
// The page of the checks and the pictures are made by
//
//	go run ./cmd/setup guide
package guide

import (
	"embed"
	"fmt"
	"path"
	"regexp"
	"slices"
	"strings"
)

//go:embed */*.md */*.png
var files embed.FS

// Names lists the pages in the order in which they are read. The file of a page
// is its name with .md after it.
var Names = []string{
	"start", "stops", "plate", "room", "click", "true", "drilling", "making", "setting", "files", Checks, "formulas",
}

// Checks is the page that is written from the checks.
const Checks = "checks"

// Page is one page of the guide.
type Page struct {
	Name  string
	Title string
	Text  string // in Markdown, without the title
}

// Pages returns the guide in a language ("en"), or an error if there is none in
// it.
func Pages(language string) ([]Page, error) {
	var out []Page
	for _, name := range Names {
		text, err := files.ReadFile(path.Join(language, name+".md"))
		if err != nil {
			return nil, fmt.Errorf("the guide in %q: %w", language, err)
		}
		title, rest, _ := strings.Cut(strings.ReplaceAll(string(text), "\r\n", "\n"), "\n")
		out = append(out, Page{name, strings.TrimPrefix(title, "# "), strings.TrimSpace(rest)})
	}
	return out, nil
}

// pictureLink is a picture where it stands in a page, on a line of its own.
var pictureLink = regexp.MustCompile(`(?m)^!\[[^\]]*\]\((.*)\)$`)

// Pictures lists the pictures that pages show, each once.
func Pictures(pages []Page) []string {
	var out []string
	for _, p := range pages {
		for _, m := range pictureLink.FindAllStringSubmatch(p.Text, -1) {
			if !slices.Contains(out, m[1]) {
				out = append(out, m[1])
			}
		}
	}
	return out
}

// Picture returns a picture of a page, in PNG.
func Picture(language, name string) ([]byte, error) { return files.ReadFile(path.Join(language, name)) }
