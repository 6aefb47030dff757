package recovery

import (
	"bytes"
	"encoding/json"
	"io"
	"os"
	"time"
	"unicode/utf8"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
)

// Copy is a plan that is not saved.
type Copy struct {
	Plan plan.Plan
	Path string        // of its file; "" if it has none, or one whose name is not UTF-8
	Mark diskfile.Mark // of that file when it was last read or written
	Time time.Time     // when the copy was made
}

// The first lines of a copy.
const (
	formatName    = "stopwright recovery copy"
	formatVersion = 1
)

// maxBytes is the most that a copy can have: a plan and a path.
const maxBytes = plan.MaxFileBytes + 1<<20

// document is the file of a copy. The plan is written as its own file would be,
// so that even without the program it can be cut out by hand.
type document struct {
	Format  string          `json:"format"`
	Version int             `json:"version"`
	Time    time.Time       `json:"time"`
	Path    string          `json:"path"`
	File    diskfile.Mark   `json:"file"`
	Plan    json.RawMessage `json:"plan"`
}

// encode writes a copy as its file.
func encode(c Copy) ([]byte, error) {
	var p bytes.Buffer
	if err := plan.Encode(&p, c.Plan); err != nil {
		return nil, err
	}
	d := document{formatName, formatVersion, c.Time, c.Path, c.Mark, p.Bytes()}
	if !utf8.ValidString(c.Path) {
		d.Path, d.File = "", diskfile.Mark{}
	}
	var out bytes.Buffer
	e := json.NewEncoder(&out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	err := e.Encode(d)
	return out.Bytes(), err
}

// errNotCopy means that a file is no copy of a plan.
var errNotCopy error = &words.Error{Saying: words.Phrase{Key: "recover.notcopy"}}

// decode reads the file of a copy.
func decode(content []byte) (Copy, error) {
	var d document
	if err := json.Unmarshal(content, &d); err != nil || d.Format != formatName {
		return Copy{}, errNotCopy
	}
	if d.Version > formatVersion {
		return Copy{}, &words.Error{Saying: words.Phrase{
			Key: "recover.newer", Args: words.Args{"Version": d.Version, "Reads": formatVersion},
		}}
	}
	p, err := plan.Decode(bytes.NewReader(d.Plan))
	return Copy{p, d.Path, d.File, d.Time}, err
}

// readCopy reads the copy at path. What is known of it is returned with an
// error too: its time, at least.
func readCopy(path string) (Copy, error) {
	f, err := os.Open(path)
	if err != nil {
		return Copy{}, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return Copy{}, err
	}
	content, err := io.ReadAll(io.LimitReader(f, maxBytes+1))
	if err != nil {
		return Copy{Time: info.ModTime()}, err
	}
	c, err := decode(content)
	if c.Time.IsZero() {
		c.Time = info.ModTime()
	}
	return c, err
}
