package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/lang"

	"stopwright/assets/words"
)

// languageSetting keeps the language the maker chose; empty is the system's.
const languageSetting = "language"

// systemLanguage returns the system's language if the window speaks it, else
// English.
func systemLanguage() string {
	system := lang.SystemLocale().LanguageString()
	for _, l := range words.Languages() {
		if system == l || strings.HasPrefix(system, l+"-") {
			return l
		}
	}
	return english
}

const english = "en"

// speak shows the window in a language; empty is the system's. The views are
// made anew over the same store: plan, undo and selection stay.
func (w *Window) speak(language string) {
	w.language = language
	if language == "" {
		language = systemLanguage()
	}
	teachToolkit(inWords(language))
	if language == w.words.Language {
		return
	}
	w.win.Canvas().Unfocus() // hands in what is being typed
	page, explains := w.pages.SelectedIndex(), w.parts.explain.on
	w.words, w.sheetWords = w.windowWords(language), sheetWords(language)
	w.build()
	w.pages.SelectIndex(page)
	w.parts.explain.on = explains
	w.parts.refresh()
	w.showTitle()
	w.win.SetMainMenu(w.mainMenu())
}

// chooseLanguage changes the language, and keeps it for the next run.
func (w *Window) chooseLanguage(language string) {
	w.app.Preferences().SetString(languageSetting, language)
	w.speak(language)
	w.win.SetMainMenu(w.mainMenu())
}

// languageMenu offers every language there is, each in its own words.
func (w *Window) languageMenu() *fyne.MenuItem {
	m := fyne.NewMenuItem(w.words.Text("menu.language"), nil)
	m.ChildMenu = fyne.NewMenu("")
	for _, l := range append([]string{""}, words.Languages()...) {
		name := w.words.Text("language.system")
		if l != "" {
			name = w.words.Text("language." + l)
		}
		item := fyne.NewMenuItem(name, func() { w.chooseLanguage(l) })
		item.Checked = w.language == l
		m.ChildMenu.Items = append(m.ChildMenu.Items, item)
	}
	return m
}

// decimal writes a number that has a decimal point as the window's language
// does. Fields read both.
func (w *Window) decimal(number string) string { return w.words.Decimal(number) }

// inWords returns the catalogue of a language that [words.Languages] names.
func inWords(language string) *words.Catalogue {
	c, err := words.In(language)
	if err != nil { // a setting from another version: it has a language this one has not
		return words.English()
	}
	return c
}
