package ui

import (
	"testing"

	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/licences"
	"stopwright/assets/version"
)

func TestAboutSaysTheVersionAndEveryLicence(t *testing.T) {
	w := opened(t, withStops(0))
	w.choose(t, "menu.help", "menu.about")
	assert.Contains(t, w.asked(t), version.Number)
	assert.Contains(t, w.asked(t), "Open Font License (OFL)")
	choices := find[*widget.Select](w.overlay())
	require.Len(t, choices, 1)
	for _, l := range licences.All() {
		require.Contains(t, choices[0].Options, l.Module)
		choices[0].SetSelected(l.Module)
		assert.Contains(t, w.asked(t), l.Text)
	}
	w.answer(t, "ask.ok")
	assert.Nil(t, w.overlay())
}
