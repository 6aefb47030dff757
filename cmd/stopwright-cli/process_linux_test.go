package main

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// finish runs a command and returns what it left behind. Output that is set
// already is not gathered.
func finish(t *testing.T, c *exec.Cmd) result {
	t.Helper()
	var out, stderr bytes.Buffer
	if c.Stdout == nil {
		c.Stdout = &out
	}
	c.Stderr = &stderr
	err := c.Run()
	if exit := (*exec.ExitError)(nil); err != nil && !errors.As(err, &exit) {
		require.NoError(t, err)
	}
	return newResult(c.ProcessState.ExitCode(), out.String(), stderr.String())
}

func TestOutputOfAProcessThatCannotBeWritten(t *testing.T) {
	bin := built(t)
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	require.NoError(t, err)
	defer full.Close()
	onlyRead, err := os.Open(os.DevNull)
	require.NoError(t, err)
	defer onlyRead.Close()
	gone, unread, err := os.Pipe()
	require.NoError(t, err)
	defer unread.Close()
	require.NoError(t, gone.Close())

	for name, c := range map[string]struct {
		out  *os.File
		says string
	}{
		"a full disk":              {full, "the disk is full"},
		"a stream only for input":  {onlyRead, "bad file descriptor"},
		"a pipe that nobody reads": {unread, "what should read it has gone"},
	} {
		t.Run(name, func(t *testing.T) {
			for _, args := range [][]string{{"new"}, {"check", "-"}, {"report", "--json", "-"}, {"help"}} {
				cmd := exec.Command(bin, args...)
				cmd.Stdin, cmd.Stdout = strings.NewReader(overlapping(t)), c.out
				finish(t, cmd).complains(t, statusUnwritten, "cannot write standard output: "+c.says)
			}
		})
	}
}

func TestExportToAFullDisk(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	put(t, dir, "p", demo(t, "vice-base"))
	put(t, dir, "old.csv", "old")
	for _, flag := range []string{"--dxf", "--pdf"} {
		cli("", "export", "p", "--csv", "old.csv", flag, "/dev/full").
			complains(t, statusUnwritten, `cannot write "/dev/full": the disk is full`)
	}
	assert.Equal(t, "old", get(t, "old.csv"))
	assert.Equal(t, []string{"old.csv", "p"}, entries(t, dir))
}

// A disk that fills midway through a file, as near as it comes without one: the
// system refuses to let the file grow. Every file asked for is larger.
func TestExportMidwayToTheEndOfTheDisk(t *testing.T) {
	bin := built(t)
	dir := t.TempDir()
	put(t, dir, "p", demo(t, "sanding-table"))
	put(t, dir, "a.dxf", "old")
	put(t, dir, "a.pdf", "old")
	for _, ask := range [][]string{{"--dxf", "a.dxf"}, {"--pdf", "a.pdf"}, {"--csv", "a.csv", "--dxf", "a.dxf"}} {
		cmd := exec.Command("sh", append([]string{"-c", `ulimit -f 8; exec "$0" export p "$@"`, bin}, ask...)...) // blocks of 512 or 1024 bytes
		cmd.Dir = dir
		finish(t, cmd).complains(t, statusUnwritten, "cannot write ", "the file would be larger than is allowed here")
		assert.Equal(t, []string{"a.dxf", "a.pdf", "p"}, entries(t, dir))
		assert.Equal(t, "old", get(t, filepath.Join(dir, "a.dxf")))
		assert.Equal(t, "old", get(t, filepath.Join(dir, "a.pdf")))
	}
}

// nobody is a user without rights to anything in particular.
const nobody = 65534

// To root no folder is unwritable and no file unreadable, so the program is run
// as someone else.
func TestWithoutPermission(t *testing.T) {
	bin := built(t)
	dir, err := os.MkdirTemp("", program) // unlike t.TempDir's, its parent lets anyone in
	require.NoError(t, err)
	defer os.RemoveAll(dir)
	require.NoError(t, os.Chmod(dir, 0o755))
	tool := filepath.Join(dir, program)
	content, err := os.ReadFile(bin)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(tool, content, 0o755))

	open, shut := filepath.Join(dir, "open"), filepath.Join(dir, "shut")
	for _, folder := range []string{open, shut} {
		require.NoError(t, os.Mkdir(folder, 0o755))
		put(t, folder, "p", demo(t, "vice-base"))
		put(t, folder, "old.csv", "old")
	}
	put(t, open, "secret", demo(t, "vice-base"))
	require.NoError(t, os.Chmod(filepath.Join(open, "old.csv"), 0o444))
	require.NoError(t, os.Chmod(filepath.Join(open, "secret"), 0))
	require.NoError(t, os.Chmod(open, 0o777))
	require.NoError(t, os.Chmod(shut, 0o555))
	defer func() { require.NoError(t, os.Chmod(shut, 0o755)) }()

	for name, c := range map[string]struct {
		folder, args string
		status       int
		says         string
	}{
		"a new file in a shut folder":  {shut, "export p --dxf new.dxf --csv new.csv", statusUnwritten, `cannot write "new.dxf": you may not write in its folder`},
		"an old file in a shut folder": {shut, "export p --csv old.csv", statusUnwritten, `cannot write "old.csv": you`},
		"a plan in a shut folder":      {shut, "new -o new", statusUnwritten, `cannot write "new": you may not write in its folder`},
		"a file not to be written":     {open, "export p --dxf new.dxf --csv old.csv", statusUnwritten, `cannot write "old.csv": you are not allowed to`},
		"a plan not to be read":        {open, "check secret", statusUnusable, `cannot read "secret": you are not allowed to`},
	} {
		t.Run(name, func(t *testing.T) {
			before := entries(t, c.folder)
			cmd := exec.Command(tool, strings.Fields(c.args)...)
			cmd.Dir = c.folder
			if os.Geteuid() == 0 {
				cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
			}
			finish(t, cmd).complains(t, c.status, c.says)
			assert.Equal(t, before, entries(t, c.folder))
			assert.Equal(t, "old", get(t, filepath.Join(c.folder, "old.csv")))
		})
	}
}
