package export

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
)

// Export makes every file that is asked for and returns the paths of those it
// wrote, in the order of [Formats].
//
// All are made before any is written, and all lie on the disk whole before the
// first takes its place, so that an error (a path that cannot be written, a full
// disk) nearly always leaves everything as it was. Where it does not, the error
// names the files that were replaced. It is a [*ClashError] or wraps a
// [*FileError]. Equal reports and requests give equal bytes.
func Export(r detent.Report, q Request) ([]string, error) {
	outputs := q.outputs(r)
	if err := clash(outputs, q.Plan); err != nil {
		return nil, err
	}
	return writeAll(realDisk{}, outputs)
}

// writeAll writes every file or, as far as it can be foreseen, none.
func writeAll(d disk, outputs []output) (written []string, err error) {
	made := make([]bytes.Buffer, len(outputs))
	for i, o := range outputs {
		if err := o.write(&made[i]); err != nil {
			return nil, cannotWrite(o.path, err)
		}
	}
	var ready []*staged
	for i, o := range outputs {
		s, err := stage(d, o.path, func(w io.Writer) error {
			_, err := w.Write(made[i].Bytes())
			return err
		})
		if err != nil {
			discard(ready)
			return nil, err
		}
		ready = append(ready, s)
	}
	return commit(ready)
}

// output is one file to be made.
type output struct {
	path  string
	write func(io.Writer) error
}

// outputs lists the files asked for.
func (q Request) outputs(r detent.Report) []output {
	var all []output
	for _, f := range Formats {
		if path := *f.Path(&q); path != "" {
			all = append(all, f.outputs(r, q, path)...)
		}
	}
	return all
}

// commit puts files in their places: first those that go to a device or a
// pipe, which alone can still run out of room.
func commit(ready []*staged) (written []string, err error) {
	done := make([]bool, len(ready))
	for _, special := range []bool{true, false} {
		for i, s := range ready {
			if s.to.special() != special || err != nil {
				continue
			}
			err = s.commit()
			done[i] = err == nil
		}
	}
	for i, s := range ready {
		if done[i] {
			written = append(written, s.path)
		} else {
			s.discard()
		}
	}
	if err != nil && len(written) > 0 {
		err = &words.Error{
			Saying: words.Phrase{Key: "file.partly", Args: words.Args{"Error": err, "Written": strings.Join(written, ", ")}},
			Cause:  err,
		}
	}
	return written, err
}

func discard(all []*staged) {
	for _, s := range all {
		s.discard()
	}
}

// ClashError means that one file would be written twice, or the plan written
// over.
type ClashError struct {
	Path string // as the caller gave it
	Plan bool   // it is the plan
}

func (e *ClashError) Error() string { return e.In(words.English()) }

// In says it in the language of a catalogue.
func (e *ClashError) In(c *words.Catalogue) string {
	key := "file.clash"
	if e.Plan {
		key = "file.clash.plan"
	}
	return c.Text(key, words.Args{"File": quoted(e.Path)})
}

// clash returns a [*ClashError] for the first output that is a file already
// spoken for. What is wrong with a path in itself is left to be told later.
func clash(outputs []output, plan string) error {
	var taken []destination
	if d, err := lead(plan); err == nil {
		taken = append(taken, d)
	}
	own := len(taken)
	for _, o := range outputs {
		d, err := lead(o.path)
		if err != nil || d.special() {
			continue
		}
		for i, other := range taken {
			if same(d, other) {
				return &ClashError{Path: o.path, Plan: i < own}
			}
		}
		taken = append(taken, d)
	}
	return nil
}

// same reports whether two destinations are one file.
func same(a, b destination) bool {
	if a.exists && b.exists {
		x, errX := os.Stat(a.path)
		y, errY := os.Stat(b.path)
		return errX == nil && errY == nil && os.SameFile(x, y)
	}
	x, errX := filepath.Abs(a.path)
	y, errY := filepath.Abs(b.path)
	return errX == nil && errY == nil && x == y
}

// Paths returns the files that [Export] would write.
func Paths(r detent.Report, q Request) []string {
	var paths []string
	for _, o := range q.outputs(r) {
		paths = append(paths, o.path)
	}
	return paths
}
