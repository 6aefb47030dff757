package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/ui/recovery"
)

// desk is a window that keeps files, and what a test needs to play the rest of
// the world.
type desk struct {
	*Window
	folder string // of the program's own files
	rings  []func()
}

// atDesk opens a window on the default plan that keeps files in a folder.
// Time passes by [desk.threeSeconds].
func atDesk(t *testing.T, folder string) *desk {
	t.Helper()
	d := &desk{Window: opened(t, plan.Default()), folder: folder}
	d.filing.clock = recovery.Clock{
		Now: func() time.Time { return time.Date(2026, 11, 20, 10, 15, 0, 0, time.UTC) },
		After: func(delay time.Duration, f func()) func() {
			require.LessOrEqual(t, delay, 5*time.Second, "a copy is promised within five seconds")
			at := len(d.rings)
			d.rings = append(d.rings, f)
			return func() { d.rings[at] = nil }
		},
	}
	d.KeepIn(folder)
	return d
}

// threeSeconds rings every alarm that is set and waits for the disk.
func (d *desk) threeSeconds(t *testing.T) {
	t.Helper()
	rings := d.rings
	d.rings = nil
	for _, ring := range rings {
		if ring != nil {
			ring()
		}
	}
	d.filing.keeper.Wait()
}

// afterCrash starts the program anew as if it had been killed: what it kept is
// there, and nobody holds it.
func (d *desk) afterCrash(t *testing.T) *desk {
	t.Helper()
	folder := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(folder, "recovery"), 0o700))
	for _, name := range []string{"recent.json", "recovery/*.copy"} {
		files, err := filepath.Glob(filepath.Join(d.folder, filepath.FromSlash(name)))
		require.NoError(t, err)
		for _, file := range files {
			kept, err := filepath.Rel(d.folder, file)
			require.NoError(t, err)
			require.NoError(t, os.WriteFile(filepath.Join(folder, kept), []byte(fileText(t, file)), 0o600))
		}
	}
	return atDesk(t, folder)
}

// edit gives the plan a title.
func (d *desk) edit(t *testing.T, title string) {
	t.Helper()
	require.NoError(t, d.store.Edit("title", func(p *plan.Plan) { p.Title = title }))
}

// titled returns the default plan with a title.
func titled(title string) plan.Plan {
	p := plan.Default()
	p.Title = title
	return p
}

// planFile puts a plan on the disk.
func planFile(t *testing.T, title string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), title+planSuffix)
	require.NoError(t, export.SavePlan(path, titled(title)))
	return path
}

// titleIn is the title of the plan that a file holds.
func titleIn(t *testing.T, path string) string {
	t.Helper()
	p, err := export.ReadPlan(path)
	require.NoError(t, err)
	return p.Title
}

// recentItems are the items of the list of recent files.
func (d *desk) recentItems(t *testing.T) []*fyne.MenuItem {
	t.Helper()
	return d.menuItem(t, "menu.file", "menu.recent").ChildMenu.Items
}

func TestOpenedAndSavedFilesAreRecent(t *testing.T) {
	d := atDesk(t, t.TempDir())
	assert.True(t, d.menuItem(t, "menu.file", "menu.recent").Disabled, "nothing yet")
	a, b := planFile(t, "a"), planFile(t, "b")
	d.OpenFile(a)
	d.OpenFile(b)
	c := filepath.Join(t.TempDir(), "c"+planSuffix)
	d.saveTo(c, nil)
	items := d.recentItems(t)
	require.Len(t, items, 5, "three files, a line, clear")
	for i, name := range []string{"c", "b", "a"} {
		assert.Contains(t, items[i].Label, name+planSuffix+"   in ")
	}
	items[2].Action()
	assert.Equal(t, a, d.store.Path())

	later := atDesk(t, d.folder)
	require.Len(t, later.recentItems(t), 5, "the next start has them")
	later.recentItems(t)[4].Action()
	assert.True(t, later.menuItem(t, "menu.file", "menu.recent").Disabled, "cleared")
}

