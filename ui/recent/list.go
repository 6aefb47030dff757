package recent

import (
	"encoding/json"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"unicode/utf8"

	"stopwright/export"
)

// Most is how many files are remembered.
const Most = 10

// maxBytes is more than a list of [Most] paths needs on any system.
const maxBytes = 1 << 20

// List is the list of recent files. It is a copy of what its own file holds;
// every change begins by reading that again, so that what another running
// program has added stays. All calls come from one goroutine.
type List struct {
	path  string // "": kept for this run only
	files []string
	kept  bool // its file has been there
}

// document is the list's file.
type document struct {
	Files []string `json:"files"`
}

// Open reads the list kept in a file. One that is missing or cannot be read is
// an empty list: it is not worth a question. The path "" keeps the list for
// this run only.
func Open(path string) *List {
	l := &List{path: path}
	l.read()
	return l
}

// Files returns the files, the last first. The caller must not write to it.
func (l *List) Files() []string { return l.files }

// Add puts a file at the head of the list. A path that is not UTF-8 cannot be
// kept and is passed over. The error, an [export.FileError], means that the
// list will be forgotten when the program ends.
func (l *List) Add(file string) error {
	if !utf8.ValidString(file) {
		return nil
	}
	if abs, err := filepath.Abs(file); err == nil {
		file = abs
	}
	l.read()
	if len(l.files) > 0 && l.files[0] == file {
		return nil
	}
	return l.write(append([]string{file}, without(l.files, file)...))
}

// Remove takes a file off the list. The error is that of [List.Add].
func (l *List) Remove(file string) error {
	l.read()
	return l.write(without(l.files, file))
}

// Clear empties the list. The error is that of [List.Add].
func (l *List) Clear() error { return l.write(nil) }

func without(files []string, file string) []string {
	return slices.DeleteFunc(slices.Clone(files), func(f string) bool { return f == file })
}

// read takes over what the list's file holds. If that cannot be read the list
// stays as it is, unless the file is there no longer: then somebody removed it
// to clear the list.
func (l *List) read() {
	if l.path == "" {
		return
	}
	f, err := os.Open(l.path)
	if err != nil {
		if l.kept && errors.Is(err, fs.ErrNotExist) {
			l.files = nil
		}
		return
	}
	defer f.Close()
	l.kept = true
	var d document
	if json.NewDecoder(io.LimitReader(f, maxBytes)).Decode(&d) == nil {
		l.files = tidy(d.Files)
	}
}

// tidy drops what the program would not have written: the file may have been
// edited by hand.
func tidy(files []string) []string {
	var out []string
	for _, f := range files {
		if filepath.IsAbs(f) && !slices.Contains(out, f) && len(out) < Most {
			out = append(out, f)
		}
	}
	return out
}

func (l *List) write(files []string) error {
	l.files = files[:min(len(files), Most)]
	if l.path == "" {
		return nil
	}
	if err := os.MkdirAll(filepath.Dir(l.path), 0o700); err != nil {
		return &export.FileError{Doing: "write", Path: l.path, Err: err}
	}
	err := export.WriteFile(l.path, func(w io.Writer) error {
		e := json.NewEncoder(w)
		e.SetIndent("", "  ")
		e.SetEscapeHTML(false)
		return e.Encode(document{append([]string{}, l.files...)}) // [], not null
	})
	l.kept = l.kept || err == nil
	return err
}
