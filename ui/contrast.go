package ui

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"stopwright/ui/ink"
)

// focusShare is how much of the accent colour lies behind what has the focus:
// enough to stand out from paper, and little enough to read ink on.
const focusShare = 0.57

// contrastColour returns the colours of the high contrast looks that are not
// mixed as in the others: edges in full ink, what lies over the window
// or can be pressed set off from paper, and a focus that nobody can miss.
func contrastColour(p ink.Palette, name fyne.ThemeColorName) (color.Color, bool) {
	switch name {
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground:
		return p.Paper, true
	case theme.ColorNameInputBackground, theme.ColorNameButton, theme.ColorNameDisabledButton,
		theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Hollow, true
	case theme.ColorNameInputBorder, theme.ColorNameSeparator, theme.ColorNameScrollBar, theme.ColorNamePlaceHolder:
		return p.Ink, true
	case theme.ColorNameDisabled:
		return p.Faint, true
	case theme.ColorNameFocus:
		return alpha(p.Accent, focusShare), true
	}
	return nil, false
}