func TestARecentFileThatIsNotThere(t *testing.T) {
	d := atDesk(t, t.TempDir())
	a, b := planFile(t, "a"), planFile(t, "b")
	d.OpenFile(a)
	d.OpenFile(b)
	require.NoError(t, os.Remove(a))
	d.lookAtDisk()
	require.Contains(t, d.recentItems(t)[1].Label, "(not there)")
	require.NotContains(t, d.recentItems(t)[0].Label, "(not there)")

	d.recentItems(t)[1].Action()
	require.Contains(t, d.asked(t), a)
	d.answer(t, "recent.keep")
	require.Len(t, d.recentItems(t), 4)
	d.recentItems(t)[1].Action()
	d.answer(t, "recent.remove")
	require.Len(t, d.recentItems(t), 3)
	assert.Equal(t, b, d.store.Path(), "the plan stays")
}

func TestLongFoldersAreShortened(t *testing.T) {
	assert.Equal(t, "/home/maker", shortFolder("/home/maker"))
	long := "/home/maker/" + string(make([]byte, 100)) + "/the end"
	short := []rune(shortFolder(long))
	assert.Len(t, short, maxFolder)
	assert.Equal(t, '…', short[0])
	assert.Contains(t, string(short), "/the end")
}

func TestDroppingAFileOpensIt(t *testing.T) {
	a, b := planFile(t, "a"), planFile(t, "b")
	notPlan := filepath.Join(t.TempDir(), "notes.txt")
	require.NoError(t, os.WriteFile(notPlan, []byte("notes"), 0o600))
	file := storage.NewFileURI
	web, err := storage.ParseURI("https://example.org/a.stopwright")
	require.NoError(t, err)
	drop := func(items ...fyne.URI) *desk {
		d := atDesk(t, t.TempDir())
		d.dropped(fyne.Position{}, items)
		return d
	}
	d := drop(file(a))
	assert.Equal(t, a, d.store.Path())
	assert.Empty(t, d.status.Text)

	d = drop(file(b), file(a))
	assert.Equal(t, b, d.store.Path())
	assert.Contains(t, d.status.Text, "the first of 2 files")

	d = drop(file(notPlan))
	assert.Contains(t, d.asked(t), "this is not a plan file")
	assert.Empty(t, d.store.Path())

	d = drop(web)
	assert.Equal(t, d.words.Text("drop.none"), d.status.Text)
	assert.Nil(t, d.overlay())
}

func TestDroppingAFileAsksAboutChanges(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(a)})
	assert.Contains(t, d.asked(t), "not saved")
	d.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(a)})
	assert.Equal(t, d.words.Text("drop.busy"), d.status.Text, "one question at a time")
	d.answer(t, "ask.cancel")
	assert.Equal(t, "mine", d.store.Plan().Title)
	d.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(a)})
	d.answer(t, "ask.discard")
	assert.Equal(t, "a", d.store.Plan().Title)
}

func TestAReadOnlyPlanIsSaidToBeSoAndSavedElsewhere(t *testing.T) {
	a := planFile(t, "a")
	require.NoError(t, os.Chmod(a, 0o444))
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	assert.Contains(t, d.win.Title(), "(read-only)")
	assert.Contains(t, d.status.Text, "read-only")
	d.edit(t, "mine")
	assert.Contains(t, d.win.Title(), "(read-only, not saved)")

	d.choose(t, "menu.file", "menu.save")
	d.typePath(t, a)
	d.answer(t, "ask.save")
	assert.Contains(t, d.asked(t), "is read-only")
	d.answer(t, "menu.saveas")
	copied := filepath.Join(filepath.Dir(a), "a-copy"+planSuffix)
	entry := find[*sheetEntry](d.overlay())[0]
	assert.Equal(t, copied, entry.Text, "a name that can be saved is proposed")
	d.answer(t, "ask.save")
	assert.Nil(t, d.overlay())
	assert.Equal(t, "mine", titleIn(t, copied))
	assert.Equal(t, "a", titleIn(t, a))
	assert.Equal(t, "a-copy.stopwright - Stopwright", d.win.Title())
}

