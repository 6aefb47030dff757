package ui

import (
	"fmt"
	"image/png"
	"io"
	"os"
	"path/filepath"

	"fyne.io/fyne/v2"

	"stopwright/export"
)

// shotSizes are the sizes of window that pictures are made of, px.
var shotSizes = []fyne.Size{fyne.NewSize(1024, 700), fyne.NewSize(1600, 1000)}

// Shots writes a picture of every page, light and dark, at two sizes, into a
// folder, and returns their paths. It needs an application without a display,
// whose windows can be painted into an image.
func Shots(a fyne.App, folder string) ([]string, error) {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, err
	}
	p, err := Example("sanding-table")
	if err != nil {
		return nil, err
	}
	var written []string
	for _, look := range []Look{LightLook, DarkLook} {
		w := newWindow(a, p, look)
		w.Show()
		for page, name := range []string{"plate", "click", "chart"} {
			w.showPage(page)
			for _, size := range shotSizes {
				w.win.Resize(size)
				file := fmt.Sprintf("%s-%s-%.0fx%.0f.png", name, lookName(look), size.Width, size.Height)
				path := filepath.Join(folder, file)
				image := w.win.Canvas().Capture()
				if err := export.WriteFile(path, func(out io.Writer) error { return png.Encode(out, image) }); err != nil {
					return written, err
				}
				written = append(written, path)
			}
		}
		w.win.Hide()
	}
	return written, nil
}

func lookName(l Look) string {
	if l == DarkLook {
		return "dark"
	}
	return "light"
}
