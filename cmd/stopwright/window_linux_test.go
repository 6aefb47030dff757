//go:build !ci

package main

import (
	"bytes"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export"
)

// patience is how long anything in the window may take on a busy machine; a
// window that works is never waited for as long.
const patience = 90 * time.Second

// pause is how often a condition that is waited for is looked at.
const pause = 50 * time.Millisecond

// desk is the program in a real window, worked by xdotool. There need be no
// window manager.
type desk struct {
	t       testing.TB
	program *exec.Cmd
	stderr  *bytes.Buffer
	ended   chan struct{} // closed when it has
	how     error         // nil: with exit code 0
	window  string        // its number
}

// sit starts the program and waits for its window. At the end of the test the
// program is killed if it still runs, after a picture is taken of what went
// wrong.
func sit(t testing.TB, args ...string) *desk {
	t.Helper()
	return sitAt(t, nil, args...)
}

// sitAt does so with variables of the surrounding, as the home that an earlier
// run had.
func sitAt(t testing.TB, vars []string, args ...string) *desk {
	t.Helper()
	if os.Getenv("STOPWRIGHT_WINDOW_TEST") != "1" {
		t.Skip("needs a display of its own: go run ./cmd/setup test")
	}
	d := &desk{t: t, ended: make(chan struct{})}
	d.program, d.stderr = program(t, append([]string{"DISPLAY=" + os.Getenv("DISPLAY")}, vars...), args...)
	require.NoError(t, d.program.Start())
	go func() {
		d.how = d.program.Wait()
		close(d.ended)
	}()
	t.Cleanup(func() {
		if t.Failed() {
			d.picture()
		}
		_ = d.program.Process.Kill() // it may have ended, as it should
		<-d.ended
		if t.Failed() {
			t.Log("the program said: " + d.stderr.String())
		}
	})
	d.until("the window is there", func() bool {
		out, err := exec.Command("xdotool", "search", "--onlyvisible", "--all",
			"--pid", strconv.Itoa(d.program.Process.Pid), "--name", "Stopwright").Output()
		d.window = strings.TrimSpace(string(out))
		return err == nil && d.window != ""
	})
	d.do("windowfocus", "--sync", d.window)
	return d
}

// picture saves what is on the screen where it outlasts the test.
func (d *desk) picture() {
	folder, err := os.MkdirTemp("", "stopwright-window-")
	if err != nil {
		d.t.Log("no picture could be taken: ", err)
		return
	}
	path := filepath.Join(folder, "screen.png")
	if out, err := exec.Command("import", "-window", "root", path).CombinedOutput(); err != nil {
		d.t.Logf("no picture could be taken: %v %s", err, out)
		return
	}
	d.t.Log("the screen when it failed: " + path)
}

// do has xdotool do one thing.
func (d *desk) do(args ...string) string {
	d.t.Helper()
	out, err := exec.Command("xdotool", args...).CombinedOutput()
	require.NoError(d.t, err, "xdotool %v: %s", args, out)
	return strings.TrimSpace(string(out))
}

// key presses keys one after another.
func (d *desk) key(keys ...string) {
	d.t.Helper()
	d.do(append([]string{"key", "--clearmodifiers", "--delay", "30"}, keys...)...)
}

// line types text and ends it with Enter.
func (d *desk) line(text string) {
	d.t.Helper()
	d.do("type", "--clearmodifiers", "--delay", "15", "--", text)
	d.key("Return")
}

// click clicks a place of the window.
func (d *desk) click(x, y int) {
	d.t.Helper()
	d.do("mousemove", "--window", d.window, strconv.Itoa(x), strconv.Itoa(y), "click", "1")
}

// until waits for something to come true.
func (d *desk) until(what string, holds func() bool) {
	d.t.Helper()
	ended := false
	met := d.within(patience, func() bool {
		select {
		case <-d.ended:
			ended = true
			return true
		default:
			return holds()
		}
	})
	require.False(d.t, ended, "the program ended before: %s", what)
	require.True(d.t, met, "after %v not yet: %s", patience, what)
}