// A file may be unlocked, or locked, while the plan is open.
func TestWhetherAFileIsReadOnlyIsLookedAtAgain(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	require.NoError(t, os.Chmod(a, 0o444))
	d.edit(t, "mine")
	d.choose(t, "menu.file", "menu.save")
	require.NotNil(t, d.overlay())
	d.answer(t, "ask.cancel")
	assert.Contains(t, d.win.Title(), "(read-only, not saved)")
	require.NoError(t, os.Chmod(a, 0o644))
	d.choose(t, "menu.file", "menu.save")
	assert.Nil(t, d.overlay())
	assert.Equal(t, "mine", titleIn(t, a))
}

func TestWhatCannotBeSavedIsOfferedAnotherPlace(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	d.edit(t, "mine")
	require.NoError(t, os.RemoveAll(filepath.Dir(a)))
	d.choose(t, "menu.file", "menu.save")
	assert.Contains(t, d.asked(t), "there is no folder")
	d.answer(t, "menu.saveas")
	b := filepath.Join(t.TempDir(), "b"+planSuffix)
	d.typePath(t, b)
	d.answer(t, "ask.save")
	assert.Equal(t, "mine", titleIn(t, b))
	assert.False(t, d.store.Unsaved())
}

func TestAFileChangedElsewhereIsNoticed(t *testing.T) {
	for name, c := range map[string]struct {
		edited  bool
		answer  string
		title   string // of the plan shown
		unsaved bool
	}{
		"load theirs":           {false, "disk.theirs", "theirs", false},
		"keep mine":             {false, "disk.mine", "a", true},
		"edited, load theirs":   {true, "disk.theirs", "theirs", false},
		"edited, but keep mine": {true, "disk.mine", "mine", true},
	} {
		t.Run(name, func(t *testing.T) {
			a := planFile(t, "a")
			d := atDesk(t, t.TempDir())
			d.OpenFile(a)
			if c.edited {
				d.edit(t, "mine")
			}
			d.lookAtDisk()
			require.Nil(t, d.overlay(), "nothing has changed yet")
			before := d.store.Plan()
			require.NoError(t, export.SavePlan(a, titled("theirs")))
			d.lookAtDisk()
			assert.Contains(t, d.asked(t), filepath.Base(a))
			d.answer(t, c.answer)
			assert.Equal(t, c.title, d.store.Plan().Title)
			assert.Equal(t, c.unsaved, d.store.Unsaved())
			d.lookAtDisk()
			assert.Nil(t, d.overlay(), "asked once")
			if c.answer == "disk.theirs" {
				d.undo()
				assert.True(t, plan.Equal(before, d.store.Plan()), "undo brings back what was here")
				assert.True(t, d.store.Unsaved())
			}
			d.choose(t, "menu.file", "menu.save")
			assert.Nil(t, d.overlay(), "it was answered already")
			assert.Equal(t, d.store.Plan().Title, titleIn(t, a))
		})
	}
}

func TestSavingOverAChangedFileAsks(t *testing.T) {
	for name, c := range map[string]struct {
		answer, file, here string
	}{
		"cancel":      {"ask.cancel", "theirs", "mine"},
		"replace":     {"disk.replace", "mine", "mine"},
		"load theirs": {"disk.theirs", "theirs", "theirs"},
	} {
		t.Run(name, func(t *testing.T) {
			a := planFile(t, "a")
			d := atDesk(t, t.TempDir())
			d.OpenFile(a)
			d.edit(t, "mine")
			info, err := os.Stat(a)
			require.NoError(t, err)
			require.NoError(t, export.SavePlan(a, titled("theirs")))
			// Not even a clock set back hides it.
			require.NoError(t, os.Chtimes(a, info.ModTime(), info.ModTime()))
			d.choose(t, "menu.file", "menu.save")
			require.NotNil(t, d.overlay())
			d.answer(t, c.answer)
			assert.Equal(t, c.file, titleIn(t, a))
			assert.Equal(t, c.here, d.store.Plan().Title)
			assert.Equal(t, c.file != c.here, d.store.Unsaved())
		})
	}
}

func TestAFileThatHoldsThePlanAlreadyIsNotAskedAbout(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	d.edit(t, "mine")
	require.NoError(t, export.SavePlan(a, titled("mine")))
	d.lookAtDisk()
	assert.Nil(t, d.overlay())
	assert.False(t, d.store.Unsaved())
}

