package ui

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/proving"
)

// A reading for one stop that is nearer another is asked about once.
func TestAReadingOfAnotherStopIsAskedAbout(t *testing.T) {
	w := setUp(t, withStops(-45, 0, 22.5, 45), proofTab)
	f := w.setting.proof.form
	kept := func() int { return len(w.store.Plan().Readings) }

	w.typeReading(t, 0, proving.Typed, 0, 0, "0.3")
	assert.Equal(t, 1, kept(), "as far off as a plate may be")
	w.typeReading(t, 0, proving.Typed, 0, 0, "22.4")
	assert.Equal(t, 1, kept())
	assert.Equal(t, "22.4° is nearer stop 22.5° than 0°. Choose that stop, or keep it once more.", f.wrong.label.Text)
	assert.Equal(t, "22.4", f.values[0].Text, "what was typed is still there")
	f.add()
	assert.Equal(t, 2, kept(), "the maker knows")
	assert.False(t, f.wrong.object.Visible())

	w.typeReading(t, -45, proving.Typed, 0, 0, "45.1")
	assert.Equal(t, 2, kept(), "a sign forgotten")
	w.typeReading(t, 45, proving.Typed, 0, 0, "45.1")
	assert.Equal(t, 3, kept(), "the other stop chosen")
	assert.False(t, f.wrong.object.Visible())
}
