//go:build !ci

package main

import (
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
)

// addByClick clicks downwards from the middle of the window, which lies on the
// plate, until the ring is met, at about half a turn, and a stop added. Nothing
// on the way takes a click amiss. It returns where that was: a seat is there now.
func (d *desk) addByClick() (x, y int) {
	d.t.Helper()
	width, height := d.size()
	const step = 10  // px, less than the ring is wide for a click
	x = width/2 - 15 // the right pane is the wider by 30
	for y = height / 2; y < height; y += step {
		d.click(x, y)
		if d.within(time.Second, d.unsaved) {
			return x, y
		}
	}
	require.Fail(d.t, "no click added a stop")
	return 0, 0
}

// size returns the window's, in px.
func (d *desk) size() (width, height int) {
	d.t.Helper()
	for _, line := range strings.Split(d.do("getwindowgeometry", "--shell", d.window), "\n") {
		name, value, _ := strings.Cut(line, "=")
		n, err := strconv.Atoi(value)
		require.NoError(d.t, err, line)
		switch name {
		case "WIDTH":
			width = n
		case "HEIGHT":
			height = n
		}
	}
	return width, height
}

// drag presses the mouse at a place of the window and moves it across before it
// is let go.
func (d *desk) drag(x, y, across int) {
	d.t.Helper()
	const steps = 8
	to := func(x int) { d.do("mousemove", "--window", d.window, strconv.Itoa(x), strconv.Itoa(y)) }
	to(x)
	d.do("mousedown", "1")
	for i := range steps {
		to(x + across*(i+1)/steps)
		time.Sleep(pause)
	}
	d.do("mouseup", "1")
}

// save saves by the key and returns the angles that the file then holds.
func (d *desk) save(path string) []float64 {
	d.t.Helper()
	d.key("ctrl+s")
	d.until("it is saved", func() bool { return !d.unsaved() })
	p, err := export.ReadPlan(path)
	require.NoError(d.t, err)
	return anglesOf(p)
}

// A seat is dragged and put back, a stop added and not saved. The program is
// killed, started anew, and nothing is lost.
func TestAKilledProgramLosesNothing(t *testing.T) {
	home := t.TempDir()
	vars := []string{"HOME=" + home, "XDG_CONFIG_HOME=" + home}
	copies := func() []string {
		found, err := filepath.Glob(filepath.Join(home, "stopwright", "recovery", "*.copy"))
		require.NoError(t, err)
		return found
	}
	path := filepath.Join(t.TempDir(), "table.stopwright")
	p := plan.Default()
	p.Stops = []plan.Stop{{Angle: 0}}
	require.NoError(t, export.SavePlan(path, p))

	d := sitAt(t, vars, path)
	x, y := d.addByClick()
	added := d.save(path)
	require.Len(t, added, 2)

	const across = 60 // px
	d.drag(x, y, across)
	d.until("dragging the seat is an edit", d.unsaved)
	dragged := d.save(path)
	require.Len(t, dragged, 2)
	assert.NotEqual(t, added, dragged)

	d.key("ctrl+z")
	d.until("undo is another", d.unsaved)
	assert.Equal(t, added, d.save(path))
	d.until("what is saved is not kept twice", func() bool { return len(copies()) == 0 })

	d.key("ctrl+l")
	d.line("33")
	d.until("the title says it is not saved", d.unsaved)
	edited := time.Now()
	d.until("a recovery copy is there", func() bool { return len(copies()) == 1 })
	t.Logf("the recovery copy was there %v after the edit", time.Since(edited).Round(pause))
	require.NoError(t, d.program.Process.Kill())
	<-d.ended
	require.Error(t, d.how)

	d = sitAt(t, vars)
	d.until("the plan is recovered", func() bool {
		d.key("Return") // Recover, once it is asked; else of no effect
		return strings.Contains(d.title(), "table.stopwright (not saved)")
	})
	held, err := export.ReadPlan(path)
	require.NoError(t, err)
	assert.Equal(t, added, anglesOf(held), "the file is as it was until it is saved")
	d.key("ctrl+s")
	want := append(slices.Clone(added), 33)
	slices.Sort(want)
	d.saved(path, want...)
	d.until("nothing is left to recover", func() bool { return len(copies()) == 0 })
	d.quit()
	left, err := os.ReadDir(filepath.Join(home, "stopwright", "recovery"))
	require.NoError(t, err)
	assert.Empty(t, left)
}
