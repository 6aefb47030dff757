package export_test

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words/wordstest"
	"stopwright/detent/plan"
	"stopwright/export"
)

func TestWriteFileMakesAFileLikeAnyOther(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "new.csv")
	require.NoError(t, export.WriteFile(path, text("whole")))
	assert.Equal(t, "whole", get(t, path))
	assert.Equal(t, []string{"new.csv"}, entries(t, dir))

	plain, err := os.Create(filepath.Join(dir, "plain"))
	require.NoError(t, err)
	require.NoError(t, plain.Close())
	want, err := os.Stat(plain.Name())
	require.NoError(t, err)
	got, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, want.Mode(), got.Mode(), "as the user's own setting has new files")
}

func TestWriteFileKeepsPermissions(t *testing.T) {
	for _, mode := range []fs.FileMode{0o600, 0o640, 0o666, 0o755} { // narrower and wider than a new file's
		path := put(t, t.TempDir(), "old", "old")
		require.NoError(t, os.Chmod(path, mode))
		require.NoError(t, export.WriteFile(path, text("new")))
		info, err := os.Stat(path)
		require.NoError(t, err)
		assert.Equal(t, mode, info.Mode().Perm())
		assert.Equal(t, "new", get(t, path))
	}
}

func TestWriteFileLeavesTheOldFileWholeOnError(t *testing.T) {
	broken := errors.New("the pen broke")
	for name, write := range map[string]func(io.Writer) error{
		"before anything":         func(io.Writer) error { return broken },
		"after a little":          func(w io.Writer) error { return errors.Join(text("half")(w), broken) },
		"after more than buffers": func(w io.Writer) error { return errors.Join(text(strings.Repeat("half", 1<<16))(w), broken) },
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			path := put(t, dir, "old", "old")
			err := export.WriteFile(path, write)
			require.ErrorIs(t, err, broken)
			var file *export.FileError
			require.ErrorAs(t, err, &file)
			assert.Equal(t, path, file.Path)
			assert.Contains(t, err.Error(), `cannot write "`+path+`": `)
			assert.Equal(t, "old", get(t, path))
			assert.Equal(t, []string{"old"}, entries(t, dir))
		})
	}
}

func TestWriteFileLeavesNothingWhenTheWriterPanics(t *testing.T) {
	dir := t.TempDir()
	path := put(t, dir, "old", "old")
	assert.Panics(t, func() {
		_ = export.WriteFile(path, func(io.Writer) error { panic("a defect elsewhere") })
	})
	assert.Equal(t, "old", get(t, path))
	assert.Equal(t, []string{"old"}, entries(t, dir))
}

func TestWriteFileFollowsLinks(t *testing.T) {
	for name, c := range map[string]struct {
		link, to string
		there    bool // before
	}{
		"to a file":                              {"link", "real", true},
		"to a file not made yet":                 {"link", "real", false},
		"out of its folder":                      {"in/link", "../real", true},
		"out of a linked folder":                 {"linked/link", "../real", true}, // real lies beside deep/er, not beside linked
		"through a linked folder, not made yet":  {"linked/link", "../real", false},
		"to a link":                              {"link", "second", true},
		"whose folder is reached by going round": {"linked/../link", "real", true}, // is deep/link, not link
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			at := func(path string) string { return dir + string(filepath.Separator) + filepath.FromSlash(path) } // not tidied
			require.NoError(t, os.MkdirAll(at("in"), 0o755))
			require.NoError(t, os.MkdirAll(at("deep/er"), 0o755))
			require.NoError(t, os.Symlink(filepath.FromSlash("deep/er"), at("linked")))
			require.NoError(t, os.Symlink("real", at("second")))
			require.NoError(t, os.Symlink(filepath.FromSlash(c.to), at(c.link)))
			real, err := filepath.EvalSymlinks(filepath.Dir(at(c.link)))
			require.NoError(t, err)
			if strings.HasPrefix(c.link, "linked/../") { // Dir tidies; the system does not
				real = at("deep")
			}
			real = filepath.Join(real, filepath.FromSlash(c.to))
			if c.to == "second" {
				real = at("real")
			}
			if c.there {
				require.NoError(t, os.WriteFile(real, []byte("old"), 0o600))
			}
			require.NoError(t, export.WriteFile(at(c.link), text("new")))
			assert.Equal(t, "new", get(t, real))
			info, err := os.Lstat(at(c.link))
			require.NoError(t, err)
			assert.NotZero(t, info.Mode()&fs.ModeSymlink, "the link is still one")
		})
	}
}

