package ui

import (
	"stopwright/assets/words"
	"stopwright/ui/units"
)

// The settings the toolkit keeps between runs, by name. They are the window's,
// not the plan's: losing them loses no work.
const (
	lengthsSetting = "lengths"
	anglesSetting  = "angles"
	lookSetting    = "look"
	guideSetting   = "guide.seen"
	plainSetting   = "explanations.off"
)

// recall brings back the settings of the last run.
func (w *Window) recall() {
	kept := w.app.Preferences()
	w.showIn(units.Named(kept.String(lengthsSetting), kept.String(anglesSetting)))
	if l := lookNamed(kept.String(lookSetting)); l != w.theme.look {
		w.setLook(l)
	}
	w.parts.explain.on = !kept.Bool(plainSetting)
	w.speak(kept.String(languageSetting))
	w.win.SetMainMenu(w.mainMenu())
}

// chooseLook changes the look of the window, and keeps it for the next run.
func (w *Window) chooseLook(l Look) {
	w.setLook(l)
	w.app.Preferences().SetString(lookSetting, l.String())
	w.win.SetMainMenu(w.mainMenu())
}

// setUnits shows every number of the window in another style, and keeps it for
// the next run. What is being typed is handed in first, as it was meant.
func (w *Window) setUnits(s units.Style) {
	at := w.win.Canvas().Focused()
	w.win.Canvas().Unfocus()
	w.showIn(s)
	if at != nil {
		w.focus(at)
	}
	w.say("")
	w.win.SetMainMenu(w.mainMenu())
	kept := w.app.Preferences()
	lengths, angles := s.Names()
	kept.SetString(lengthsSetting, lengths)
	kept.SetString(anglesSetting, angles)
}

// showIn shows every number of the window in a style.
func (w *Window) showIn(s units.Style) {
	v := w.store.View()
	v.Units = s
	w.store.SetView(v)
	w.parts.refresh()
	w.findings.refresh()
}

// units returns how numbers are shown.
func (w *Window) units() units.Style { return w.store.View().Units }

// windowWords returns the words of the window, which writes numbers as the view
// has it.
func (w *Window) windowWords(language string) *words.Catalogue {
	c := inWords(language)
	c.Length = func(mm float64) string { return c.Decimal(w.units().Length(mm)) }
	c.Angle = func(deg float64) string { return c.Decimal(w.units().Angle(deg)) }
	return c
}

// sheetWords returns the words of charts and drawings: millimetres and decimal
// degrees, with a true minus sign and the language's decimal mark. What other
// programs read, tables for a spreadsheet and places in drawings, has a point.
func sheetWords(language string) *words.Catalogue {
	c := inWords(language)
	c.Length = func(mm float64) string { return c.Decimal(units.Style{}.Length(mm)) }
	c.Angle = func(deg float64) string { return c.Decimal(units.Style{}.Angle(deg)) }
	return c
}
