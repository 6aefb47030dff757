package diskfile_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/ui/diskfile"
)

// saved puts a plan of the default sizes on the disk.
func saved(t *testing.T) (string, diskfile.File) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "plate.stopwright")
	f, err := diskfile.Save(path, plan.Default())
	require.NoError(t, err)
	return path, f
}

// put writes a file and gives it a time of change.
func put(t *testing.T, path, content string, changed time.Time) {
	t.Helper()
	require.NoError(t, os.WriteFile(path, []byte(content), 0o600))
	require.NoError(t, os.Chtimes(path, changed, changed))
}

func TestWhatBecomesOfAFile(t *testing.T) {
	at := time.Date(2026, 11, 20, 10, 0, 0, 0, time.UTC)
	for name, c := range map[string]struct {
		then         func(t *testing.T, path string)
		quick, whole diskfile.State
	}{
		"nothing": {func(*testing.T, string) {}, diskfile.Same, diskfile.Same},
		"written over with the same": {
			func(t *testing.T, path string) { put(t, path, "mine", at.Add(time.Hour)) }, diskfile.Same, diskfile.Same,
		},
		"of the same size, later": {
			func(t *testing.T, path string) { put(t, path, "hers", at.Add(time.Hour)) }, diskfile.Changed, diskfile.Changed,
		},
		"set back in time": { // a file restored from a backup is older
			func(t *testing.T, path string) { put(t, path, "hers", at.Add(-time.Hour)) }, diskfile.Changed, diskfile.Changed,
		},
		"longer": {
			func(t *testing.T, path string) { put(t, path, "hers, longer", at) }, diskfile.Changed, diskfile.Changed,
		},
		"of the same size within a tick of the disk's clock": { // only reading tells
			func(t *testing.T, path string) { put(t, path, "hers", at) }, diskfile.Same, diskfile.Changed,
		},
		"removed": {
			func(t *testing.T, path string) { require.NoError(t, os.Remove(path)) }, diskfile.Gone, diskfile.Gone,
		},
		"its folder removed": {
			func(t *testing.T, path string) { require.NoError(t, os.RemoveAll(filepath.Dir(path))) }, diskfile.Gone, diskfile.Gone,
		},
		"replaced by a folder": {
			func(t *testing.T, path string) {
				require.NoError(t, os.Remove(path))
				require.NoError(t, os.Mkdir(path, 0o700))
			}, diskfile.Changed, diskfile.Changed,
		},
	} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "file")
			put(t, path, "mine", at)
			mark, err := diskfile.Look(path)
			require.NoError(t, err)
			c.then(t, path)
			for trust, want := range map[diskfile.Trust]diskfile.State{diskfile.TrustTime: c.quick, diskfile.ReadAll: c.whole} {
				got, now, err := mark.Compare(path, trust)
				require.NoError(t, err)
				assert.Equal(t, want, got, "trust %v", trust)
				if got == diskfile.Same {
					assert.Equal(t, mark.Sum, now.Sum)
				}
			}
		})
	}
}

// A changed file asked about once is not asked about again.
func TestThePresentMarkIsThatOfTheChange(t *testing.T) {
	path, f := saved(t)
	require.NoError(t, os.WriteFile(path, []byte("theirs"), 0o600))
	state, now, err := f.Mark.Compare(path, diskfile.ReadAll)
	require.NoError(t, err)
	require.Equal(t, diskfile.Changed, state)
	state, _, err = now.Compare(path, diskfile.ReadAll)
	require.NoError(t, err)
	assert.Equal(t, diskfile.Same, state)
}

func TestWhatCannotBeLookedAtIsNotSaidToBeChanged(t *testing.T) {
	path, f := saved(t)
	require.NoError(t, os.Remove(path))
	require.NoError(t, os.Symlink(path, path)) // leads round in a circle
	state, _, err := f.Mark.Compare(path, diskfile.ReadAll)
	require.Error(t, err)
	assert.Equal(t, diskfile.Same, state)
}

