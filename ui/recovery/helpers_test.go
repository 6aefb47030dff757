package recovery_test

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
	"stopwright/ui/recovery"
)

// handClock is a clock that stands until it is put on.
type handClock struct {
	now    time.Time
	alarms []*alarm
}

type alarm struct {
	at   time.Time
	ring func()
}

func newHandClock() *handClock {
	return &handClock{now: time.Date(2026, 11, 20, 10, 15, 2, 0, time.UTC)}
}

func (c *handClock) clock() recovery.Clock {
	return recovery.Clock{
		Now: func() time.Time { return c.now },
		After: func(d time.Duration, f func()) func() {
			a := &alarm{c.now.Add(d), f}
			c.alarms = append(c.alarms, a)
			return func() { a.ring = nil }
		},
	}
}

// set returns how many alarms have still to ring.
func (c *handClock) set() (n int) {
	for _, a := range c.alarms {
		if a.ring != nil {
			n++
		}
	}
	return n
}

// put puts the clock on, ringing what falls due.
func (c *handClock) put(on time.Duration) {
	c.now = c.now.Add(on)
	for _, a := range c.alarms {
		if a.ring != nil && !a.at.After(c.now) {
			ring := a.ring
			a.ring = nil
			ring()
		}
	}
}

// program is a running program as far as a keeper sees it.
type program struct {
	*recovery.Keeper
	clock   *handClock
	plan    plan.Plan
	path    string
	mark    diskfile.Mark
	unsaved bool
	errs    []error
}

func start(folder string) *program {
	p := &program{clock: newHandClock(), plan: plan.Default()}
	p.Keeper = recovery.NewKeeper(folder, p.clock.clock(), func() (recovery.Copy, bool) {
		return recovery.Copy{Plan: p.plan, Path: p.path, Mark: p.mark}, p.unsaved
	}, func(err error) { p.errs = append(p.errs, err) })
	return p
}

// edit gives the plan a title and says so.
func (p *program) edit(title string) {
	p.plan = p.plan.Clone()
	p.plan.Title = title
	p.unsaved = true
	p.Edited()
}

// save is all that a keeper sees of saving.
func (p *program) save() {
	p.unsaved = false
	p.Settled()
	p.Wait()
}

// wait puts the clock on and waits for the disk.
func (p *program) wait(d time.Duration) {
	p.clock.put(d)
	p.Wait()
}

// crash ends the program as the operating system sees it: its locks are gone,
// its files stay.
func (p *program) crash() { p.Abandon() }

// folder is a recovery folder that is not there yet.
func folder(t *testing.T) string {
	t.Helper()
	return filepath.Join(t.TempDir(), "stopwright", "recovery")
}

// files returns the names in a folder; none if it is not there.
func files(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if !os.IsNotExist(err) {
		require.NoError(t, err)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

// find returns what a starting program is offered.
func find(t *testing.T, folder string) []*recovery.Found {
	t.Helper()
	found, err := recovery.Find(folder)
	require.NoError(t, err)
	return found
}

// titles returns the titles of the copies a starting program is offered, and
// leaves them.
func titles(t *testing.T, folder string) []string {
	t.Helper()
	var out []string
	for _, f := range find(t, folder) {
		out = append(out, f.Plan.Title)
		f.Release()
	}
	return out
}