// within reports whether something comes true in a time.
func (d *desk) within(limit time.Duration, holds func() bool) bool {
	for deadline := time.Now().Add(limit); ; time.Sleep(pause) {
		if holds() {
			return true
		}
		if time.Now().After(deadline) {
			return false
		}
	}
}

func (d *desk) title() string { return d.do("getwindowname", d.window) }

// unsaved reports whether the title says so.
func (d *desk) unsaved() bool { return strings.Contains(d.title(), "(not saved)") }

// saved waits until a file holds stops at the angles given, and returns it.
func (d *desk) saved(path string, angles ...float64) plan.Plan {
	d.t.Helper()
	var p plan.Plan
	var err error
	if !d.within(patience, func() bool {
		p, err = export.ReadPlan(path)
		return err == nil && slices.Equal(angles, anglesOf(p))
	}) {
		require.NoError(d.t, err)
		require.Equal(d.t, angles, anglesOf(p))
	}
	d.until("the title says it is saved", func() bool { return !d.unsaved() })
	return p
}

func anglesOf(p plan.Plan) []float64 {
	var out []float64
	for _, s := range p.Stops {
		out = append(out, s.Angle)
	}
	return out
}

// quit closes the window by its key and sees the program end well.
func (d *desk) quit() {
	d.t.Helper()
	d.key("ctrl+q")
	select {
	case <-d.ended:
		assert.NoError(d.t, d.how, "the exit code is 0")
	case <-time.After(patience):
		require.Fail(d.t, "the program does not end")
	}
	assert.Empty(d.t, d.stderr.String(), "a run with nothing to tell tells nothing")
}

// The main job by the keys alone: a new plan, stops, a pair that runs into each
// other and is taken apart, saved and exported.
func TestTheMainJobByKeys(t *testing.T) {
	d := sit(t)
	path := filepath.Join(t.TempDir(), "table.stopwright")
	d.key("ctrl+n")
	d.line("0;20;36;54")
	d.until("the title says it is not saved", d.unsaved)
	d.line("38")
	d.key("ctrl+s")
	d.key("ctrl+a")
	d.line(path)
	p := d.saved(path, 0, 20, 36, 38, 54)
	for _, s := range p.Stops {
		assert.Equal(t, s.Angle != 0, s.BothSides, "%v", s.Angle)
	}
	assert.Contains(t, findings(p), "seats-overlap", "36 and 38")

	d.key("ctrl+Delete") // 38, as it was added last
	d.until("the title says it is not saved", d.unsaved)
	d.key("ctrl+s")
	assert.NotContains(t, findings(d.saved(path, 0, 20, 36, 54)), "seats-overlap")

	base := filepath.Join(t.TempDir(), "cut")
	d.key("ctrl+e")
	d.key("ctrl+a")
	d.line(base)
	for _, end := range []string{".dxf", "-base.dxf", "-turntable.dxf", ".csv", ".pdf"} {
		d.until("there is "+base+end, func() bool {
			_, err := os.Stat(base + end)
			return err == nil
		})
	}
	d.key("Return") // what was written has been read
	d.quit()
}

func findings(p plan.Plan) []string {
	var out []string
	for _, f := range detent.Solve(p).Findings {
		out = append(out, f.ID)
	}
	return out
}

// A click of the mouse on the ring adds a stop; quitting asks before it is lost.
func TestAStopByTheMouse(t *testing.T) {
	path := filepath.Join(t.TempDir(), "table.stopwright")
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 0}}
	require.NoError(t, export.SavePlan(path, p))
	d := sit(t, path)
	d.until("the title names the file", func() bool { return strings.Contains(d.title(), "table.stopwright") })

	d.addByClick()

	d.key("ctrl+q")
	d.key("Escape")
	d.key("ctrl+s")
	d.until("it is saved", func() bool { return !d.unsaved() })
	saved, err := export.ReadPlan(path)
	require.NoError(t, err)
	require.Len(t, saved.Stops, 2)
	for _, s := range saved.Stops {
		if s.Angle != 0 {
			const half, off = 180.0, 15.0 // degrees: the middle of the window is not quite the pivot
			assert.InDelta(t, half, math.Abs(s.Angle), off)
		}
	}
	d.quit()
}
