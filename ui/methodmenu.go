package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// methodButton makes a button that offers ways to place holes, with what each is
// commonly reckoned with.
func (w *Window) methodButton() *widget.Button {
	b := widget.NewButtonWithIcon("", theme.MenuDropDownIcon(), nil)
	b.IconPlacement = widget.ButtonIconTrailingText
	b.OnTapped = func() { w.popUp(b, w.methodItems()) }
	return b
}

// methodItems makes a menu of ways to place holes.
func (w *Window) methodItems() []*fyne.MenuItem {
	t := w.words.Text
	said := fyne.NewMenuItem(t("truth.method.said"), nil)
	said.Disabled = true
	items := []*fyne.MenuItem{said, fyne.NewMenuItemSeparator()}
	for _, m := range stock.Methods() {
		name, spread := t("choice."+m.ID), m.Spread
		key := "truth.method.item"
		if spread.Low == spread.High {
			key = "truth.method.same"
		}
		item := fyne.NewMenuItem(t(key, args{
			"Method": name, "Low": words.MM(spread.Low), "High": words.MM(spread.High), "Typical": words.MM(spread.Typical),
		}), func() {
			w.report(w.store.Edit(t("edit.method", args{"Method": name}), func(p *plan.Plan) {
				p.Shop.Method, p.Shop.SeatError, p.Shop.CatchError = m.ID, spread.Typical, spread.Typical
			}))
		})
		item.Checked = w.store.Plan().Shop.Method == m.ID
		items = append(items, item)
	}
	return items
}
