package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/ui/diskfile"
)

// change makes an edit, so that there is something to lose.
func (w *Window) change(t testing.TB) {
	t.Helper()
	require.NoError(t, w.addStops(plan.Stop{Angle: 77}))
	require.True(t, w.store.Unsaved())
}

// saved writes a plan to a file of its own and returns the path.
func saved(t testing.TB, p plan.Plan) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "other"+planSuffix)
	require.NoError(t, export.SavePlan(path, p))
	return path
}

// quits is how often the program was told to end.
func (w *Window) quits() int { return w.app.(*quitting).quits }

// Whatever would lose the plan asks first, and does as it is answered.
func TestNothingIsLostUnasked(t *testing.T) {
	other := saved(t, withStops(1, 2, 3))
	for why, c := range map[string]struct {
		do   func(w *Window)
		done func(w *Window) bool
	}{
		"new": {
			func(w *Window) { w.choose(t, "menu.file", "menu.new") },
			func(w *Window) bool { return plan.Equal(plan.NewPlan(), w.store.Plan()) && w.store.Path() == "" },
		},
		"open": {
			func(w *Window) { w.OpenFile(other) },
			func(w *Window) bool { return len(w.angles()) == 3 && w.store.Path() == other },
		},
		"example": {
			func(w *Window) { w.menuItem(t, "menu.file", "menu.examples").ChildMenu.Items[0].Action() },
			func(w *Window) bool { return w.store.Plan().Title != "" && w.store.Path() == "" },
		},
		"quit": {
			func(w *Window) { w.choose(t, "menu.file", "menu.quit") },
			func(w *Window) bool { return w.quits() == 1 },
		},
	} {
		path := saved(t, withStops(0))
		fresh := func() *Window {
			w := opened(t, withStops(0))
			w.openedFrom(t, path)
			return w
		}

		w := fresh()
		c.do(w)
		assert.Nil(t, w.overlay(), "%s: with all saved nothing is asked", why)
		assert.True(t, c.done(w), why)

		w = fresh()
		w.change(t)
		c.do(w)
		w.answer(t, "ask.cancel")
		assert.Equal(t, []float64{0, 77}, w.angles(), "%s cancelled", why)
		assert.False(t, c.done(w), "%s cancelled", why)
		assert.Nil(t, w.overlay(), why)
		c.do(w)
		w.press(fyne.KeyEscape)
		assert.Equal(t, []float64{0, 77}, w.angles(), "%s: Escape cancels", why)

		c.do(w)
		w.answer(t, "ask.discard")
		assert.True(t, c.done(w), "%s, changes given up", why)
		p, err := export.ReadPlan(path)
		require.NoError(t, err)
		assert.Len(t, p.Stops, 1, "%s: given up is not saved", why)

		w = fresh()
		w.change(t)
		c.do(w)
		w.press(fyne.KeyReturn) // saving is the main answer
		assert.True(t, c.done(w), "%s, saved", why)
		p, err = export.ReadPlan(path)
		require.NoError(t, err)
		assert.Len(t, p.Stops, 2, "%s: saved first", why)
	}
}

// A plan without a file is asked for one on the way; giving that up gives up
// the whole.
func TestQuittingAPlanThatHasNoFileYet(t *testing.T) {
	w := opened(t, withStops(0))
	w.change(t)
	w.Quit()
	w.answer(t, "ask.save")
	w.typePath(t, "anything")
	w.press(fyne.KeyEscape)
	assert.Zero(t, w.quits())
	assert.True(t, w.store.Unsaved())

	path := filepath.Join(t.TempDir(), "new"+planSuffix)
	w.Quit()
	w.answer(t, "ask.save")
	w.typePath(t, path)
	w.press(fyne.KeyReturn)
	assert.Equal(t, 1, w.quits())
	assert.FileExists(t, path)
}

