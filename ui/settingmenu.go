package ui

import "fyne.io/fyne/v2"

// settingMenu holds what is done on the setting-up page.
func (w *Window) settingMenu() *fyne.MenuItem {
	t := w.words.Text
	on := func(tab int, do func()) func() {
		return func() {
			w.showPage(settingPage)
			w.setting.tabs.SelectIndex(tab)
			do()
		}
	}
	m := fyne.NewMenuItem(t("page.setting"), nil)
	m.ChildMenu = fyne.NewMenu("",
		w.command(t("setting.give"), "", 0, on(toolTab, w.giveTool)),
		w.command(t("setting.takeaway"), "", 0, w.takeTool),
		w.command(t("setting.best"), "", 0, on(toolTab, func() { w.setting.tool.fenceToBest() })),
		w.command(t("setting.marks.type"), fyne.KeyM, ctrl, on(toolTab, func() { w.setting.tool.typeMark() })),
		w.command(t("setting.take"), "", 0, on(toolTab, func() { w.setting.tool.takeAsFound() })),
		fyne.NewMenuItemSeparator(),
		w.command(t("reading.type"), fyne.KeyR, ctrl, on(proofTab, func() { w.setting.proof.form.begin() })),
		w.command(t("repair.take"), "", 0, on(proofTab, func() { w.setting.proof.repairs.takePattern() })),
		w.command(t("setting.print"), fyne.KeyP, ctrl|shift, w.askProof),
	)
	return m
}
