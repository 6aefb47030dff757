package ui

import (
	"image"
	"image/draw"
	"image/png"
	"io"
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"

	book "stopwright/assets/guide"
	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/export"
)

// guideSize is the size of the window that the guide's pictures show, px.
var guideSize = fyne.NewSize(1024, 700)

// guidePicture is one picture of the guide.
type guidePicture struct {
	name  string
	image image.Image
}

// WriteGuide writes all of the guide that is made and not written by hand, in
// every language: the page of the checks, and a picture of the window and of
// every page. It returns the paths, and needs an application without a display.
func WriteGuide(a fyne.App, folder string) (written []string, err error) {
	for _, language := range words.Languages() {
		pictures, err := guidePictures(a, language)
		if err != nil {
			return written, err
		}
		page := filepath.Join(folder, language, book.Checks+".md")
		if err := export.WriteFile(page, func(w io.Writer) error {
			_, err := io.WriteString(w, check.Page(inWords(language)))
			return err
		}); err != nil {
			return written, err
		}
		written = append(written, page)
		for _, p := range pictures {
			path := filepath.Join(folder, language, p.name)
			smallest := png.Encoder{CompressionLevel: png.BestCompression}
			if err := export.WriteFile(path, func(w io.Writer) error { return smallest.Encode(w, p.image) }); err != nil {
				return written, err
			}
			written = append(written, path)
		}
	}
	return written, nil
}

// guidePictures makes the pictures that the guide shows in a language: the whole
// window, or one page alone, by the name of the page.
func guidePictures(a fyne.App, language string) ([]guidePicture, error) {
	p, err := Example("sanding-table")
	if err != nil {
		return nil, err
	}
	tool := plan.NewTool()
	tool.Offset, tool.Fence = 1.5, 12 // mm: enough for a wander that is seen
	p.Tool = &tool
	pages, err := book.Pages(language)
	if err != nil {
		return nil, err
	}
	wanted := book.Pictures(pages)
	w := newWindow(a, p, LightLook)
	defer w.win.Hide()
	w.studies = atOnce()
	w.speak(language)
	w.Show()
	w.win.Resize(guideSize)
	all := []guidePicture{{"window.png", w.win.Canvas().Capture()}}
	for _, page := range w.pageList {
		if !slices.Contains(wanted, string(page.id)+".png") {
			continue
		}
		w.showPage(page.id)
		at, size := a.Driver().AbsolutePositionForObject(w.pages), w.pages.Size()
		pane := image.Rect(int(at.X), int(at.Y), int(at.X+size.Width), int(at.Y+size.Height))
		all = append(all, guidePicture{string(page.id) + ".png", cropped(w.win.Canvas().Capture(), pane)})
	}
	return all, nil
}

// cropped returns a part of a picture, in colours without see-through, which
// take less room in a file.
func cropped(whole image.Image, part image.Rectangle) image.Image {
	out := image.NewRGBA(image.Rect(0, 0, part.Dx(), part.Dy()))
	draw.Draw(out, out.Bounds(), whole, part.Min, draw.Src)
	return out
}
