package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/room"
)

// A card and the words below it say how much of what is wrong an answer mends,
// and there is room for it on the card.
func TestCardsSayHowMuchTheyMend(t *testing.T) {
	for _, language := range words.Languages() {
		w := roomy(t, mitred())
		w.speak(language)
		w.win.Resize(commonScreen)
		c := w.card(t, room.Rings)
		says := w.roomClears(*c.room)
		require.Len(t, says, 1)
		assert.Contains(t, w.roomNumbers(*c.room), says[0])
		c.MouseIn(nil)
		assert.Contains(t, w.room.detail.Text, says[0])
		for _, c := range w.room.all {
			for _, l := range find[*widget.Label](c) {
				if l.Wrapping == fyne.TextWrapWord {
					assert.LessOrEqual(t, placeOf(l).top+l.MinSize().Height, placeOf(c).foot, "%s: %s", language, l.Text)
				}
			}
		}
	}
}

func TestHowMuchAnAnswerMendsIsSaid(t *testing.T) {
	w := opened(t, mitred())
	for says, r := range map[string]detent.Room{
		"Clears 2 of 5 findings.":  {Wrong: 5, Clears: 2},
		"Clears all findings (5).": {Wrong: 5, Clears: 5},
		"Clears no finding.":       {Wrong: 1},
	} {
		assert.Equal(t, []string{says}, w.roomClears(r))
	}
	assert.Empty(t, w.roomClears(detent.Room{}), "where nothing is wrong there is nothing to clear")
}
