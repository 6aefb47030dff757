package export_test

import (
	"io"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words/wordstest"
	"stopwright/export"
)

// full is a device whose disk is always full.
const full = "/dev/full"

func isDevice(t *testing.T, path string) {
	t.Helper()
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&os.ModeDevice, "%s is not replaced by a file", path)
}

func TestWriteFileToAFullDevice(t *testing.T) {
	err := export.WriteFile(full, text("whole"))
	require.ErrorIs(t, err, syscall.ENOSPC)
	assert.EqualError(t, err, `cannot write "/dev/full": the disk is full`)
	isDevice(t, full)
}

func TestWriteFileToAPipe(t *testing.T) {
	pipe := filepath.Join(t.TempDir(), "pipe")
	require.NoError(t, syscall.Mkfifo(pipe, 0o600))
	got := make(chan string)
	go func() {
		b, _ := os.ReadFile(pipe)
		got <- string(b)
	}()
	require.NoError(t, export.WriteFile(pipe, text("whole")))
	assert.Equal(t, "whole", <-got)
}

func TestADeviceGetsOneDrawing(t *testing.T) {
	written, err := export.Export(report(t), export.Request{DXF: os.DevNull})
	require.NoError(t, err)
	assert.Equal(t, []string{os.DevNull}, written)
	isDevice(t, os.DevNull)
	assert.NoFileExists(t, os.DevNull+"-base")
}

// A device loses nothing by being written to again.
func TestADeviceMayBeAskedForTwice(t *testing.T) {
	written, err := export.Export(report(t), export.Request{PDF: os.DevNull, CSV: os.DevNull})
	require.NoError(t, err)
	assert.Len(t, written, 2)
}

// Only a device can still run out of room once all files lie on the disk, so
// its turn comes first.
func TestAFullDeviceLeavesFilesAlone(t *testing.T) {
	dir := t.TempDir()
	old := put(t, dir, "old.dxf", "old")
	written, err := export.Export(report(t), export.Request{DXF: old, CSV: full})
	require.ErrorIs(t, err, syscall.ENOSPC)
	assert.Empty(t, written)
	assert.Equal(t, "old", get(t, old))
	assert.Equal(t, []string{"old.dxf"}, entries(t, dir))
}

func TestExportNamesWhatItHadWrittenAlready(t *testing.T) {
	written, err := export.Export(report(t), export.Request{PDF: os.DevNull, CSV: full})
	require.ErrorIs(t, err, syscall.ENOSPC)
	assert.Equal(t, []string{os.DevNull}, written)
	assert.ErrorContains(t, err, "already written: "+os.DevNull)
	wordstest.SaidInGerman(t, err)
}

func TestReadPlanFromADeviceWithoutEnd(t *testing.T) {
	_, err := export.ReadPlan("/dev/zero")
	assert.ErrorContains(t, err, `cannot read "/dev/zero"`)
}

// What a broken disk does, as far as it can be had without one: writing fails
// at the size the system allows, midway through the file.
func TestWriteFileMidwayThroughALimit(t *testing.T) {
	var old syscall.Rlimit
	require.NoError(t, syscall.Getrlimit(syscall.RLIMIT_FSIZE, &old))
	limit := old
	limit.Cur = 1 << 20 // above the log of opened files that the test program itself writes
	require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &limit))
	defer func() { require.NoError(t, syscall.Setrlimit(syscall.RLIMIT_FSIZE, &old)) }()

	dir := t.TempDir()
	path := put(t, dir, "old", "old")
	err := export.WriteFile(path, func(w io.Writer) error {
		_, err := w.Write(make([]byte, 4<<20))
		return err
	})
	require.ErrorIs(t, err, syscall.EFBIG)
	assert.ErrorContains(t, err, "the file would be larger than is allowed here")
	assert.Equal(t, "old", get(t, path))
	assert.Equal(t, []string{"old"}, entries(t, dir))
}
