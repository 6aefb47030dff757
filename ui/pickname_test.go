package ui

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
)

func TestTheNameInAPath(t *testing.T) {
	for path, c := range map[string]struct{ name, why string }{
		"/home/a/plate.stopwright": {"plate", "neither folder nor ending"},
		"/home/a/table":            {"table", "no ending"},
		"/home/a/table-1.2":        {"table-1.2", "a number is no ending"},
		"/home/a/":                 {"", "a folder only"},
		"/home/äöü/Säge № 2.pdf":   {"Säge № 2", "counted in characters"},
		"plate.stopwright":         {"plate", "no folder"},
		"":                         {"", "nothing at all"},
	} {
		from, to := nameIn(path)
		assert.Equal(t, c.name, string([]rune(path)[from:to]), c.why)
	}
}

// What is typed takes the place of the name proposed, in its folder.
func TestANameIsTypedOverTheOneProposed(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.file", "menu.saveas")
	folder := filepath.Dir(find[*sheetEntry](w.overlay())[0].Text)
	w.typeText("disc 300")
	w.press(fyne.KeyReturn)
	assert.Equal(t, filepath.Join(folder, "disc 300"+planSuffix), w.store.Path())
}

// A path copied elsewhere is pasted whole, a name in the place of the name.
func TestPathsAndNamesArePasted(t *testing.T) {
	whole := filepath.Join(t.TempDir(), "copied"+planSuffix)
	for pasted, inFolder := range map[string]bool{whole: false, "disc 300": true} {
		w := opened(t, withStops(0))
		w.choose(t, "menu.file", "menu.saveas")
		entry := find[*sheetEntry](w.overlay())[0]
		want := pasted
		if inFolder {
			want = filepath.Join(filepath.Dir(entry.Text), pasted+planSuffix)
		}
		clipboard := test.NewClipboard()
		clipboard.SetContent(pasted)
		entry.TypedShortcut(&fyne.ShortcutPaste{Clipboard: clipboard})
		assert.Equal(t, want, entry.Text)
	}
}
