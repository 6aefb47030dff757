package ui

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestShortcutsCanBeReadInAMenu(t *testing.T) {
	app := test.NewTempApp(t)
	for look, p := range palettes {
		th := benchTheme{look}
		app.Settings().SetTheme(th)
		item := fyne.NewMenuItem("Save", nil)
		item.Shortcut = &desktop.CustomShortcut{KeyName: fyne.KeyS, Modifier: fyne.KeyModifierControl}
		menu := widget.NewMenu(fyne.NewMenu("", item))
		menu.Resize(menu.MinSize())
		written := find[*canvas.Text](menu)
		require.Greater(t, len(written), 1, "the name, then the shortcut")
		ground := color.RGBAModel.Convert(th.Color(theme.ColorNameMenuBackground, app.Settings().ThemeVariant())).(color.RGBA)
		for _, part := range written[1:] {
			assert.GreaterOrEqual(t, ratio(over(part.Color, ground), ground), textContrast, "%s of %s", part.Text, look)
		}
		assert.Equal(t, p.Ink, over(menuInk(p.Ink), ground), "text is as it was, %s", look)
	}
}
