package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// desktopOf is an application whose windows remember what they were told to do
// with files that are dropped on them: the test driver forgets it.
type desktopOf struct {
	fyne.App
	drop func(fyne.Position, []fyne.URI)
}

func (d *desktopOf) NewWindow(title string) fyne.Window {
	return &dropTarget{d.App.NewWindow(title), d}
}

// dropTarget is such a window.
type dropTarget struct {
	fyne.Window
	desktop *desktopOf
}

func (w *dropTarget) SetOnDropped(drop func(fyne.Position, []fyne.URI)) { w.desktop.drop = drop }

// What the desktop drops on the window reaches it and is opened, wherever on the
// window it falls, and a letter that is no plan is named.
func TestTheDesktopDropsAFile(t *testing.T) {
	t.Setenv("HOME", t.TempDir())
	d := &desktopOf{App: test.NewTempApp(t)}
	w := newWindow(d, withStops(0), LightLook)
	w.filing.behind = func(work, then func()) { work(); then() }
	w.studies = atOnce()
	w.Show()
	require.NotNil(t, d.drop, "the window takes what is dropped")

	path := saved(t, withStops(1, 2, 3))
	for _, at := range []fyne.Position{{}, {X: 600, Y: 400}, {X: 5000, Y: -1}} {
		d.drop(at, []fyne.URI{storage.NewFileURI(path)})
		assert.Equal(t, []float64{1, 2, 3}, w.angles())
		assert.Equal(t, path, w.store.Path())
	}
	d.drop(fyne.Position{}, []fyne.URI{storage.NewFileURI(t.TempDir())})
	assert.Contains(t, w.asked(t), w.words.Text("file.reason.folder"))
	assert.Equal(t, path, w.store.Path(), "the plan stays")
}
