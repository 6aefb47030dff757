package ui

import (
	"fmt"
	"image/png"
	"io"
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"

	"stopwright/assets/words"
	"stopwright/export"
)

// shotSizes are the sizes of window that pictures are made of, px.
var shotSizes = []fyne.Size{fyne.NewSize(1024, 700), fyne.NewSize(1600, 1000)}

// shot is one thing that pictures are made of.
type shot struct {
	name string
	show func(*Window)
}

// shots lists what pictures are made of, one after the other in one window:
// every page, and what helps.
func (w *Window) shots() []shot {
	var all []shot
	for _, p := range w.pageList {
		all = append(all, shot{string(p.id), func(w *Window) { w.showPage(p.id) }})
	}
	return append(all,
		shot{"proved", func(w *Window) { w.showPage(settingPage); w.proveForPicture() }},
		shot{"readings", func(w *Window) { w.setting.tabs.SelectIndex(proofTab) }},
		shot{"repairs", func(w *Window) { w.setting.proof.object.ScrollToBottom() }},
		shot{"field", func(w *Window) { w.showPage(platePage); w.explain(w.fields["seat.diameter"]) }},
		shot{"guide", func(w *Window) { w.startGuide(); w.guide.show(1) }},
		shot{"keys", func(w *Window) { w.guide.end(); w.showKeys() }},
		shot{"template", func(w *Window) { w.closeQuestions(); w.askTemplate() }},
		shot{"scale", func(w *Window) { w.closeQuestions(); w.askScale() }},
		shot{"coupon", func(w *Window) { w.closeQuestions(); w.askCoupon() }},
	)
}

// Shots writes a picture of every page and of what helps, in every language and
// look, at two sizes, into a folder, and returns their paths. It needs an
// application without a display, whose windows can be painted into an image.
func Shots(a fyne.App, folder string) ([]string, error) {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, err
	}
	p, err := Example("sanding-table")
	if err != nil {
		return nil, err
	}
	var written []string
	for _, language := range words.Languages() {
		for _, look := range []Look{LightLook, DarkLook, BlackOnWhiteLook, WhiteOnBlackLook} {
			w := newWindow(a, p, look)
			w.studies = atOnce()
			w.speak(language)
			w.Show()
			name := fmt.Sprintf("%s-%s", language, look)
			paths, err := w.shoot(filepath.Join(folder, name))
			written = append(written, paths...)
			if err != nil {
				return written, err
			}
			w.win.Hide()
		}
	}
	return written, nil
}

// shoot writes the window's pictures; their names begin with prefix.
func (w *Window) shoot(prefix string) (written []string, err error) {
	for _, s := range w.shots() {
		s.show(w)
		for _, size := range shotSizes {
			w.win.Resize(size)
			path := fmt.Sprintf("%s-%s-%.0fx%.0f.png", prefix, s.name, size.Width, size.Height)
			image := w.capture()
			if err := export.WriteFile(path, func(out io.Writer) error { return png.Encode(out, image) }); err != nil {
				return written, err
			}
			written = append(written, path)
		}
	}
	return written, nil
}
