package recovery_test

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
	"stopwright/ui/recovery"
)

// left leaves a copy behind and returns the path of it.
func left(t *testing.T, dir, title string, at time.Duration) string {
	t.Helper()
	before := files(t, dir)
	p := start(dir)
	p.clock.now = p.clock.now.Add(at)
	p.edit(title)
	p.wait(promised)
	p.crash()
	for _, name := range files(t, dir) {
		if strings.HasSuffix(name, ".copy") && !strings.Contains(strings.Join(before, "\n"), name) {
			return filepath.Join(dir, name)
		}
	}
	require.Fail(t, "no copy")
	return ""
}

func TestFindWithoutAFolder(t *testing.T) {
	dir := folder(t)
	assert.Empty(t, find(t, dir))
	assert.NoDirExists(t, dir)
}

func TestFindSaysWhyNot(t *testing.T) {
	path := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(path, nil, 0o600))
	_, err := recovery.Find(path)
	var file *export.FileError
	require.ErrorAs(t, err, &file)
}

func TestTheNewestStandsFirst(t *testing.T) {
	dir := folder(t)
	left(t, dir, "old", -time.Hour)
	left(t, dir, "new", time.Hour)
	left(t, dir, "between", 0)
	assert.Equal(t, []string{"new", "between", "old"}, titles(t, dir))
	assert.Equal(t, []string{"new", "between", "old"}, titles(t, dir), "leaving them for later leaves all")
}

func TestOnlyOneProgramIsOfferedACopy(t *testing.T) {
	dir := folder(t)
	left(t, dir, "first", 0)
	one := find(t, dir)
	require.Len(t, one, 1)
	assert.Empty(t, find(t, dir))
	one[0].Release()
	assert.Len(t, find(t, dir), 1)
}

func TestDiscard(t *testing.T) {
	dir := folder(t)
	left(t, dir, "first", 0)
	left(t, dir, "second", time.Hour)
	found := find(t, dir)
	require.NoError(t, found[0].Discard())
	found[1].Release()
	assert.Equal(t, []string{"first"}, titles(t, dir))
	assert.Len(t, files(t, dir), 2)
}

func TestDiscardSaysWhyNotAndKeepsTheCopy(t *testing.T) {
	dir := folder(t)
	path := left(t, dir, "first", 0)
	found := find(t, dir)
	require.NoError(t, os.Remove(path))
	require.NoError(t, os.MkdirAll(filepath.Join(path, "in it"), 0o700)) // cannot be removed
	var file *export.FileError
	require.ErrorAs(t, found[0].Discard(), &file)
	assert.Contains(t, file.Error(), `cannot remove "`+path)
	assert.Len(t, find(t, dir), 1, "and nobody holds it")
}

// The program may end between saving a plan and removing its copy.
func TestACopyOfWhatTheFileHoldsIsNotOffered(t *testing.T) {
	for name, c := range map[string]struct {
		title   string // of the plan in the file
		offered int
	}{
		"the same": {"mine", 0},
		"another":  {"theirs", 1},
	} {
		t.Run(name, func(t *testing.T) {
			dir := folder(t)
			saved := plan.Default()
			saved.Title = c.title
			f, err := diskfile.Save(filepath.Join(t.TempDir(), "plate.stopwright"), saved)
			require.NoError(t, err)
			p := start(dir)
			p.path, p.mark = f.Path, f.Mark
			p.edit("mine")
			p.wait(promised)
			p.crash()
			assert.Len(t, find(t, dir), c.offered)
			assert.Len(t, files(t, dir), 2*c.offered)
		})
	}
}

// A program may end between making its lock and writing its first copy.
func TestALockAloneIsTidiedAway(t *testing.T) {
	dir := folder(t)
	path := left(t, dir, "first", 0)
	require.NoError(t, os.Remove(path))
	assert.Empty(t, find(t, dir))
	assert.Empty(t, files(t, dir))
}

func TestACopyWithoutItsLockIsOffered(t *testing.T) {
	dir := folder(t)
	path := left(t, dir, "first", 0)
	require.NoError(t, os.Remove(strings.TrimSuffix(path, ".copy")+".lock"))
	assert.Equal(t, []string{"first"}, titles(t, dir))
}

func TestOtherFilesAreLeftAlone(t *testing.T) {
	dir := folder(t)
	left(t, dir, "first", 0)
	other := filepath.Join(dir, "notes.txt")
	require.NoError(t, os.WriteFile(other, nil, 0o600))
	for _, f := range find(t, dir) {
		require.NoError(t, f.Discard())
	}
	assert.FileExists(t, other)
}

func TestACopyThatCannotBeReadIsNeitherLostNorInTheWay(t *testing.T) {
	for name, c := range map[string]struct {
		change func(string) string
		says   string
	}{
		"empty":          {func(string) string { return "" }, "this is not a recovery copy"},
		"half":           {func(s string) string { return s[:len(s)/2] }, "this is not a recovery copy"},
		"something else": {func(string) string { return `{"format": "stopwright"}` }, "this is not a recovery copy"},
		"of a newer program": {
			func(s string) string { return strings.Replace(s, `"version": 1`, `"version": 2`, 1) }, "open it with a newer program",
		},
		"of a newer plan": {
			func(s string) string {
				return s[:20] + strings.Replace(s[20:], "\n    \"version\": 1", "\n    \"version\": 2", 1)
			},
			"open it with a newer program",
		},
		"without a plan": {
			func(s string) string { return s[:strings.Index(s, `"plan"`)] + `"plan": null}` }, "this is not a plan file",
		},
	} {
		t.Run(name, func(t *testing.T) {
			dir := folder(t)
			path := left(t, dir, "bad", 0)
			left(t, dir, "good", -time.Hour)
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(path, []byte(c.change(string(text))), 0o600))
			found := find(t, dir)
			require.Len(t, found, 2)
			require.NoError(t, found[0].Err, "though it is the older")
			assert.Equal(t, "good", found[0].Plan.Title)
			require.ErrorContains(t, found[1].Err, c.says)
			assert.False(t, found[1].Time.IsZero())
			assert.FileExists(t, path)
		})
	}
}

// The plan in a copy stands there as in its own file.
func TestACopyCanBeReadByAPerson(t *testing.T) {
	text, err := os.ReadFile(left(t, folder(t), "Drehteller <3> & größer", 0))
	require.NoError(t, err)
	assert.Contains(t, string(text), `"time": "2026-11-20T10:15:05Z"`)
	assert.Contains(t, string(text), `"title": "Drehteller <3> & größer"`)
}

func TestAPathThatIsNoTextIsLeftOut(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.path, p.mark = "/plate\xff.stopwright", diskfile.MarkOf(p.plan)
	p.edit("first")
	p.wait(promised)
	p.crash()
	found := find(t, dir)
	require.Len(t, found, 1)
	assert.Empty(t, found[0].Path)
	assert.Zero(t, found[0].Mark)
}
