package recovery_test

import (
	"bufio"
	"io"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// keepIn names the folder in which this program, started by its own test, is to
// keep a copy until it is killed.
const keepIn = "STOPWRIGHT_TEST_KEEP_IN"

func TestMain(m *testing.M) {
	if dir := os.Getenv(keepIn); dir != "" {
		p := start(dir)
		p.edit("killed")
		p.Flush()
		_, _ = os.Stdout.WriteString("kept\n")
		_, _ = io.Copy(io.Discard, os.Stdin) // runs on, for its lock
	}
	os.Exit(m.Run())
}

// The operating system, not this package, must give up the lock of a program
// that was killed.
func TestAKilledProgramLeavesItsCopy(t *testing.T) {
	dir := folder(t)
	me, err := os.Executable()
	require.NoError(t, err)
	child := exec.Command(me)
	child.Env = append(os.Environ(), keepIn+"="+dir)
	_, err = child.StdinPipe() // never written to
	require.NoError(t, err)
	out, err := child.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, child.Start())
	t.Cleanup(func() { _ = child.Process.Kill() })
	line, err := bufio.NewReader(out).ReadString('\n')
	require.NoError(t, err)
	require.Equal(t, "kept\n", line)
	assert.Empty(t, find(t, dir), "it is still running")

	require.NoError(t, child.Process.Kill())
	require.Error(t, child.Wait())
	assert.Equal(t, []string{"killed"}, titles(t, dir))
}
