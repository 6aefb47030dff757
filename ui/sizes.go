package ui

import (
	"cmp"
	"math"
	"slices"

	"fyne.io/fyne/v2"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
	"stopwright/ui/units"
)

// standardSize is a size that a tool or a piece of hardware is sold in.
type standardSize struct {
	mm   float64
	text string
}

// sizesOf lists, by field, the standard sizes of what the field measures.
var sizesOf = map[string]func(*Window) []standardSize{
	"seat.diameter":          (*Window).drillSizes,
	"seat.relief_diameter":   (*Window).drillSizes,
	"catch.ball_diameter":    (*Window).ballSizes,
	"turntable.pivot_bore":   (*Window).boltSizes,
	"collar.screws.diameter": (*Window).screwSizes,
	"features[].diameter":    (*Window).screwSizes,

	"making.knock_out":             (*Window).drillSizes,
	"making.screws.pilot":          (*Window).pilotSizes,
	"making.end_stops.diameter":    (*Window).drillSizes,
	"making.clamp.diameter":        (*Window).screwSizes,
	"making.fence.width":           (*Window).screwSizes,
	"making.registration.diameter": (*Window).drillSizes,
	"making.carrier.screw":         (*Window).screwSizes,
	"making.carrier.pilot":         (*Window).pilotSizes,
}

// sizesFor returns what shows the standard sizes of what a field measures, or
// the materials it may name; nil where there are none.
func (w *Window) sizesFor(f plan.Field) func(*valueEntry) {
	if namesMaterial(f) {
		return w.materialsFor(f)
	}
	list := sizesOf[f.Generic]
	if list == nil {
		return nil
	}
	return func(e *valueEntry) {
		e.commit()
		w.popUp(e, w.sizeItems(e, near(list(w), w.fieldAt(f).Number), w.fieldAt(f).Number))
	}
}

// sizeItems makes a menu of sizes, with a tick at the present one. Choosing one
// types it into the field.
func (w *Window) sizeItems(e *valueEntry, sizes []standardSize, now float64) []*fyne.MenuItem {
	var items []*fyne.MenuItem
	for _, s := range sizes {
		item := fyne.NewMenuItem(s.text, func() {
			e.SetText(measure.Trim(s.mm, exactDecimals) + " " + measure.Millimetre.Symbol())
			e.commit()
			w.focus(e)
		})
		item.Checked = math.Abs(s.mm-now) < sameSize
		items = append(items, item)
	}
	return items
}

const (
	// exactDecimals write any standard size in mm in full: a 64th of an inch has
	// six decimals.
	exactDecimals = 6
	// sameSize is how near (mm) a value is to a size it is taken for: far less
	// than between any two.
	sameSize = 1e-4
	// eachWay is how many sizes are offered below and above the present one.
	eachWay = 7
)

// near returns the sizes about a value, the smallest first.
func near(sizes []standardSize, mm float64) []standardSize {
	slices.SortStableFunc(sizes, func(a, b standardSize) int { return cmp.Compare(a.mm, b.mm) })
	at, _ := slices.BinarySearchFunc(sizes, mm, func(s standardSize, mm float64) int { return cmp.Compare(s.mm, mm) })
	from := max(min(at-eachWay, len(sizes)-2*eachWay), 0)
	return sizes[from:min(from+2*eachWay+1, len(sizes))]
}

// drillSizes lists the drills of the system of units that is shown.
func (w *Window) drillSizes() []standardSize {
	system := stock.Metric
	if w.units().Lengths != units.Millimetres {
		system = stock.Fraction
	}
	var out []standardSize
	for _, d := range stock.Drills() {
		if d.System == system {
			out = append(out, w.sized(d.MM, d.System, d.Designation))
		}
	}
	return out
}

// ballSizes lists the balls of both systems of units: what measures nearly 4.8
// mm is one of 3/16 inch.
func (w *Window) ballSizes() []standardSize {
	var out []standardSize
	for _, b := range stock.Balls() {
		out = append(out, w.sized(b.MM, b.System, b.Designation))
	}
	return out
}

// sized returns a size with the name it is sold under.
func (w *Window) sized(mm float64, system stock.System, designation string) standardSize {
	sold := measure.FormatLength(mm, measure.Millimetre, 1)
	if system == stock.Fraction {
		sold = designation + `"`
	}
	shown := w.units().LengthLimit(mm)
	if system == stock.Metric && w.units().Lengths == units.Millimetres {
		return standardSize{mm, sold}
	}
	return standardSize{mm, w.words.Text("sizes.sold", words.Args{"Sold": sold, "Size": shown})}
}

// screwSizes lists the clearance holes of machine screws.
func (w *Window) screwSizes() []standardSize {
	var out []standardSize
	for _, c := range stock.Clearances() {
		for _, fit := range []struct {
			fit stock.Fit
			key string
		}{{stock.Fine, "sizes.fine"}, {stock.Medium, "sizes.medium"}, {stock.Coarse, "sizes.coarse"}} {
			out = append(out, w.hole(c.Hole(fit.fit), c.Thread, fit.key))
		}
	}
	return out
}

// pilotSizes lists the lead holes of wood screws.
func (w *Window) pilotSizes() []standardSize {
	var out []standardSize
	for _, s := range stock.WoodScrews() {
		out = append(out,
			w.hole(s.LeadSoft.Typical, s.Designation(), "sizes.soft"),
			w.hole(s.LeadHard.Typical, s.Designation(), "sizes.hard"),
		)
	}
	return out
}

// boltSizes lists bores for a bolt to turn in: as wide as the bolt itself, for
// one that is reamed, and the closest clearance holes.
func (w *Window) boltSizes() []standardSize {
	var out []standardSize
	for _, c := range stock.Clearances() {
		out = append(out, w.hole(c.Nominal, c.Thread, "sizes.reamed"), w.hole(c.Fine, c.Thread, "sizes.fine"))
	}
	return out
}

func (w *Window) hole(mm float64, thread, fit string) standardSize {
	return standardSize{mm, w.words.Text("sizes.hole", words.Args{
		"Size": w.units().LengthLimit(mm), "Screw": thread, "Fit": w.words.Text(fit),
	})}
}
