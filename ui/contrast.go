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

// veil is how much of the window is hidden behind a question: enough for the
// question's paper, which is as the window's, to stand out.
const veil = 0.55

// contrastColour returns the colours of the high contrast looks that are not
// mixed as in the others: edges in full ink, what can be pressed set off from
// paper, a window that fades behind a question, and a focus that nobody can miss.
func contrastColour(p ink.Palette, name fyne.ThemeColorName) (color.Color, bool) {
	switch name {
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground,
		theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Paper, true
	case theme.ColorNameInputBackground, theme.ColorNameButton, theme.ColorNameDisabledButton:
		return p.Hollow, true
	case theme.ColorNameShadow:
		return alpha(p.Faint, veil), true
	case theme.ColorNameInputBorder, theme.ColorNameSeparator, theme.ColorNameScrollBar, theme.ColorNamePlaceHolder:
		return p.Ink, true
	case theme.ColorNameDisabled:
		return p.Faint, true
	case theme.ColorNameFocus:
		return alpha(p.Accent, focusShare), true
	}
	return nil, false
}
