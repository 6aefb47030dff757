package ui

import (
	"context"
	"net/url"
	"os"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
)

func TestBundleFromTheMenu(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.bundle")
	entries := find[*sheetEntry](w.overlay())
	require.Len(t, entries, 1)
	assert.Contains(t, entries[0].Text, time.Now().Format(time.DateOnly), "a dated name to begin with")
	w.typePath(t, filepath.Join(folder, "all"))
	w.press(fyne.KeyReturn)
	assert.Contains(t, w.asked(t), filepath.Join(folder, "all"))
	assert.Equal(t, []string{"all"}, names(t, folder))
	assert.Subset(t, names(t, filepath.Join(folder, "all")), []string{"contents.html", "plate.stopwright", "plate.dxf", "plate-base.ngc"})
	assert.False(t, w.store.Unsaved(), "it is no edit")
	w.answer(t, "ask.ok")
	assert.Nil(t, w.overlay())
}

func TestBundleAsAZipFile(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.bundle")
	w.typePath(t, filepath.Join(folder, "all"))
	find[*sheetSelect](w.overlay())[0].SetSelectedIndex(1)
	assert.Equal(t, filepath.Join(folder, "all.zip"), find[*sheetEntry](w.overlay())[0].Text)
	find[*sheetSelect](w.overlay())[0].SetSelectedIndex(0)
	assert.Equal(t, filepath.Join(folder, "all"), find[*sheetEntry](w.overlay())[0].Text)
	find[*sheetSelect](w.overlay())[0].SetSelectedIndex(1)
	w.answer(t, "bundle.do")
	assert.Equal(t, []string{"all.zip"}, names(t, folder))
}

func TestBundleAsksBeforeItReplaces(t *testing.T) {
	w := opened(t, withStops(0, 36))
	folder := t.TempDir()
	to := filepath.Join(folder, "all")
	do := func() {
		w.choose(t, "menu.file", "menu.bundle")
		w.typePath(t, to)
		w.answer(t, "bundle.do")
	}
	do()
	w.answer(t, "ask.ok")
	old := fileText(t, filepath.Join(to, "contents.html"))
	require.NoError(t, os.WriteFile(filepath.Join(to, "contents.html"), []byte("old"), 0o600))
	do()
	assert.Contains(t, w.asked(t), "all")
	w.answer(t, "ask.cancel")
	assert.Equal(t, "old", fileText(t, filepath.Join(to, "contents.html")))
	do()
	w.answer(t, "ask.replace.do")
	w.answer(t, "ask.ok")
	assert.Equal(t, old, fileText(t, filepath.Join(to, "contents.html")))

	require.NoError(t, os.WriteFile(filepath.Join(to, "mine.txt"), []byte("mine"), 0o600))
	do()
	w.answer(t, "ask.replace.do")
	assert.Contains(t, w.asked(t), "mine.txt", "what is no part of a bundle is not replaced")
	assert.Equal(t, "mine", fileText(t, filepath.Join(to, "mine.txt")))
}

// A bundle that takes long shows how far it is, and can be stopped.
func TestBundleIsStopped(t *testing.T) {
	w := opened(t, withStops(0, 36))
	var show func()
	w.filing.clock.After = func(_ time.Duration, f func()) func() {
		show = f
		return func() {}
	}
	var work, then func()
	w.filing.behind = func(a, b func()) { work, then = a, b }
	folder := t.TempDir()
	w.bundle(export.BundleRequest{To: filepath.Join(folder, "all"), Name: "all"})
	require.NotNil(t, work)
	assert.Nil(t, w.overlay(), "what is done soon shows no bar")
	show()
	require.Len(t, find[*widget.ProgressBar](w.overlay()), 1)
	w.press(fyne.KeyEscape)
	assert.Nil(t, w.overlay())
	work()
	then()
	assert.Nil(t, w.overlay())
	assert.Equal(t, w.words.Text("bundle.stopped"), w.status.Text)
	assert.Empty(t, names(t, folder), "nothing is left")
}

func TestBundleSaysHowFarItIs(t *testing.T) {
	w := opened(t, withStops(0, 36))
	_, cancel := context.WithCancel(context.Background())
	b := newBundling(w, cancel)
	b.show()
	b.tell(export.Progress{Done: 3, Total: 12, File: "plate.pdf"})
	assert.Contains(t, w.asked(t), "plate.pdf")
	assert.InDelta(t, 0.25, b.bar.Value, 1e-12)
	b.tell(export.Progress{Done: 12, Total: 12})
	assert.Contains(t, w.asked(t), w.words.Text("bundle.putting"))
	b.hide()
	assert.Nil(t, w.overlay())
}

// opening is an application that remembers what it was to open.
type opening struct {
	fyne.App
	opened string
}

func (o *opening) OpenURL(u *url.URL) error {
	o.opened = u.String()
	return nil
}

func TestContentsAreOpened(t *testing.T) {
	w := opened(t, withStops(0, 36))
	o := &opening{App: w.app}
	w.app = o
	w.openContents(export.Bundled{Path: "/tmp/a b", Files: []string{"contents.html"}})
	assert.Equal(t, "file:///tmp/a%20b/contents.html", o.opened)
	assert.Equal(t, "file:///C:/b/contents.html", fileURL("C:/b/contents.html").String())
}
