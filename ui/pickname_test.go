package ui

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
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
