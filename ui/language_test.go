package ui

import (
	"testing"

	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// The window speaks another language at once, and what the maker decided, can
// undo and has selected stays.
func TestTheWindowSpeaksGerman(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 24))
	w.change(t)
	w.store.SelectStop(1)
	w.choose(t, "menu.view", "page.click")
	was := w.store.Plan()

	w.chooseLanguage("de")
	assert.Equal(t, "Datei", w.win.MainMenu().Items[0].Label)
	assert.Equal(t, clickPage, w.page())
	assert.Equal(t, "Rasten", w.pages.Selected().Text)
	assert.True(t, plan.Equal(was, w.store.Plan()))
	assert.Equal(t, 1, w.store.Selection().Lead)
	_, canUndo := w.store.CanUndo()
	assert.True(t, canUndo)
	assert.Contains(t, w.findings.title.Text, "zu beheben", "22.5 and 24 run into each other")
	headings := []string{}
	for _, l := range find[*widget.Label](w.stops.object) {
		headings = append(headings, l.Text)
	}
	assert.Contains(t, headings, "Stellungen")
	assert.Equal(t, "de", w.app.Preferences().String(languageSetting), "kept for the next run")

	// Edits reach the new views, and fields read and write a decimal comma.
	require.NoError(t, w.addStops(plan.Stop{Angle: 67.5}))
	assert.Equal(t, "67,5°", w.words.Angle(67.5))
	assert.Equal(t, "4,5", w.fieldText(w.fields["seat.diameter"]))
	f := w.fields["seat.diameter"]
	apply, err := w.readField(f, "4,7")
	require.NoError(t, err)
	require.NoError(t, apply())
	assert.InDelta(t, 4.7, w.store.Plan().Seat.Diameter, 1e-12)

	w.chooseLanguage("en")
	assert.Equal(t, "File", w.win.MainMenu().Items[0].Label)
	assert.Equal(t, "67.5°", w.words.Angle(67.5))
}

func TestAnUnknownLanguageIsEnglish(t *testing.T) {
	w := opened(t, withStops(0))
	w.speak("xx")
	assert.Equal(t, "File", w.win.MainMenu().Items[0].Label)
}

// What is typed and not understood is explained in the window's language.
func TestWhatIsMisreadIsExplainedInWords(t *testing.T) {
	w := opened(t, withStops(0))
	for _, language := range []string{"en", "de"} {
		w.speak(language)
		for unit, texts := range map[string][]string{
			"mm":      {"", "much", "1e3", "3 furlongs", "1/0", "1,234.5"},
			"degrees": {"", "much", "30'", "12°75'", "12 x"},
			"N":       {"", "much", "1e3"},
		} {
			for _, text := range texts {
				_, err := w.readField(plan.Field{Path: "seat.diameter", Unit: unit}, text)
				require.Error(t, err, "%s %q", unit, text)
				said := w.inWords(err)
				assert.NotContains(t, said, "[", "%s %q", unit, text)
				assert.NotContains(t, said, "{{", "%s %q", unit, text)
				assert.Contains(t, said, text)
				if language == "de" {
					assert.NotContains(t, said, "write", "%s %q", unit, text)
				}
			}
		}
	}
}
