package recovery_test

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/ui/diskfile"
	"stopwright/ui/recovery"
)

// promised is within what time of an edit its copy must be begun: five seconds
// with two to spare for a slow disk.
const promised = 3 * time.Second

func TestAnEditIsCopiedInTime(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.path, p.mark = filepath.Join(t.TempDir(), "plate.stopwright"), diskfile.MarkOf(p.plan)
	p.edit("first")
	p.wait(promised)
	p.crash()
	found := find(t, dir)
	require.Len(t, found, 1)
	require.NoError(t, found[0].Err)
	assert.True(t, plan.Equal(p.plan, found[0].Plan))
	assert.Equal(t, p.path, found[0].Path)
	assert.Equal(t, p.mark, found[0].Mark)
	assert.True(t, found[0].Time.Equal(p.clock.now))
}

// However many edits follow one another, each is in a copy in time, and there
// is never more than one alarm.
func TestEditingWithoutAPauseIsCopiedAllTheSame(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	for range 40 {
		p.edit(p.clock.now.Format(time.TimeOnly))
		assert.Equal(t, 1, p.clock.set())
		p.wait(time.Second / 4)
	}
	p.crash()
	got := titles(t, dir)
	require.Len(t, got, 1)
	last, err := time.Parse(time.TimeOnly, got[0])
	require.NoError(t, err)
	now, err := time.Parse(time.TimeOnly, p.clock.now.Format(time.TimeOnly))
	require.NoError(t, err)
	assert.LessOrEqual(t, now.Sub(last), promised)
}

func TestNothingHappensWithoutAnEdit(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	assert.Zero(t, p.clock.set())
	p.edit("first")
	p.wait(promised)
	assert.Zero(t, p.clock.set(), "and nothing after it is copied")
	p.wait(time.Hour)
	p.save()
	assert.Zero(t, p.clock.set())
	assert.Empty(t, files(t, dir), "what was saved is removed")
}

func TestWhatIsSavedInTimeIsNeverCopied(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.save()
	assert.Zero(t, p.clock.set())
	p.wait(time.Minute)
	assert.Empty(t, files(t, dir))
}

// Undo back to what the file holds leaves nothing to recover.
func TestAnEditTakenBackIsNotKept(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.wait(promised)
	require.NotEmpty(t, files(t, dir))
	p.unsaved = false // undone
	p.Edited()
	p.wait(promised)
	assert.Empty(t, files(t, dir))
}

// A plan may be unsaved without an edit: its file has gone.
func TestWhatIsNotSavedAfterAllIsCopied(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.unsaved = true
	p.Settled()
	p.wait(promised)
	assert.Len(t, files(t, dir), 2)
}

func TestCloseLeavesNothing(t *testing.T) {
	for name, editing := range map[string]func(*program){
		"nothing":             func(*program) {},
		"a copy":              func(p *program) { p.edit("first"); p.wait(promised) },
		"an edit not copied":  func(p *program) { p.edit("first") },
		"a copy being made":   func(p *program) { p.edit("first"); p.clock.put(promised) },
		"edited after a copy": func(p *program) { p.edit("first"); p.wait(promised); p.edit("second") },
	} {
		t.Run(name, func(t *testing.T) {
			dir := folder(t)
			p := start(dir)
			editing(p)
			p.Close()
			assert.Empty(t, files(t, dir))
			p.edit("too late") // as the toolkit may still do while it ends
			p.Settled()
			p.Flush()
			p.Close()
			p.wait(time.Hour)
			assert.Empty(t, files(t, dir))
		})
	}
}

// A program that is told to end at once has no three seconds left.
func TestFlushKeepsTheLastEdit(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.Flush()
	p.crash()
	assert.Equal(t, []string{"first"}, titles(t, dir))

	dir = folder(t)
	start(dir).Flush()
	assert.Empty(t, files(t, dir), "nothing unsaved, nothing kept")
}

func TestTwoProgramsKeepACopyEach(t *testing.T) {
	dir := folder(t)
	path := filepath.Join(t.TempDir(), "the same.stopwright")
	one, two := start(dir), start(dir)
	one.path, two.path = path, path
	one.edit("one")
	two.edit("two")
	one.wait(promised)
	two.wait(promised)
	assert.Empty(t, find(t, dir), "neither is offered while its program runs")
	two.crash()
	assert.Equal(t, []string{"two"}, titles(t, dir))
	one.save()
	assert.Equal(t, []string{"two"}, titles(t, dir), "saving one leaves the other's")
}

