package ui

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/stock"
)

// matching returns the items of a kind ("": all) that a text asks for: those
// whose name, kind or figure has each of its words, and if it is a size, after
// them the sizes nearest to it. Nothing asks for everything.
func (w *Window) matching(all []stockItem, kind, text string) []stockItem {
	var out, sized []stockItem
	asked := strings.Fields(strings.ToLower(text))
	for _, i := range all {
		switch {
		case kind != "" && i.kind != kind:
		case w.has(i, asked):
			out = append(out, i)
		case i.mm > 0:
			sized = append(sized, i)
		}
	}
	mm, ok := w.sizeAsked(text)
	if !ok {
		return out
	}
	off := func(i stockItem) float64 { return math.Abs(i.mm - mm) }
	slices.SortStableFunc(sized, func(a, b stockItem) int { return cmp.Compare(off(a), off(b)) })
	const most = 30 // sizes: beyond them nothing is near
	return append(out, sized[:min(len(sized), most)]...)
}

// has reports whether all words asked for are in an item.
func (w *Window) has(i stockItem, asked []string) bool {
	text := strings.ToLower(i.name + " " + w.words.Text("stock.kind."+i.kind) + " " + i.sold)
	for _, word := range asked {
		if !strings.Contains(text, word) {
			return false
		}
	}
	return true
}

// sizeAsked returns the diameter that a text asks for: a drill as it is called,
// as 3/16 or #12 are, else a length as the window reads them.
func (w *Window) sizeAsked(text string) (mm float64, ok bool) {
	text = strings.ToUpper(strings.Trim(strings.TrimSpace(text), `"`))
	for _, d := range stock.Drills() {
		if d.System != stock.Metric && d.Designation == text {
			return d.MM, true
		}
	}
	mm, err := w.units().ReadLength(strings.ToLower(text))
	return mm, err == nil && mm > 0
}

// hardlyOff is a difference (mm) that a reading of two decimals would show as none.
const hardlyOff = 0.005

// nearestDrills says which drill of each series is nearest to a size.
func (w *Window) nearestDrills(text string) string {
	mm, ok := w.sizeAsked(text)
	if !ok {
		return ""
	}
	var all []string
	for _, system := range []stock.System{stock.Metric, stock.Fraction, stock.Number, stock.Letter} {
		d, found := stock.NearestDrill(mm, system)
		if !found {
			continue
		}
		key := "stock.nearest.off"
		switch off := math.Abs(d.MM - mm); {
		case off <= stock.SameSize:
			key = "stock.nearest.same"
		case off < hardlyOff:
			key = "stock.nearest.hardly"
		}
		sign := "+"
		if d.MM < mm {
			sign = "−"
		}
		all = append(all, w.words.Text(key, words.Args{
			"Drill": w.soldAs(d.System, d.Designation), "Off": sign + w.words.Length(math.Abs(d.MM-mm)),
		}))
	}
	return w.words.Text("stock.nearest", words.Args{"Size": w.bothSizes(mm), "Drills": strings.Join(all, ", ")})
}