func TestSaving(t *testing.T) {
	p := withStops(0)
	p.Title = "Säge / Drehteller № 2"
	w := opened(t, p)
	w.change(t)
	assert.Contains(t, w.win.Title(), w.words.Text("file.new"))
	unsaved := w.win.Title()
	w.choose(t, "menu.file", "menu.save")
	entries := find[*sheetEntry](w.overlay())
	require.Len(t, entries, 1)
	assert.Equal(t, "s-ge-drehteller-2"+planSuffix, filepath.Base(entries[0].Text), "named after the plan, in letters every system has")

	folder := t.TempDir()
	w.typePath(t, filepath.Join(folder, "plate"))
	w.answer(t, "ask.save")
	path := filepath.Join(folder, "plate"+planSuffix)
	read, err := export.ReadPlan(path)
	require.NoError(t, err)
	assert.True(t, plan.Equal(w.store.Plan(), read))
	assert.False(t, w.store.Unsaved())
	assert.Contains(t, w.status.Text, path)
	assert.Contains(t, w.win.Title(), "plate"+planSuffix)
	assert.NotEqual(t, unsaved, w.win.Title())

	w.change(t)
	w.choose(t, "menu.file", "menu.save")
	assert.Nil(t, w.overlay(), "its file is known now")
	assert.False(t, w.store.Unsaved())
}

// What is being typed is in the file.
func TestSavingTakesWhatIsBeingTyped(t *testing.T) {
	path := saved(t, withStops(0, 20))
	w := opened(t, withStops(0, 20))
	w.openedFrom(t, path)
	w.typeInto(w.row(t, 1).angle, "21")
	w.choose(t, "menu.file", "menu.save")
	read, err := export.ReadPlan(path)
	require.NoError(t, err)
	assert.Equal(t, 21.0, read.Stops[1].Angle)
}

func TestSaveAsAsksBeforeItReplaces(t *testing.T) {
	there := saved(t, withStops(1, 2, 3))
	before := fileText(t, there)
	w := opened(t, withStops(0))
	saveAs := func() {
		w.choose(t, "menu.file", "menu.saveas")
		w.typePath(t, strings.TrimSuffix(there, planSuffix))
		w.press(fyne.KeyReturn)
		assert.Contains(t, w.asked(t), "other"+planSuffix)
	}
	saveAs()
	w.answer(t, "ask.cancel")
	assert.Equal(t, before, fileText(t, there))
	assert.Empty(t, w.store.Path())

	saveAs()
	w.answer(t, "ask.replace.do")
	assert.NotEqual(t, before, fileText(t, there))
	assert.Equal(t, there, w.store.Path())

	w.change(t)
	w.choose(t, "menu.file", "menu.saveas")
	w.press(fyne.KeyReturn)
	assert.Nil(t, w.overlay(), "its own file is not asked about")
	assert.False(t, w.store.Unsaved())
}

func TestAPathMustBeGiven(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.file", "menu.saveas")
	w.typePath(t, "   ")
	w.press(fyne.KeyReturn)
	assert.NotNil(t, w.overlay(), "the question stays")
	w.press(fyne.KeyEscape)
	assert.Nil(t, w.overlay())
	assert.Empty(t, w.store.Path())
}

// A failure is told, keeps the plan unsaved, and does not go on to what would
// lose it.
func TestSavingThatFails(t *testing.T) {
	blocked := filepath.Join(t.TempDir(), "a file, no folder")
	require.NoError(t, os.WriteFile(blocked, []byte("whole"), 0o600))
	for why, path := range map[string]string{
		"no such folder":  filepath.Join(t.TempDir(), "none", "plate"+planSuffix),
		"a file, no path": filepath.Join(blocked, "plate"+planSuffix),
		"a device":        "/dev/full" + planSuffix + "/x",
	} {
		w := opened(t, withStops(0))
		w.change(t)
		w.Quit()
		w.answer(t, "ask.save")
		w.typePath(t, path)
		w.press(fyne.KeyReturn)
		assert.Contains(t, w.asked(t), w.words.Text("ask.failed"), why)
		assert.Contains(t, w.asked(t), filepath.Base(path), why)
		w.answer(t, "ask.cancel")
		assert.True(t, w.store.Unsaved(), why)
		assert.Empty(t, w.store.Path(), why)
		assert.Zero(t, w.quits(), why)
		assert.Equal(t, []float64{0, 77}, w.angles(), why)
	}
	assert.Equal(t, "whole", fileText(t, blocked))
}