func TestAChangedFileThatIsNoPlanAnyMore(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	require.NoError(t, os.WriteFile(a, []byte("notes"), 0o600))
	d.lookAtDisk()
	assert.Contains(t, d.asked(t), "this is not a plan file")
	d.press(fyne.KeyReturn) // there is but one answer
	assert.Nil(t, d.overlay())
	assert.True(t, d.store.Unsaved())
}

func TestAQuestionIsNotLaidOverAnother(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	d.choose(t, "menu.help", "menu.about")
	require.NoError(t, export.SavePlan(a, titled("theirs")))
	d.lookAtDisk()
	d.answer(t, "ask.ok")
	assert.Nil(t, d.overlay())
	d.lookAtDisk()
	assert.NotNil(t, d.overlay(), "it comes back")
}

func TestAFileThatHasGoneIsSaid(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	require.NoError(t, os.Remove(a))
	d.lookAtDisk()
	assert.Contains(t, d.status.Text, a)
	assert.True(t, d.store.Unsaved(), "closing asks")
	d.say("")
	d.lookAtDisk()
	assert.Empty(t, d.status.Text, "said once")
	d.choose(t, "menu.file", "menu.save")
	assert.Equal(t, "a", titleIn(t, a))
	assert.False(t, d.store.Unsaved())
}

func TestWhatIsNotSavedIsRecoveredAfterACrash(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	d.edit(t, "mine")
	d.threeSeconds(t)
	d = d.afterCrash(t)
	d.OfferRecovery()
	require.NotNil(t, d.overlay())
	options := find[*widget.RadioGroup](d.overlay())[0].Options
	require.Len(t, options, 1)
	for _, part := range []string{"mine", filepath.Base(a), "2026-11-20"} {
		assert.Contains(t, options[0], part)
	}
	assert.Contains(t, d.asked(t), a, "where the file lies")
	d.answer(t, "recover.do")
	assert.Equal(t, "mine", d.store.Plan().Title)
	assert.Equal(t, a, d.store.Path())
	assert.True(t, d.store.Unsaved())
	assert.Contains(t, d.win.Title(), "(not saved)")
	assert.Equal(t, "a", titleIn(t, a), "the file is as it was")
	d.choose(t, "menu.file", "menu.save")
	assert.Nil(t, d.overlay())
	assert.Equal(t, "mine", titleIn(t, a))
	d.filing.keeper.Wait()

	d = atDesk(t, d.folder)
	d.OfferRecovery()
	assert.Nil(t, d.overlay(), "nothing is left to recover")
}

func TestARecoveredPlanDoesNotHideWhatItsFileBecameMeanwhile(t *testing.T) {
	a := planFile(t, "a")
	d := atDesk(t, t.TempDir())
	d.OpenFile(a)
	d.edit(t, "mine")
	d.threeSeconds(t)
	d = d.afterCrash(t)
	require.NoError(t, export.SavePlan(a, titled("theirs")))
	d.OfferRecovery()
	d.answer(t, "recover.do")
	d.choose(t, "menu.file", "menu.save")
	assert.Contains(t, d.asked(t), filepath.Base(a))
	assert.Equal(t, "theirs", titleIn(t, a))
}

func TestSeveralPlansAreRecoveredOneAtATime(t *testing.T) {
	d := atDesk(t, t.TempDir())
	for _, title := range []string{"one", "two", "three"} {
		d = atDesk(t, d.folder) // another program beside the others
		d.edit(t, title)
		d.threeSeconds(t)
	}
	d = d.afterCrash(t)
	d.OfferRecovery()
	d.answer(t, "recover.later")
	d.choose(t, "menu.file", "menu.recover")
	list := find[*widget.RadioGroup](d.overlay())[0]
	require.Len(t, list.Options, 3)
	first := list.Options[0]
	list.SetSelected(list.Options[1])
	d.answer(t, "recover.discard")
	list = find[*widget.RadioGroup](d.overlay())[0]
	require.Len(t, list.Options, 2, "the others are asked about")
	assert.Equal(t, first, list.Options[0])
	list.SetSelected(list.Options[1])
	d.answer(t, "recover.do")
	assert.Contains(t, list.Options[1], d.store.Plan().Title)
	assert.Contains(t, d.status.Text, "the others")

	d.choose(t, "menu.file", "menu.recover")
	d.answer(t, "ask.discard")
	require.Len(t, find[*widget.RadioGroup](d.overlay())[0].Options, 1)
	d.answer(t, "recover.discard")
	assert.Nil(t, d.overlay())
	d.choose(t, "menu.file", "menu.recover")
	d.answer(t, "ask.discard")
	assert.Equal(t, d.words.Text("recover.nothing"), d.status.Text)
}

