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

// started starts a program, waits for its first frame and ends it. It returns
// how long that took and the memory it then had, after it has come to rest.
func started(b *testing.B, vars []string, args ...string) (time.Duration, float64) {
	b.Helper()
	const (
		limit = 2 * time.Minute
		rest  = 2 * time.Second
	)
	c, stderr := program(b, append([]string{"DISPLAY=" + os.Getenv("DISPLAY")}, vars...), args...)
	begun := time.Now()
	require.NoError(b, c.Start())
	defer func() {
		_ = c.Process.Kill()
		_ = c.Wait()
	}()
	for {
		out, err := exec.Command("xdotool", "search", "--onlyvisible", "--all",
			"--pid", strconv.Itoa(c.Process.Pid), "--name", "Stopwright").Output()
		if window := string(bytes.TrimSpace(out)); err == nil && window != "" && painted(window) {
			break
		}
		require.Less(b, time.Since(begun), limit, stderr.String())
	}
	took := time.Since(begun)
	time.Sleep(rest)
	return took, resident(b, c.Process.Pid)
}

// BenchmarkStart starts the program, and an empty window of the same toolkit, up
// to the first frame, and tells the memory that each then has. One is started
// after the other, so that whatever else the machine does befalls both.
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
		{"table", nil, nil},
		{"720", nil, []string{large}},
	} {
		b.Run(c.name, func(b *testing.B) {
			var memory float64
			var took time.Duration
			n := 0
			for b.Loop() {
				t, m := started(b, c.vars, c.args...)
				took, memory, n = took+t, memory+m, n+1
			}
			b.ReportMetric(float64(took.Milliseconds())/float64(n), "ms/frame")
			b.ReportMetric(memory/float64(n), "MB")
			b.ReportMetric(0, "ns/op")
		})
	}
}
