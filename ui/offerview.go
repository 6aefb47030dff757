package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent/plan"
)

// offerView shows in a sheet what would become of stops on offer: how many are
// new, how many the plan has, and each of them in a list, what is wrong first.
type offerView struct {
	w       *Window
	offer   proposal
	rows    []offerRow
	summary *widget.Label
	why     *problem
	list    *sheetList
	object  fyne.CanvasObject
}

// offerRow is one line of the list.
type offerRow struct {
	text  string
	fault bool
}

const (
	offerWidth  = 500
	offerHeight = 220
)

func newOfferView(w *Window) *offerView {
	v := &offerView{w: w, summary: widget.NewLabel(""), why: newProblem(w)}
	v.summary.Wrapping = fyne.TextWrapWord
	v.list = newSheetList(
		func() int { return len(v.rows) },
		func() fyne.CanvasObject {
			text := widget.NewLabel("")
			text.Truncation = fyne.TextTruncateEllipsis
			sign := widget.NewIcon(theme.NewErrorThemedResource(theme.ErrorIcon()))
			return container.NewBorder(nil, nil, sign, nil, text)
		},
		func(i widget.ListItemID, o fyne.CanvasObject) {
			objects := o.(*fyne.Container).Objects
			objects[0].(*widget.Label).SetText(v.rows[i].text)
			if objects[1].Hide(); v.rows[i].fault {
				objects[1].Show()
			}
		},
	)
	v.list.HideSeparators = true
	v.list.OnSelected = func(i widget.ListItemID) { v.list.Unselect(i) } // there is nothing to choose
	framed := container.NewGridWrap(fyne.NewSize(offerWidth, offerHeight), v.list)
	v.object = container.NewVBox(v.summary, v.why.object, framed)
	return v
}

// listFault is a part of a list that cannot be used.
type listFault struct {
	line      int
	text, why string
}

// show shows stops on offer, and what cannot be: two rows each.
func (v *offerView) show(stops []plan.Stop, faults []listFault) {
	v.offer = v.w.propose(stops)
	v.rows = nil
	for _, f := range faults {
		where := v.w.words.Text("offer.fault", words.Args{"Line": f.line, "Text": f.text})
		v.rows = append(v.rows, offerRow{where, true}, offerRow{"    " + f.why, false})
	}
	for _, s := range v.offer.New {
		v.rows = append(v.rows, offerRow{v.name(s), false})
	}
	for _, s := range v.offer.There {
		v.rows = append(v.rows, offerRow{v.w.words.Text("offer.row.there", words.Args{"Stop": v.name(s)}), false})
	}
	v.why.tell(v.offer.err)
	v.summary.SetText(v.sum(len(faults)))
	v.list.Refresh()
	v.list.ScrollToTop()
}

// sum says how many stops become what. What there is none of is left out.
func (v *offerView) sum(faults int) string {
	parts := []string{v.w.words.Text("offer.new", words.Args{"N": len(v.offer.New)})}
	for _, p := range []struct {
		key string
		n   int
	}{
		{"offer.there", len(v.offer.There)},
		{"offer.repeated", v.offer.Repeated},
		{"offer.outside", v.offer.Outside},
		{"offer.faults", faults},
	} {
		if p.n > 0 {
			parts = append(parts, v.w.words.Text(p.key, words.Args{"N": p.n}))
		}
	}
	return strings.Join(parts, " ")
}

// name writes a stop as one line: ±22.5°, 8 sides.
func (v *offerView) name(s plan.Stop) string {
	text := v.w.words.Angle(s.Angle)
	if s.BothSides && s.Angle != 0 {
		text = "±" + v.w.words.Angle(max(s.Angle, -s.Angle))
	}
	if s.Label != "" {
		text += ", " + s.Label
	}
	return text
}

// able reports whether there is something to add, and it may be.
func (v *offerView) able() bool { return len(v.offer.New) > 0 && v.offer.err == nil }

// add adds what is new.
func (v *offerView) add() {
	v.w.addProposed(v.offer)
	v.w.focus(v.w.stops.add)
}