func TestOpeningWhatIsNoPlan(t *testing.T) {
	folder := t.TempDir()
	for name, text := range map[string]string{
		"empty": "", "text": "a letter", "binary": "\x00\xff\x7fELF", "json": "{}",
		"cut": fileText(t, saved(t, withStops(0)))[:200],
	} {
		path := filepath.Join(folder, name+planSuffix)
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		w := opened(t, withStops(0, 20))
		w.OpenFile(path)
		assert.Contains(t, w.asked(t), w.words.Text("ask.failed"), name)
		w.answer(t, "ask.ok")
		assert.Equal(t, []float64{0, 20}, w.angles(), name)
		assert.Empty(t, w.store.Path(), name)
	}
	w := opened(t, withStops(0))
	w.OpenFile(filepath.Join(folder, "missing"+planSuffix))
	assert.Contains(t, w.asked(t), "missing")
}

func TestTheOpeningDialogComesUp(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.file", "menu.open")
	assert.NotNil(t, w.overlay())
}

func TestOpenedPlansAreSaved(t *testing.T) {
	w := opened(t, withStops(0))
	w.Opened(diskfile.File{Path: "/plates/table" + planSuffix})
	assert.Equal(t, "/plates/table"+planSuffix, w.store.Path())
	assert.False(t, w.store.Unsaved())
	assert.Equal(t, "/plates", w.folder())
	assert.Equal(t, "table", w.fileName())
	assert.Contains(t, w.win.Title(), "table"+planSuffix)
}

func TestFileNamesOfTitles(t *testing.T) {
	for title, want := range map[string]string{
		"":                      "plate",
		"Camera head 16":        "camera-head-16",
		"  ../../etc/passwd  ":  "etc-passwd",
		"六角":                    "plate",
		"--a--b--":              "a-b",
		strings.Repeat("é", 30): "plate",
	} {
		p := plan.Default()
		p.Title = title
		assert.Equal(t, want, opened(t, p).fileName(), "%q", title)
	}
}

// A click beside a question takes the keys from it, and they answer all the same.
func TestAQuestionClickedBesideIsAnsweredByKeys(t *testing.T) {
	for key, quits := range map[fyne.KeyName]int{fyne.KeyEscape: 0, fyne.KeyReturn: 1} {
		w := opened(t, withStops(0))
		w.store.Load(w.store.Plan(), filepath.Join(t.TempDir(), "plate"+planSuffix))
		w.change(t)
		w.Quit()
		require.NotNil(t, w.overlay())
		w.win.Canvas().Unfocus()
		w.win.Canvas().OnTypedKey()(&fyne.KeyEvent{Name: key})
		assert.Nil(t, w.overlay(), key)
		assert.Equal(t, quits, w.quits(), key)
	}
}

// Nobody is asked to save for the sake of a file that cannot be opened.
func TestAFileThatCannotBeReadIsToldAtOnce(t *testing.T) {
	cut := filepath.Join(t.TempDir(), "cut"+planSuffix)
	require.NoError(t, os.WriteFile(cut, []byte(`{"format": "stopw`), 0o600))
	w := opened(t, withStops(0))
	w.change(t)
	w.OpenFile(cut)
	assert.Contains(t, w.asked(t), w.words.Text("ask.failed"))
	assert.NotContains(t, w.asked(t), w.words.Text("ask.unsaved.text"))
	w.answer(t, "ask.ok")
	assert.Nil(t, w.overlay())
	assert.True(t, w.store.Unsaved())
}
