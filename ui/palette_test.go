package ui

import (
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"github.com/stretchr/testify/assert"

	"stopwright/ui/ink"
)

// Contrasts that the Web Content Accessibility Guidelines 2.1 ask for: 1.4.3 of
// text, 1.4.6 of text for those who need more, 1.4.11 of what is not text.
const (
	textContrast   = 4.5
	strongContrast = 7.0
	shapeContrast  = 3.0
)

// luminance is the relative luminance of WCAG 2.1.
func luminance(c color.RGBA) float64 {
	linear := func(v uint8) float64 {
		x := float64(v) / 255
		if x <= 0.03928 {
			return x / 12.92
		}
		return math.Pow((x+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// ratio is the contrast ratio of WCAG 2.1, 1 to 21.
func ratio(a, b color.RGBA) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// over returns a colour, which may be see-through, laid over an opaque one.
func over(c color.Color, ground color.RGBA) color.RGBA {
	n := color.NRGBAModel.Convert(c).(color.NRGBA)
	return mix(ground, color.RGBA{n.R, n.G, n.B, 255}, float64(n.A)/255)
}

func TestRatioIsThatOfTheGuidelines(t *testing.T) {
	black, white := color.RGBA{0, 0, 0, 255}, color.RGBA{255, 255, 255, 255}
	assert.InDelta(t, 21, ratio(black, white), 1e-9, "the greatest there is")
	assert.InDelta(t, 1, ratio(white, white), 1e-9)
	// #777777 on white is the guidelines' well-known near miss of 4.5.
	assert.InDelta(t, 4.48, ratio(color.RGBA{0x77, 0x77, 0x77, 255}, white), 0.005)
}

var palettes = map[Look]ink.Palette{
	LightLook: ink.Light, DarkLook: ink.Dark, BlackOnWhiteLook: ink.BlackOnWhite, WhiteOnBlackLook: ink.WhiteOnBlack,
}

func TestPaperAndInk(t *testing.T) {
	for look, p := range palettes {
		least := textContrast
		if look.contrast() {
			least = strongContrast
		}
		for name, c := range map[string]color.RGBA{"ink": p.Ink, "accent": p.Accent, "fault": p.Fault} {
			assert.GreaterOrEqual(t, ratio(c, p.Paper), least, "%s of %s on paper", name, look)
			assert.GreaterOrEqual(t, ratio(c, p.Hollow), shapeContrast, "%s of %s round a hole", name, look)
		}
		faint := shapeContrast
		if look.contrast() {
			faint = strongContrast
		}
		assert.GreaterOrEqual(t, ratio(p.Faint, p.Paper), faint, "faint lines of %s", look)
		assert.Equal(t, look.contrast(), p.Weight(ink.ThinLine) > ink.ThinLine, "thicker lines in high contrast only: %s", look)
	}
}

func TestColoursOfTheWindow(t *testing.T) {
	for look := range palettes {
		th := benchTheme{look}
		c := func(name fyne.ThemeColorName) color.RGBA {
			ground := color.RGBAModel.Convert(th.Color(theme.ColorNameBackground, theme.VariantLight)).(color.RGBA)
			return over(th.Color(name, theme.VariantLight), ground)
		}
		least := textContrast
		if look.contrast() {
			least = strongContrast
		}
		for _, ground := range []fyne.ThemeColorName{
			theme.ColorNameBackground, theme.ColorNameInputBackground, theme.ColorNameButton,
			theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground, theme.ColorNameHover, theme.ColorNameSelection, theme.ColorNamePressed,
		} {
			assert.GreaterOrEqual(t, ratio(c(theme.ColorNameForeground), c(ground)), least, "text on %s of %s", ground, look)
		}
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNameForeground), c(theme.ColorNameFocus)), textContrast, "text that has the focus, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNamePlaceHolder), c(theme.ColorNameInputBackground)), textContrast, "what to type, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNameForegroundOnPrimary), c(theme.ColorNamePrimary)), textContrast, "the main button, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNamePrimary), c(theme.ColorNameBackground)), shapeContrast, "what is chosen, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNameError), c(theme.ColorNameBackground)), textContrast, "what is wrong, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNameInputBorder), c(theme.ColorNameBackground)), shapeContrast, "edges of fields, %s", look)
		assert.GreaterOrEqual(t, ratio(c(theme.ColorNameInputBorder), c(theme.ColorNameInputBackground)), shapeContrast, "edges of fields, %s", look)
		if look.contrast() {
			assert.GreaterOrEqual(t, ratio(c(theme.ColorNameFocus), c(theme.ColorNameButton)), shapeContrast, "the focus, %s", look)
			assert.Equal(t, float32(2), th.Size(theme.SizeNameInputBorder))
			assert.GreaterOrEqual(t, ratio(c(theme.ColorNameOverlayBackground), c(theme.ColorNameShadow)), shapeContrast, "a question before the window, %s", look)
			assert.NotEqual(t, c(theme.ColorNameOverlayBackground), c(theme.ColorNameButton), "buttons of a question, %s", look)
		}
	}
}

func TestLooksHaveNames(t *testing.T) {
	for look := range palettes {
		assert.Equal(t, look, lookNamed(look.String()))
		assert.Equal(t, palettes[look], benchTheme{look}.palette(theme.VariantDark))
	}
	assert.Equal(t, AsDesktop, lookNamed("plaid"))
}
