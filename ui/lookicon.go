package ui

import (
	"image/color"
	"strconv"
	"sync"

	"fyne.io/fyne/v2/theme"
)

// lookIcon is an icon under a name of its own in each look: the toolkit keeps
// painted icons by name, also when the colours change.
type lookIcon struct {
	*theme.ThemedResource
	look Look
}

// Name returns the icon's name in its look.
func (i lookIcon) Name() string { return strconv.Itoa(int(i.look)) + i.ThemedResource.Name() }

// Content returns the icon in its colour. The toolkit asks for it whenever a
// button is refreshed, and would write the picture anew each time.
func (i lookIcon) Content() []byte {
	of := inkedIcon{i.ThemedResource.Name(), color.NRGBAModel.Convert(theme.Color(i.ThemeColorName())).(color.NRGBA)}
	if content, found := inkedIcons.Load(of); found {
		return content.([]byte)
	}
	content := i.ThemedResource.Content()
	inkedIcons.Store(of, content)
	return content
}

// inkedIcon is an icon in a colour.
type inkedIcon struct {
	name string
	ink  color.NRGBA
}

// inkedIcons are the contents of the icons asked for so far, by [inkedIcon].
var inkedIcons sync.Map
