package crash

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var noon = time.Date(2026, 11, 20, 12, 0, 0, 0, time.UTC)

// trace is a stack trace as the language writes it.
const trace = `goroutine 1 [running]:
runtime/debug.Stack()
	/home/maker/go/src/runtime/debug/stack.go:26 +0x5e
stopwright/ui.(*Window).changed(0xc000012345, 0x3)
	/home/maker/my secret shed/stopwright/ui/window.go:123 +0x1d
created by stopwright/ui.newFiling.func3 in goroutine 1
	C:\Users\maker\stopwright\ui\filing.go:60 +0x66
`

func TestAReportNamesThePlacesAndNothingPrivate(t *testing.T) {
	t.Setenv("HOME", "/home/maker")
	t.Setenv("USERPROFILE", "/home/maker") // where Windows looks
	r := Report{Time: noon, Program: "0.1.0", Fault: "open /home/maker/table.stopwright:\n gone", Stack: trace}
	text := r.String()
	assert.Contains(t, text, "2026-11-20T12:00:00Z")
	assert.Contains(t, text, "Fault    open ~/table.stopwright: gone\n")
	assert.Contains(t, text, "  stopwright/ui.(*Window).changed (ui/window.go:123)\n")
	assert.Contains(t, text, "  created by stopwright/ui.newFiling.func3 in goroutine 1 (ui/filing.go:60)\n")
	for _, private := range []string{"maker", "shed", "0xc0"} {
		assert.NotContains(t, text, private)
	}
}

func TestALongFaultIsCut(t *testing.T) {
	text := Report{Fault: strings.Repeat("ä", 10*maxFault)}.String()
	assert.Less(t, len(text), 2*maxFault)
	assert.Contains(t, text, "ä…")
}

func TestReportsAreFoundUntilTold(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "not there yet")
	assert.Empty(t, Find(folder))
	first, err := Write(folder, Report{Time: noon})
	require.NoError(t, err)
	second, err := Write(folder, Report{Time: noon.Add(time.Hour)})
	require.NoError(t, err)
	assert.Equal(t, []string{first, second}, Find(folder))
	Told(Find(folder))
	assert.Empty(t, Find(folder))
	assert.FileExists(t, Settled(first), "it can still be read")
	Told(nil)
}

func TestOldReportsGo(t *testing.T) {
	folder := t.TempDir()
	other := filepath.Join(folder, "20261120T120000-1-0.copy")
	require.NoError(t, os.WriteFile(other, nil, 0o600))
	for i := range keep + 3 {
		_, err := Write(folder, Report{Time: noon.Add(time.Duration(i) * time.Minute)})
		require.NoError(t, err)
	}
	Told(Find(folder))
	left := named(folder, ending)
	require.Len(t, left, keep)
	assert.Contains(t, left[0], "20261120T120300", "the newest stay")
	assert.FileExists(t, other, "what is not ours is left alone")
}

func TestWriteSaysWhyNot(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	_, err := Write(filepath.Join(file, "folder"), Report{})
	assert.ErrorContains(t, err, "cannot write")
}

// asProgram makes this test's own binary a program that is watched in the
// folder named and then torn down.
const asProgram = "STOPWRIGHT_CRASH_FOLDER"

func TestMain(m *testing.M) {
	if folder := os.Getenv(asProgram); folder != "" {
		end := Watch(folder, noon, "version 7")
		if os.Getenv("WELL") != "" {
			end()
			os.Exit(0)
		}
		go func() { panic("in a place of its own") }()
		select {}
	}
	os.Exit(m.Run())
}

func TestAFaultInAGoroutineIsWrittenDownToo(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "recovery")
	run := func(vars ...string) error {
		self, err := os.Executable()
		require.NoError(t, err)
		c := exec.Command(self)
		c.Env = append(append(os.Environ(), asProgram+"="+folder), vars...)
		return c.Run()
	}
	require.NoError(t, run("WELL=1"))
	left, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Empty(t, left, "a good end leaves nothing")

	require.Error(t, run())
	reports := Find(folder)
	require.Len(t, reports, 1)
	text, err := os.ReadFile(reports[0])
	require.NoError(t, err)
	assert.Contains(t, string(text), "Program  version 7\n")
	assert.Contains(t, string(text), "in a place of its own")
	assert.Contains(t, string(text), "crash/crash_test.go:")
	assert.Empty(t, named(folder, rawEnding), "it is made into a report once")
}

// A program that still runs, or one killed from outside, has an empty raw file.
func TestAnEmptyRawFileStaysUntilItIsOld(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, prefix+"20261120T120000-1"+rawEnding)
	require.NoError(t, os.WriteFile(path, []byte("version 7\n"), 0o600))
	assert.Empty(t, Find(folder))
	assert.FileExists(t, path)
	long := time.Now().Add(-2 * abandoned)
	require.NoError(t, os.Chtimes(path, long, long))
	assert.Empty(t, Find(folder))
	assert.NoFileExists(t, path)
}

func TestWatchingWhereNothingCanBeWritten(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	assert.NotPanics(t, Watch(filepath.Join(file, "folder"), noon, ""))
	taken := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(taken, prefix+identity(noon)+rawEnding), nil, 0o600))
	assert.NotPanics(t, Watch(taken, noon, ""))
}

// The empty raw file of a program that was killed goes at the next look: no
// process has its number any more.
func TestTheRawFileOfAKilledProgramGoes(t *testing.T) {
	folder := t.TempDir()
	ended := exec.Command(os.Args[0], "-test.run=^$")
	require.NoError(t, ended.Run())
	path := filepath.Join(folder, fmt.Sprintf("%s20261120T120000-%d%s", prefix, ended.Process.Pid, rawEnding))
	require.NoError(t, os.WriteFile(path, []byte("stopwright\n"), 0o600))
	finish(folder)
	assert.NoFileExists(t, path)
}
