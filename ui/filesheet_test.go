package ui

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
)

// openSheet opens the sheet that asks for a plan, in a folder with two plans,
// another file and a folder with a third plan.
func openSheet(t *testing.T) (w *Window, files *fileSheet, folder string) {
	t.Helper()
	w = opened(t, withStops(0))
	folder, err := os.UserHomeDir()
	require.NoError(t, err)
	require.NoError(t, os.Mkdir(filepath.Join(folder, "older"), 0o755))
	one, two := withStops(1), withStops(1, 2)
	save := func(name string, stops int) {
		p := one
		if stops == 2 {
			p = two
		}
		require.NoError(t, export.SavePlan(filepath.Join(folder, name), p))
	}
	save("B.stopwright", 1)
	save("a.stopwright", 2)
	save(filepath.Join("older", "c.stopwright"), 1)
	require.NoError(t, os.WriteFile(filepath.Join(folder, "letter.txt"), nil, 0o600))
	require.NoError(t, os.WriteFile(filepath.Join(folder, ".hidden.stopwright"), nil, 0o600))
	return w, w.askFile("Open", w.folder(), planSuffix, w.OpenFile), folder
}

// names returns what a sheet of files shows.
func (s *fileSheet) names() []string {
	var out []string
	for _, i := range s.items {
		out = append(out, i.Name)
	}
	return out
}

func TestTheMenuAsksForAPlan(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.file", "menu.open")
	w.typePath(t, saved(t, withStops(5)))
	w.press(fyne.KeyReturn)
	assert.Equal(t, []float64{5}, w.angles())
}

func TestAPlanIsOpenedByKeys(t *testing.T) {
	w, files, folder := openSheet(t)
	assert.Equal(t, []string{"older", "a.stopwright", "B.stopwright"}, files.names(), "folders first, then plans by name")
	w.press(fyne.KeyDown)
	w.press(fyne.KeyDown)
	assert.Equal(t, filepath.Join(folder, "a.stopwright"), files.entry.Text)
	w.press(fyne.KeyUp)
	assert.Equal(t, filepath.Join(folder, "older"), files.entry.Text)
	w.press(fyne.KeyReturn)
	assert.Equal(t, []string{"c.stopwright"}, files.names(), "a folder is looked into")
	w.focus(files.list)
	w.press(fyne.KeyDown)
	w.press(fyne.KeyReturn)
	assert.Nil(t, w.overlay())
	assert.Equal(t, filepath.Join(folder, "older", "c.stopwright"), w.store.Path())
}

func TestAPlanIsOpenedByTyping(t *testing.T) {
	w, files, folder := openSheet(t)
	w.typePath(t, "older")
	w.press(fyne.KeyEnter)
	assert.Equal(t, []string{"c.stopwright"}, files.names(), "a name is one in the folder shown")
	w.typePath(t, filepath.Join(folder, "a.stopwright"))
	w.press(fyne.KeyEnter)
	assert.Equal(t, []float64{1, 2}, w.angles())
}

func TestAFolderIsLookedIntoByTheMouse(t *testing.T) {
	w, files, folder := openSheet(t)
	files.list.Select(0)
	assert.Equal(t, []string{"c.stopwright"}, files.names())
	files.up()
	assert.Equal(t, folder, files.folder)
	files.list.Select(2)
	assert.Equal(t, filepath.Join(folder, "B.stopwright"), files.entry.Text)
	w.answer(t, "ask.open")
	assert.Equal(t, []float64{1}, w.angles())
}

// Escape leaves the question, wherever the keys are.
func TestTheFileSheetIsLeftByEscape(t *testing.T) {
	for _, at := range []string{"field", "list"} {
		w, files, _ := openSheet(t)
		if at == "list" {
			w.focus(files.list)
		}
		w.press(fyne.KeyEscape)
		assert.Nil(t, w.overlay(), at)
		assert.Empty(t, w.store.Path(), at)
	}
}

func TestAFolderThatCannotBeReadIsNamed(t *testing.T) {
	w, files, folder := openSheet(t)
	files.show(filepath.Join(folder, "nowhere"))
	assert.Contains(t, w.asked(t), w.words.Text("file.reason.none"))
	assert.Equal(t, folder, files.folder, "the old one stays")
	files.up()
	assert.NotContains(t, w.asked(t), w.words.Text("file.reason.none"))
}

// A folder is chosen over the sheet that asked for a name, which keeps the name.
func TestAFolderIsChosenForTheExport(t *testing.T) {
	w := opened(t, withStops(0))
	home, err := os.UserHomeDir()
	require.NoError(t, err)
	require.NoError(t, os.Mkdir(filepath.Join(home, "shop"), 0o755))
	w.choose(t, "menu.file", "menu.saveas")
	entry := find[*sheetEntry](w.overlay())[0]
	w.folderButton(entry).OnTapped()
	require.Len(t, w.win.Canvas().Overlays().List(), 2)
	w.typePath(t, "shop")
	w.press(fyne.KeyReturn)
	require.Len(t, w.win.Canvas().Overlays().List(), 2, "first it is looked into")
	w.press(fyne.KeyReturn)
	assert.Len(t, w.win.Canvas().Overlays().List(), 1)
	assert.Equal(t, filepath.Join(home, "shop", "plate.stopwright"), entry.Text)
}

// Closing the window over a question puts it aside: there is never more than
// one, and with all saved none.
func TestClosingTheWindowOverAQuestion(t *testing.T) {
	for _, item := range []string{"menu.open", "menu.saveas", "menu.export"} {
		w := opened(t, withStops(0))
		w.choose(t, "menu.file", item)
		require.NotNil(t, w.overlay(), item)
		w.Quit()
		assert.Nil(t, w.overlay(), item)
		assert.Equal(t, 1, w.quits(), item)
	}
	w := opened(t, withStops(0))
	w.change(t)
	w.choose(t, "menu.file", "menu.export")
	find[*sheetEntry](w.overlay())[0].SetText("x")
	for range 3 {
		w.Quit()
		assert.Len(t, w.win.Canvas().Overlays().List(), 1)
		assert.Contains(t, w.asked(t), w.words.Text("ask.unsaved.text"))
		assert.Zero(t, w.quits())
	}
	w.answer(t, "ask.discard")
	assert.Equal(t, 1, w.quits())
	assert.Empty(t, w.sheets)
}

// The toolkit's own menus speak as the window does.
func TestTheToolkitSpeaksTheWindowsLanguage(t *testing.T) {
	w := opened(t, withStops(0))
	w.speak("de")
	assert.Equal(t, "Einfügen", lang.L("Paste"))
	w.speak("en")
	assert.Equal(t, "Paste", lang.L("Paste"))
}
