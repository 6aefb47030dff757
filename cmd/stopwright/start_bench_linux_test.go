//go:build !ci

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
)

// painted reports whether a window shows more than one colour: its first frame
// is there.
func painted(window string) bool {
	colours, err := exec.Command("import", "-window", window, "-crop", "200x60+0+0", "-format", "%k", "info:").Output()
	n, errNumber := strconv.Atoi(strings.TrimSpace(string(colours)))
	return err == nil && errNumber == nil && n > 1
}

// resident returns the memory that a process has and shares with no other, MB.
func resident(b *testing.B, pid int) float64 {
	b.Helper()
	text, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
	require.NoError(b, err)
	for line := range strings.Lines(string(text)) {
		if value, found := strings.CutPrefix(line, "RssAnon:"); found {
			kB, err := strconv.ParseFloat(strings.Fields(value)[0], 64)
			require.NoError(b, err)
			return kB / 1000
		}
	}
	require.Fail(b, "no RssAnon: an old kernel")
	return 0
}

// beginning is what it took a program to show its first frame.
type beginning struct {
	wall   time.Duration // from its start to the frame
	cpu    time.Duration // that all its threads worked until it had come to rest
	memory float64       // MB, at rest
}

// started starts a program, waits for its first frame and ends it.
func started(b *testing.B, vars []string, args ...string) (took beginning) {
	b.Helper()
	const (
		limit = 2 * time.Minute
		rest  = settled + 2*time.Second
	)
	c, stderr := program(b, append([]string{"DISPLAY=" + os.Getenv("DISPLAY")}, vars...), args...)
	begun := time.Now()
	require.NoError(b, c.Start())
	defer func() {
		_ = c.Process.Kill()
		_ = c.Wait() // with the error that it was killed
		took.cpu = c.ProcessState.UserTime() + c.ProcessState.SystemTime()
	}()
	for {
		out, err := exec.Command("xdotool", "search", "--onlyvisible", "--all",
			"--pid", strconv.Itoa(c.Process.Pid), "--name", "Stopwright").Output()
		if window := string(bytes.TrimSpace(out)); err == nil && window != "" && painted(window) {
			break
		}
		require.Less(b, time.Since(begun), limit, stderr.String())
	}
	took.wall = time.Since(begun)
	time.Sleep(rest)
	took.memory = resident(b, c.Process.Pid)
	return took
}

// BenchmarkStart starts the program, and empty windows of the same toolkit, up
// to the first frame, and tells the memory that each then has. On a machine that
// does other work besides, the time of its processors is the one to compare.
func BenchmarkStart(b *testing.B) {
	if os.Getenv("STOPWRIGHT_WINDOW_TEST") != "1" {
		b.Skip("needs a display of its own: go run ./cmd/setup test ./cmd/stopwright -bench Start -run ^$")
	}
	const seats = 720
	p := plan.Default()
	p.Catches[0].Radius, p.Turntable.Diameter, p.Base.Width, p.Base.Depth = 1040, 2140, 2200, 2200
	for i := range seats {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360*float64(i)/seats - 180})
	}
	large := filepath.Join(b.TempDir(), "large.stopwright")
	require.NoError(b, export.SavePlan(large, p))
	for _, c := range []struct {
		name string
		vars []string
		args []string
	}{
		{"empty", []string{asProgram + "=" + emptyWindow}, nil},
		{"empty-large", []string{asProgram + "=" + emptyLarge}, nil},
		{"table", nil, nil},
		{"720", nil, []string{large}},
	} {
		b.Run(c.name, func(b *testing.B) {
			var all beginning
			for b.Loop() {
				one := started(b, c.vars, c.args...)
				all.wall, all.cpu, all.memory = all.wall+one.wall, all.cpu+one.cpu, all.memory+one.memory
			}
			each := func(d time.Duration) float64 { return float64(d.Milliseconds()) / float64(b.N) }
			b.ReportMetric(each(all.wall), "ms-to-frame")
			b.ReportMetric(each(all.cpu), "ms-of-cpu")
			b.ReportMetric(all.memory/float64(b.N), "MB")
			b.ReportMetric(0, "ns/op")
		})
	}
}