func TestAFileJustSavedIsTheSame(t *testing.T) {
	path, f := saved(t)
	assert.Equal(t, path, f.Path)
	state, now, err := f.Mark.Compare(path, diskfile.TrustTime)
	require.NoError(t, err)
	assert.Equal(t, diskfile.Same, state)
	looked, err := diskfile.Look(path)
	require.NoError(t, err)
	assert.Equal(t, looked, now, "and the time of its change is now known")
}

func TestAFileJustReadIsTheSame(t *testing.T) {
	path, _ := saved(t)
	p, f, err := diskfile.Read(path)
	require.NoError(t, err)
	assert.True(t, plan.Equal(plan.Default(), p))
	assert.False(t, f.ReadOnly)
	state, _, err := f.Mark.Compare(path, diskfile.ReadAll)
	require.NoError(t, err)
	assert.Equal(t, diskfile.Same, state)
}

func TestPathsDoNotHangOnTheFolderOneIsIn(t *testing.T) {
	path, _ := saved(t)
	t.Chdir(filepath.Dir(path))
	_, f, err := diskfile.Read(filepath.Base(path))
	require.NoError(t, err)
	assert.True(t, filepath.IsAbs(f.Path))
	f, err = diskfile.Save("other.stopwright", plan.Default())
	require.NoError(t, err)
	assert.True(t, filepath.IsAbs(f.Path))
}

func TestReadSaysWhyNot(t *testing.T) {
	_, _, err := diskfile.Read(filepath.Join(t.TempDir(), "no"))
	var file *export.FileError
	require.ErrorAs(t, err, &file)
	assert.Contains(t, err.Error(), "there is no such file")
}

func TestSaveSaysWhyNotAndLeavesTheFile(t *testing.T) {
	path, before := saved(t)
	p := plan.Default()
	p.FaceGap = 51 // over 50 mm
	_, err := diskfile.Save(path, p)
	var file *export.FileError
	require.ErrorAs(t, err, &file)
	state, _, err := before.Mark.Compare(path, diskfile.ReadAll)
	require.NoError(t, err)
	assert.Equal(t, diskfile.Same, state)
}

func TestReadOnly(t *testing.T) {
	path, _ := saved(t)
	assert.False(t, diskfile.ReadOnly(path))
	require.NoError(t, os.Chmod(path, 0o444))
	assert.True(t, diskfile.ReadOnly(path), "marked so for everybody")
	_, f, err := diskfile.Read(path)
	require.NoError(t, err)
	assert.True(t, f.ReadOnly)
	assert.False(t, diskfile.ReadOnly(path+"x"), "nothing there that could not be written")
	assert.False(t, diskfile.ReadOnly(filepath.Dir(path)))
}

func TestLookingAtAFolderOrADeviceTellsNothing(t *testing.T) {
	for _, path := range []string{t.TempDir(), os.DevNull} {
		mark, err := diskfile.Look(path)
		require.NoError(t, err)
		assert.Zero(t, mark)
		state, _, err := mark.Compare(path, diskfile.ReadAll)
		require.NoError(t, err)
		assert.Equal(t, diskfile.Same, state)
	}
	f, err := diskfile.Save(os.DevNull, plan.Default())
	require.NoError(t, err)
	assert.Zero(t, f.Mark)
}

// The sum of an empty file is a published value (FIPS 180-4 examples).
func TestTheSumIsSHA256(t *testing.T) {
	path := filepath.Join(t.TempDir(), "empty")
	put(t, path, "", time.Now())
	mark, err := diskfile.Look(path)
	require.NoError(t, err)
	assert.Equal(t, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", mark.Sum)
	assert.Zero(t, mark.Size)
	put(t, path, strings.Repeat("a", 1_000_000), time.Now())
	mark, err = diskfile.Look(path)
	require.NoError(t, err)
	assert.Equal(t, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0", mark.Sum)
}