func TestAdoptingGoesOnWithTheCopy(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("before")
	p.wait(promised)
	p.crash()

	p = start(dir)
	found := find(t, dir)
	require.Len(t, found, 1)
	p.Adopt(found[0])
	p.unsaved = true
	assert.Empty(t, find(t, dir), "it is this program's now")
	kept := files(t, dir)
	p.edit("after")
	p.wait(promised)
	assert.Equal(t, kept, files(t, dir), "in the same place")
	p.crash()
	assert.Equal(t, []string{"after"}, titles(t, dir))

	p = start(dir)
	p.Adopt(find(t, dir)[0])
	p.save()
	assert.Empty(t, files(t, dir))
}

// A program that dies again before its first edit has still lost nothing.
func TestAnAdoptedCopySurvivesAnotherCrash(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("kept")
	p.wait(promised)
	p.crash()
	p = start(dir)
	p.edit("given up for it")
	p.wait(promised)
	p.unsaved = false
	p.Settled() // not waited for: the copy adopted next must not be what it removes
	p.Adopt(find(t, dir)[0])
	p.crash()
	assert.Equal(t, []string{"kept"}, titles(t, dir))
	assert.Len(t, files(t, dir), 2)
}

func TestAFolderThatCannotBeWrittenIsSaidOnce(t *testing.T) {
	parent := t.TempDir()
	dir := filepath.Join(parent, "recovery")
	require.NoError(t, os.WriteFile(dir, nil, 0o600)) // in the way
	p := start(dir)
	for _, title := range []string{"first", "second"} {
		p.edit(title)
		p.wait(promised)
	}
	require.Len(t, p.errs, 1)
	var file *export.FileError
	require.ErrorAs(t, p.errs[0], &file)
	assert.Equal(t, dir, file.Path)
	assert.Zero(t, p.clock.set(), "it is not tried without an edit")

	require.NoError(t, os.Remove(dir))
	p.edit("third")
	p.wait(promised)
	require.Len(t, p.errs, 1)
	require.NoError(t, os.RemoveAll(dir))
	require.NoError(t, os.WriteFile(dir, nil, 0o600))
	p.edit("fourth")
	p.wait(promised)
	assert.Len(t, p.errs, 2, "said again after it had worked")
}

func TestACopyThatCannotBeReplacedStaysWhole(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.wait(promised)
	p.plan.FaceGap = 51 // over 50 mm: no plan that can be written
	p.edit("second")
	p.wait(promised)
	assert.Len(t, p.errs, 1)
	p.crash()
	assert.Equal(t, []string{"first"}, titles(t, dir))
}

func TestAFolderEmptiedBySomebodyIsFilledAgain(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.wait(promised)
	require.NoError(t, os.RemoveAll(dir))
	p.edit("second")
	p.wait(promised)
	assert.Empty(t, p.errs)
	assert.Empty(t, find(t, dir), "and its lock is a new one")
	p.crash()
	assert.Equal(t, []string{"second"}, titles(t, dir))
}

func TestTheFolderIsNobodyElses(t *testing.T) {
	dir := folder(t)
	p := start(dir)
	p.edit("first")
	p.wait(promised)
	info, err := os.Stat(dir)
	require.NoError(t, err)
	assert.Zero(t, info.Mode().Perm()&0o077)
	p.Close()
}

func TestDelay(t *testing.T) { assert.Equal(t, promised, recovery.Delay) }

// A clock that is put back, by hand or by the network, neither hides a copy nor
// lets one take the place of another.
func TestAClockPutBackLosesNothing(t *testing.T) {
	dir := folder(t)
	left(t, dir, "before", 0)
	left(t, dir, "a day back", -24*time.Hour)
	left(t, dir, "the same second again", 0)
	assert.ElementsMatch(t, []string{"before", "a day back", "the same second again"}, titles(t, dir))

	p := start(dir)
	p.edit("first")
	p.wait(promised)
	p.clock.now = p.clock.now.Add(-time.Hour)
	p.edit("second")
	p.wait(promised)
	p.crash()
	assert.Contains(t, titles(t, dir), "second")
	assert.NotContains(t, titles(t, dir), "first", "one program has one copy, its last")
}
