package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// leastSentence is how wide (px of layout) the sentence of a finding must be
// left for the button that mends it to stand beside it: five words or so.
const leastSentence = 200

// findingBox lays out a finding's sign, its sentence and its button in a row;
// the button comes below the sentence where that would have too little width.
type findingBox struct{ below bool }

// parts are the objects laid out.
func (*findingBox) parts(objects []fyne.CanvasObject) (sign, text, fix fyne.CanvasObject) {
	return objects[0], objects[1], objects[2]
}

// Layout decides where the button goes, by the width.
func (b *findingBox) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	sign, text, fix := b.parts(objects)
	left := sign.MinSize().Width + theme.Padding()
	room, button := size.Width-left, fix.MinSize()
	beside := room - button.Width - theme.Padding()
	b.below = fix.Visible() && beside < leastSentence
	high := size.Height
	if fix.Visible() && !b.below {
		room = beside
	}
	if b.below {
		high -= button.Height
	}
	sign.Resize(fyne.NewSize(sign.MinSize().Width, high))
	sign.Move(fyne.NewPos(0, 0))
	text.Resize(fyne.NewSize(room, high))
	text.Move(fyne.NewPos(left, 0))
	fix.Resize(button)
	at := fyne.NewPos(size.Width-button.Width, (size.Height-button.Height)/2)
	if b.below {
		at.Y = high
	}
	fix.Move(at)
}

// MinSize is as high as the sentence needs in the width it was last given.
func (b *findingBox) MinSize(objects []fyne.CanvasObject) fyne.Size {
	sign, text, fix := b.parts(objects)
	least := fyne.NewSize(sign.MinSize().Width+theme.Padding()+text.MinSize().Width, max(sign.MinSize().Height, text.MinSize().Height))
	switch button := fix.MinSize(); {
	case !fix.Visible():
	case b.below:
		least.Height += button.Height
	default:
		least.Height = max(least.Height, button.Height)
	}
	return least
}
