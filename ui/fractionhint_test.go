package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
)

func TestAFractionOfAnInchWithoutItsMark(t *testing.T) {
	for text, c := range map[string]struct {
		is  bool
		why string
	}{
		"15/64":   {true, "a drill"},
		"1 3/16":  {true, "with whole inches"},
		"5/12":    {false, "no rule is divided so"},
		"300/2":   {false, "half of a length"},
		"15/64\"": {false, "it has its mark"},
		"1/4 in":  {false, "it has its unit"},
		"7.5":     {false, "no fraction"},
		"1/":      {false, "half typed"},
		"":        {false, "nothing"},
	} {
		assert.Equal(t, c.is, ruleFraction(text), c.why)
	}
}

// In millimetres a fraction is taken as it stands, and the field says how it
// would be one of an inch.
func TestAFieldTellsHowAFractionIsInInches(t *testing.T) {
	w := opened(t, withStops(0))
	object := w.fieldObject(t, "seat.diameter")
	e := w.field(t, "seat.diameter")
	const hint = `In inches write `
	w.typeInto(e, "15/64")
	assert.Contains(t, texts(object), `= 0.234375 mm. `+hint+`15/64"`)
	w.press(fyne.KeyEscape)
	w.focus(w.stops.add)
	w.typeInto(e, "3/64")
	assert.Contains(t, texts(object), hint+`3/64"`, "of one that is refused as well")
	w.press(fyne.KeyEscape)
	w.focus(w.stops.add)
	w.typeInto(e, `15/64"`)
	assert.Contains(t, texts(object), "5.953125 mm")
	assert.NotContains(t, texts(object), hint)
	w.press(fyne.KeyEscape)
	w.setUnits(inFractions)
	w.typeInto(e, "15/64")
	assert.NotContains(t, texts(object), hint, "inches are meant anyway")
}