func TestWriteFileSaysWhyNot(t *testing.T) {
	dir := t.TempDir()
	file := put(t, dir, "file", "old")
	require.NoError(t, os.Symlink("round", filepath.Join(dir, "round")))
	long := filepath.Join(dir, strings.Repeat("n", 300)) // 255 is the most that common disks take
	for name, c := range map[string]struct{ path, says string }{
		"no name":                    {"", `cannot write "": no file is named`},
		"a folder":                   {dir, "it is a folder"},
		"a folder that is not there": {filepath.Join(dir, "no") + string(filepath.Separator), "it names a folder, not a file"},
		"in a folder not there":      {filepath.Join(dir, "no", "x.csv"), `there is no folder "` + filepath.Join(dir, "no")},
		"in a file":                  {filepath.Join(file, "x.csv"), "part of the path is a file, not a folder"},
		"links in a circle":          {filepath.Join(dir, "round"), "its links lead round in a circle"},
		"a long name":                {long, "the name is too long"},
		"two lines":                  {filepath.Join(dir, "no", "a\nb"), `a\nb": there is no folder`},
	} {
		t.Run(name, func(t *testing.T) {
			err := export.WriteFile(c.path, text("new"))
			require.ErrorContains(t, err, c.says)
			assert.NotContains(t, err.Error(), "\n")
			wordstest.SaidInGerman(t, err)
			assert.Equal(t, []string{"file", "round"}, entries(t, dir))
			assert.Equal(t, "old", get(t, file))
		})
	}
}

// The longest name a disk takes must not become too long on its way.
func TestWriteFileTakesTheLongestName(t *testing.T) {
	path := filepath.Join(t.TempDir(), strings.Repeat("n", 255))
	require.NoError(t, export.WriteFile(path, text("whole")))
	assert.Equal(t, "whole", get(t, path))
}

func TestWriteFileInTheFolderOneIsIn(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, export.WriteFile("here", text("whole")))
	assert.Equal(t, "whole", get(t, "here"))
	assert.Equal(t, []string{"here"}, entries(t, "."))
}

func TestPlansAreSavedAndReadBack(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.stopwright")
	want := report(t).Plate.Plan
	require.NoError(t, export.SavePlan(path, want))
	got, err := export.ReadPlan(path)
	require.NoError(t, err)
	assert.True(t, plan.Equal(want, got))
}

func TestSavePlanRefusesWhatCouldNotBeReadBack(t *testing.T) {
	dir := t.TempDir()
	path := put(t, dir, "a.stopwright", "old")
	p := plan.Default()
	p.FaceGap = 51
	err := export.SavePlan(path, p)
	var problems plan.Problems
	require.ErrorAs(t, err, &problems)
	assert.ErrorContains(t, err, path)
	assert.ErrorContains(t, err, "face_gap is 51, must be -5 to 50 mm")
	assert.Equal(t, "old", get(t, path))
	assert.Equal(t, []string{"a.stopwright"}, entries(t, dir))
}

func TestReadPlanSaysWhyNot(t *testing.T) {
	dir := t.TempDir()
	file := put(t, dir, "file", "not a plan")
	for name, c := range map[string]struct {
		path, says string
		is         error
	}{
		"a folder":   {dir, "it is a folder", nil},
		"missing":    {filepath.Join(dir, "no"), "there is no such file", fs.ErrNotExist},
		"in a file":  {filepath.Join(file, "x"), "part of the path is a file, not a folder", nil},
		"not a plan": {file, "this is not a plan file", plan.ErrNotPlan},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := export.ReadPlan(c.path)
			require.ErrorContains(t, err, `cannot read "`+c.path+`": `+c.says)
			wordstest.SaidInGerman(t, err)
			if c.is != nil {
				assert.ErrorIs(t, err, c.is)
			}
		})
	}
}
