package ui

import (
	"context"
	"errors"
	"net/url"
	"path/filepath"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/export"
)

// patience is how long a bundle may take before the window shows how far it is:
// what is done sooner needs no bar.
const patience = 300 * time.Millisecond

// bundling is a bundle being written: a bar that says how far it is, and a
// button that stops it.
type bundling struct {
	w     *Window
	bar   *widget.ProgressBar
	said  *widget.Label
	sheet *sheet
	open  bool
}

// newBundling makes the sheet, not yet shown. Stop is called when the maker
// gives up.
func newBundling(w *Window, stop func()) *bundling {
	b := &bundling{w: w, bar: widget.NewProgressBar(), said: widget.NewLabel(" ")}
	b.said.Truncation = fyne.TextTruncateEllipsis
	cancel := answer{text: w.words.Text("ask.cancel"), then: stop, main: true}
	b.sheet = w.newSheet(w.words.Text("bundle.title"), container.NewVBox(b.said, b.bar), cancel)
	b.sheet.dialog.SetOnClosed(func() { b.open = false })
	return b
}

// show shows how far it is.
func (b *bundling) show() {
	b.open = true
	b.sheet.dialog.Show()
	b.w.focus(b.sheet.main)
}

// hide takes the sheet away, if it was shown.
func (b *bundling) hide() {
	if b.open {
		b.sheet.dialog.Hide()
	}
}

// tell shows how far it has come.
func (b *bundling) tell(p export.Progress) {
	b.bar.SetValue(float64(p.Done) / float64(p.Total))
	key, args := "bundle.making", words.Args{"File": p.File}
	if p.File == "" {
		key, args = "bundle.putting", nil
	}
	b.said.SetText(b.w.words.Text(key, args))
}

// runBundle writes a bundle on another goroutine, so that the window can be used
// meanwhile, and stopped.
func (w *Window) runBundle(q export.BundleRequest) {
	ctx, cancel := context.WithCancel(context.Background())
	b := newBundling(w, cancel)
	forget := w.filing.clock.After(patience, b.show)
	r := w.store.Report()
	var done export.Bundled
	var err error
	w.filing.behind(func() {
		done, err = export.Bundle(ctx, r, q, func(p export.Progress) { fyne.Do(func() { b.tell(p) }) })
	}, func() {
		forget()
		b.hide()
		cancel()
		if errors.Is(err, context.Canceled) {
			w.say(w.words.Text("bundle.stopped"))
			return
		}
		w.toldBundle(done, err)
	})
}

// fileURL returns the address of a file by its absolute path, as a browser
// takes it on every system.
func fileURL(path string) *url.URL {
	path = filepath.ToSlash(path)
	if path[0] != '/' { // C:/…
		path = "/" + path
	}
	return &url.URL{Scheme: "file", Path: path}
}