func TestALongTitleIsCut(t *testing.T) {
	assert.Equal(t, "a table", cut(" a\n table ", maxTitle))
	long := []rune(cut(strings.Repeat("größer ", 1000), maxTitle))
	assert.Len(t, long, maxTitle)
	assert.Equal(t, '…', long[maxTitle-1])
}

func TestACopyThatCannotBeReadIsSaidToBeSo(t *testing.T) {
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.threeSeconds(t)
	d = d.afterCrash(t)
	copies, err := filepath.Glob(filepath.Join(d.folder, "recovery", "*.copy"))
	require.NoError(t, err)
	require.Len(t, copies, 1)
	require.NoError(t, os.WriteFile(copies[0], []byte("{"), 0o600))
	d.OfferRecovery()
	assert.Contains(t, d.asked(t), "this is not a recovery copy")
	d.answer(t, "recover.do")
	require.NotNil(t, d.overlay(), "it cannot be")
	d.answer(t, "recover.later")
	assert.FileExists(t, copies[0])
}

func TestQuittingLeavesNoCopy(t *testing.T) {
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.threeSeconds(t)
	d.Quit()
	d.answer(t, "ask.cancel")
	copies := func() []string {
		found, err := filepath.Glob(filepath.Join(d.folder, "recovery", "*"))
		require.NoError(t, err)
		return found
	}
	assert.Len(t, copies(), 2, "still here, still kept")
	d.Quit()
	d.answer(t, "ask.discard")
	assert.Equal(t, 1, d.app.(*quitting).quits)
	d.Ended()
	assert.Empty(t, copies())
}

// The desktop ends programs without asking.
func TestAnEndWithoutAQuestionKeepsTheLastEdit(t *testing.T) {
	d := atDesk(t, t.TempDir())
	d.edit(t, "mine")
	d.Ended()
	d = d.afterCrash(t)
	d.OfferRecovery()
	d.answer(t, "recover.do")
	assert.Equal(t, "mine", d.store.Plan().Title)
}

func TestLookingAndSelectingMakeNoCopy(t *testing.T) {
	d := atDesk(t, t.TempDir())
	v := d.store.View()
	v.Snap = 5
	d.store.SetView(v)
	d.openExample("sanding-table")
	assert.Empty(t, d.rings, "no alarm without an edit")
}

func TestAFolderThatCannotBeWrittenIsSaid(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(folder, nil, 0o600))
	d := atDesk(t, folder)
	d.edit(t, "mine")
	d.threeSeconds(t)
	assert.Contains(t, d.status.Text, "No recovery copy can be kept")
	d.OpenFile(planFile(t, "a")) // asks first
	d.answer(t, "ask.discard")
	assert.Equal(t, "a", d.store.Plan().Title, "the rest works")
	assert.Len(t, d.recentItems(t), 3)
}

func TestWithoutAFolderOfItsOwn(t *testing.T) {
	w := newWindow(test.NewTempApp(t), plan.Default(), LightLook)
	w.KeepIn("")
	require.NoError(t, w.store.Edit("title", func(p *plan.Plan) { p.Title = "mine" }))
	w.Ended()
	assert.Equal(t, w.words.Text("recover.nofolder"), w.status.Text, "which stays to be read")
}

func TestTheProgramsOwnFolder(t *testing.T) {
	config, err := os.UserConfigDir()
	require.NoError(t, err)
	assert.Equal(t, filepath.Join(config, "stopwright"), OwnFolder())
}
