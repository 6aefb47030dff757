package ui

import (
	"slices"

	"fyne.io/fyne/v2"
)

// plateKey is what some keys do while the plate has the focus. The plate obeys
// the table below and the list of keys shows it.
type plateKey struct {
	does  string         // key of its words
	keys  []fyne.KeyName // or
	runes []rune
	do    func(v *plateView, i int) // i: which of the keys
}

// way returns -1 for the first of two keys and 1 for the second.
func way(i int) int { return 2*i - 1 }

var plateKeys = []plateKey{
	{does: "keys.plate.choose", keys: []fyne.KeyName{fyne.KeyUp, fyne.KeyDown}, do: func(v *plateView, i int) {
		stops, lead := len(v.w.store.Plan().Stops), v.w.store.Selection().Lead
		v.w.store.SelectStop(min(max(lead+way(i), 0), stops-1))
	}},
	{does: "keys.plate.move", keys: []fyne.KeyName{fyne.KeyLeft, fyne.KeyRight}, do: func(v *plateView, i int) {
		v.w.nudge(float64(way(i)))
	}},
	{does: "keys.plate.remove", keys: []fyne.KeyName{fyne.KeyDelete, fyne.KeyBackspace}, do: func(v *plateView, _ int) {
		v.w.removeStops(v.w.store.Selection().Stops...)
	}},
	{does: "keys.plate.none", keys: []fyne.KeyName{fyne.KeyEscape}, do: func(v *plateView, _ int) {
		v.w.store.SelectStop(-1)
	}},
	{does: "keys.plate.next", keys: []fyne.KeyName{fyne.KeyPageUp, fyne.KeyPageDown}, do: func(v *plateView, i int) {
		v.w.turnToNext(way(i))
	}},
	{does: "keys.plate.turn", runes: []rune{',', '.'}, do: func(v *plateView, i int) {
		v.w.turnBy(float64(way(i)))
	}},
	{does: "keys.plate.home", keys: []fyne.KeyName{fyne.KeyHome}, do: func(v *plateView, _ int) {
		v.w.store.SetTurn(0)
	}},
	{does: "keys.plate.zoom", runes: []rune{'-', '+'}, do: func(v *plateView, i int) {
		const step = 1.25
		k := step
		if way(i) < 0 {
			k = 1 / step
		}
		v.zoomBy(k, fyne.NewPos(v.Size().Width/2, v.Size().Height/2))
	}},
	{does: "keys.plate.fit", runes: []rune{'0'}, do: func(v *plateView, _ int) { v.fit() }},
}

// TypedKey does what the key does on the plate.
func (v *plateView) TypedKey(k *fyne.KeyEvent) {
	for _, p := range plateKeys {
		if i := slices.Index(p.keys, k.Name); i >= 0 {
			p.do(v, i)
		}
	}
}

// TypedRune does what the character does on the plate.
func (v *plateView) TypedRune(r rune) {
	for _, p := range plateKeys {
		if i := slices.Index(p.runes, r); i >= 0 {
			p.do(v, i)
		}
	}
}
