package ui

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"stopwright/assets/fonts"
	"stopwright/ui/ink"
)

// Look is whether the bench is light, dark, or as the desktop says.
type Look int

// The looks. The last two are in high contrast.
const (
	AsDesktop Look = iota
	LightLook
	DarkLook
	BlackOnWhiteLook
	WhiteOnBlackLook
)

// lookNames are the names under which looks are kept between runs and their
// pictures filed, in order.
var lookNames = []string{"desktop", "light", "dark", "black-on-white", "white-on-black"}

// lookNamed returns the look of a name; one that is none is the desktop's.
func lookNamed(name string) Look { return Look(max(slices.Index(lookNames, name), 0)) }

// String returns the look's name.
func (l Look) String() string { return lookNames[l] }

// contrast reports whether the look is one of high contrast.
func (l Look) contrast() bool { return l == BlackOnWhiteLook || l == WhiteOnBlackLook }

// benchTheme is the one place where colours, type sizes and spacing are chosen:
// a drawing on the bench, ink on paper, one accent.
type benchTheme struct{ look Look }

var (
	lettering = fyne.NewStaticResource("routed-gothic.ttf", fonts.Regular)
	headings  = fyne.NewStaticResource("routed-gothic-wide.ttf", fonts.Wide)
)

// variant returns the light or the dark variant, by choice or by desktop.
func (t benchTheme) variant(desktop fyne.ThemeVariant) fyne.ThemeVariant {
	switch t.look {
	case LightLook, BlackOnWhiteLook:
		return theme.VariantLight
	case DarkLook, WhiteOnBlackLook:
		return theme.VariantDark
	}
	return desktop
}

// palette returns the colours of paper and ink.
func (t benchTheme) palette(desktop fyne.ThemeVariant) ink.Palette {
	switch {
	case t.look == BlackOnWhiteLook:
		return ink.BlackOnWhite
	case t.look == WhiteOnBlackLook:
		return ink.WhiteOnBlack
	case t.variant(desktop) == theme.VariantLight:
		return ink.Light
	}
	return ink.Dark
}

// Color returns a colour of the window, mixed from paper and ink.
func (t benchTheme) Color(name fyne.ThemeColorName, desktop fyne.ThemeVariant) color.Color {
	p := t.palette(desktop)
	if c, ok := contrastColour(p, name); ok && t.look.contrast() {
		return c
	}
	light := t.variant(desktop) == theme.VariantLight
	switch name {
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground:
		if light {
			return mix(p.Paper, p.Ink, 0.07)
		}
		return mix(p.Paper, p.Ink, 0.05)
	case theme.ColorNameInputBackground:
		if light {
			return mix(p.Paper, color.RGBA{255, 255, 255, 255}, 0.55)
		}
		return mix(p.Paper, color.RGBA{0, 0, 0, 255}, 0.3)
	case theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Paper
	case theme.ColorNameForeground:
		return menuInk(p.Ink)
	case theme.ColorNameButton:
		return mix(p.Paper, p.Ink, 0.14)
	case theme.ColorNameDisabledButton:
		return mix(p.Paper, p.Ink, 0.06)
	case theme.ColorNameDisabled:
		return mix(p.Paper, p.Ink, 0.45)
	case theme.ColorNamePlaceHolder:
		return mix(p.Paper, p.Ink, 0.66)
	case theme.ColorNameInputBorder:
		return mix(p.Paper, p.Ink, 0.58)
	case theme.ColorNameSeparator:
		return mix(p.Paper, p.Ink, 0.3)
	case theme.ColorNamePrimary, theme.ColorNameHyperlink:
		return p.Accent
	case theme.ColorNameForegroundOnPrimary, theme.ColorNameForegroundOnError:
		return p.Paper
	case theme.ColorNameFocus:
		return alpha(p.Accent, 0.35)
	case theme.ColorNameSelection:
		return alpha(p.Accent, 0.25)
	case theme.ColorNameHover:
		return alpha(p.Ink, 0.06)
	case theme.ColorNamePressed:
		return alpha(p.Ink, 0.14)
	case theme.ColorNameScrollBar:
		return alpha(p.Ink, 0.4)
	case theme.ColorNameScrollBarBackground:
		return alpha(p.Ink, 0.05)
	case theme.ColorNameShadow:
		return alpha(color.RGBA{0, 0, 0, 255}, 0.25)
	case theme.ColorNameError:
		return p.Fault
	}
	return theme.DefaultTheme().Color(name, t.variant(desktop))
}

// Font returns the draughting letter, its wider cut for headings.
func (t benchTheme) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Symbol, style.Monospace:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return headings
	}
	return lettering
}

// Icon returns the toolkit's own icons, which take the colours above.
func (t benchTheme) Icon(name fyne.ThemeIconName) fyne.Resource {
	icon, ok := theme.DefaultTheme().Icon(name).(*theme.ThemedResource)
	if !ok {
		return theme.DefaultTheme().Icon(name)
	}
	return lookIcon{icon, t.look}
}

// Size returns type sizes and spacing.
func (t benchTheme) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameText:
		return 14
	case theme.SizeNameHeadingText:
		return 20
	case theme.SizeNameSubHeadingText:
		return 16
	case theme.SizeNameCaptionText:
		return 12
	case theme.SizeNamePadding:
		return 4
	case theme.SizeNameInnerPadding:
		return 6
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius:
		return 2
	case theme.SizeNameInlineIcon:
		return 18
	case theme.SizeNameInputBorder, theme.SizeNameSeparatorThickness:
		if t.look.contrast() {
			return 2
		}
	}
	return theme.DefaultTheme().Size(name)
}

// mix returns a with the given share of b mixed in.
func mix(a, b color.RGBA, share float64) color.RGBA {
	f := func(x, y uint8) uint8 { return uint8(float64(x)*(1-share) + float64(y)*share + 0.5) }
	return color.RGBA{f(a.R, b.R), f(a.G, b.G), f(a.B, b.B), 255}
}

// alpha returns an opaque colour made see-through.
func alpha(c color.RGBA, share float64) color.NRGBA {
	return color.NRGBA{c.R, c.G, c.B, uint8(share*255 + 0.5)}
}

// alphaInk returns an opaque colour made see-through, as the painter takes it.
func alphaInk(c color.RGBA, share float64) color.RGBA {
	f := func(x uint8) uint8 { return uint8(float64(x)*share + 0.5) }
	return color.RGBA{f(c.R), f(c.G), f(c.B), f(255)}
}
