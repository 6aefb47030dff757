package ui

import (
	"encoding/json"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"stopwright/assets/words"
)

// toolkitKeys begins the keys of what the toolkit itself says: the rest is what
// the toolkit calls the text.
const toolkitKeys = "toolkit."

// teachToolkit makes the toolkit's own menus, as a field's of Cut and Paste, say
// the words of a catalogue. The toolkit follows the system's language and no
// other, so they take the place of its words in that.
func teachToolkit(c *words.Catalogue) {
	texts := map[string]string{}
	for _, key := range c.Keys() {
		if name, ok := strings.CutPrefix(key, toolkitKeys); ok {
			texts[name] = c.Text(key)
		}
	}
	data, err := json.Marshal(texts)
	if err == nil {
		err = lang.AddTranslationsForLocale(data, lang.SystemLocale())
	}
	if err != nil {
		fyne.LogError("the toolkit keeps its own words", err)
	}
}
