package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
)

// A sentence keeps its width: the button that mends comes below it if need be.
func TestTheButtonThatMendsLeavesTheSentenceItsWidth(t *testing.T) {
	text := widget.NewLabel("With catch A a stop is within 1.815° of its angle on 95 plates in 100; the target is 0.25°.")
	text.Wrapping = fyne.TextWrapWord
	sign, fix, layout := widget.NewIcon(nil), widget.NewButton("Ring radius 136 mm, pivot play 0.02 mm", nil), &findingBox{}
	objects := []fyne.CanvasObject{sign, text, fix}
	lay := func(width float32) {
		for range 2 { // a wrapped text wants its width first
			layout.Layout(objects, fyne.NewSize(width, layout.MinSize(objects).Height))
		}
	}

	lay(700)
	assert.Greater(t, fix.Position().X, text.Position().X+text.Size().Width, "beside it")

	lay(345)
	assert.GreaterOrEqual(t, text.Size().Width, float32(leastSentence))
	assert.GreaterOrEqual(t, fix.Position().Y, text.MinSize().Height, "below it")
	assert.LessOrEqual(t, fix.Position().Y+fix.Size().Height, layout.MinSize(objects).Height)

	fix.Hide()
	lay(345)
	assert.Equal(t, text.MinSize().Height, layout.MinSize(objects).Height, "no room is left for a button that is not there")
}
