package ui

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"stopwright/ui/ink"
)

// contrastColour returns the colours of the high contrast looks that are not
// mixed as in the others: edges in full ink, nothing tinted behind text, and a
// focus that nobody can miss.
func contrastColour(p ink.Palette, name fyne.ThemeColorName) (color.Color, bool) {
	switch name {
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground, theme.ColorNameInputBackground,
		theme.ColorNameButton, theme.ColorNameDisabledButton:
		return p.Paper, true
	case theme.ColorNameInputBorder, theme.ColorNameSeparator, theme.ColorNameScrollBar, theme.ColorNamePlaceHolder:
		return p.Ink, true
	case theme.ColorNameDisabled:
		return p.Faint, true
	case theme.ColorNameFocus:
		return p.Accent, true
	}
	return nil, false
}
