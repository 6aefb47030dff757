package export

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// trouble is a disk on which one step goes wrong: it is denied, or done by
// half, as on a disk that fills up; or the program is killed there, and nothing
// that it would have done after is done.
type trouble struct {
	realDisk
	at   int // the step, from 1; 0: none
	how  mishap
	step int // taken so far
	dead bool
}

// mishap is what happens at a step.
type mishap string

const (
	denied       mishap = "denied"
	killedBefore mishap = "killed before"
	killedAfter  mishap = "killed after"
)

var errKilled = errors.New("killed")

// take does a step unless trouble comes in its way. half is what is done of a
// step that fails midway; nil: nothing.
func (d *trouble) take(do func() error, half func()) error {
	if d.dead {
		return errKilled
	}
	d.step++
	if d.step != d.at {
		return do()
	}
	if d.how == killedAfter {
		_ = do()
	} else if half != nil {
		half()
	}
	if d.how == denied {
		return syscall.ENOSPC
	}
	d.dead = true
	return errKilled
}

func (d *trouble) create(name string, mode fs.FileMode) (f openFile, err error) {
	err = d.take(func() (err error) {
		f, err = d.realDisk.create(name, mode)
		return err
	}, nil)
	if err != nil {
		return nil, err
	}
	return troubled{f, d}, nil
}

func (d *trouble) rename(from, to string) error {
	return d.take(func() error { return d.realDisk.rename(from, to) }, nil)
}

func (d *trouble) remove(name string) error {
	return d.take(func() error { return d.realDisk.remove(name) }, nil)
}

func (d *trouble) syncFolder(name string) {
	_ = d.take(func() error { d.realDisk.syncFolder(name); return nil }, nil)
}

// troubled is a file on such a disk.
type troubled struct {
	openFile
	disk *trouble
}

func (f troubled) Write(b []byte) (n int, err error) {
	err = f.disk.take(
		func() (err error) { n, err = f.openFile.Write(b); return err },
		func() { n, _ = f.openFile.Write(b[:len(b)/2]) },
	)
	return n, err
}

func (f troubled) Chmod(mode fs.FileMode) error {
	return f.disk.take(func() error { return f.openFile.Chmod(mode) }, nil)
}

func (f troubled) Sync() error { return f.disk.take(f.openFile.Sync, nil) }

// Close gives the file back whatever happens: so does the system when a program
// is killed.
func (f troubled) Close() error {
	return errors.Join(f.openFile.Close(), f.disk.take(func() error { return nil }, nil))
}

// long is more than is written in one step.
var long = strings.Repeat("all of it\n", 2000)

func wholeText(w io.Writer) error {
	_, err := io.WriteString(w, long)
	return err
}

// atEveryStep runs a job on a disk where each step in turn goes wrong, in each
// way, until it takes fewer steps than that.
func atEveryStep(t *testing.T, job func(t *testing.T, d *trouble)) {
	const (
		fewest = 5    // steps of writing one file: made, written, synced, closed, renamed
		most   = 1000 // a job that never gets through would go on for ever
	)
	for _, how := range []mishap{denied, killedBefore, killedAfter} {
		for at := 1; ; at++ {
			require.Less(t, at, most)
			d := &trouble{at: at, how: how}
			t.Run(fmt.Sprint(how, " step ", at), func(t *testing.T) { job(t, d) })
			if d.step < at {
				require.Greater(t, at, fewest)
				break
			}
		}
	}
}

// contents returns what the files of a folder hold, by name. What a killed
// program left behind on its way is left out, but nothing else is.
func contents(t *testing.T, dir string, d *trouble) map[string]string {
	t.Helper()
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	out := map[string]string{}
	for _, e := range list {
		if strings.HasPrefix(e.Name(), ".stopwright-") && strings.HasSuffix(e.Name(), ".tmp") {
			assert.True(t, d.dead, "%s is left behind", e.Name())
			continue
		}
		text, err := os.ReadFile(filepath.Join(dir, e.Name()))
		require.NoError(t, err)
		out[e.Name()] = string(text)
	}
	return out
}

// Whatever goes wrong at whichever step, the file is the old one or the new one
// and never anything else; and one said to be written is.
func TestAFileIsOldOrNewWhateverHappens(t *testing.T) {
	for _, there := range []bool{true, false} {
		atEveryStep(t, func(t *testing.T, d *trouble) {
			dir := t.TempDir()
			path := filepath.Join(dir, "plate")
			if there {
				require.NoError(t, os.WriteFile(path, []byte("old"), 0o640))
			}
			err := writeFile(d, path, wholeText)
			held, exists := contents(t, dir, d)["plate"]
			switch {
			case held == long: // the last step, to keep the name, may be lost
			case there:
				assert.Equal(t, "old", held)
				assert.Error(t, err)
			default:
				assert.False(t, exists, held)
				assert.Error(t, err)
			}
			if d.how == denied && err != nil {
				assert.EqualError(t, err, `cannot write "`+path+`": the disk is full`)
			}
		})
	}
}

// Of several files each is old or new, and those said to be written are new.
func TestEveryFileOfABundleIsOldOrNewWhateverHappens(t *testing.T) {
	atEveryStep(t, func(t *testing.T, d *trouble) {
		dir := t.TempDir()
		var outputs []output
		for _, name := range []string{"a", "b", "c"} {
			path := filepath.Join(dir, name)
			require.NoError(t, os.WriteFile(path, []byte("old"), 0o640))
			outputs = append(outputs, output{path, wholeText})
		}
		written, err := writeAll(d, outputs)
		held := contents(t, dir, d)
		require.Len(t, held, 3)
		for _, o := range outputs {
			text := held[filepath.Base(o.path)]
			assert.Contains(t, []string{"old", long}, text)
			if !d.dead {
				assert.Equal(t, slices.Contains(written, o.path), text == long, "%s is told rightly: %v", o.path, err)
			}
		}
		if err == nil {
			assert.Len(t, written, 3)
		}
	})
}
