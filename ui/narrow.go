package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// narrowed lets a page be narrower than what stands on it, so that the whole
// window fits a screen of 800 by 600: the page is then moved sideways under its
// tab.
func narrowed(page fyne.CanvasObject) fyne.CanvasObject { return container.NewHScroll(page) }
