package ui

import (
	"cmp"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/export"
	"stopwright/ui/crash"
	"stopwright/ui/diskfile"
	"stopwright/ui/recovery"
)

// OfferRecovery looks for plans that a program did not save before it ended,
// and asks what to do with them. It says nothing if there are none.
func (w *Window) OfferRecovery() { w.findCopies(func() {}) }

// askRecovery does the same for whoever asks for it, once changes are saved or
// given up: what is recovered takes the place of the plan.
func (w *Window) askRecovery() {
	w.unlessUnsaved(func() {
		w.findCopies(func() { w.say(w.words.Text("recover.nothing")) })
	})
}

func (w *Window) findCopies(none func()) {
	var found []*recovery.Found
	var faults []string
	var err error
	w.filing.behind(func() {
		found, err = recovery.Find(w.filing.folder)
		faults = crash.Find(w.filing.folder)
	}, func() {
		switch {
		case err != nil:
			w.say(w.inWords(err))
		case len(found) == 0 && len(faults) > 0:
			w.tellFaults(faults)
		case len(found) == 0:
			none()
		case w.win.Canvas().Overlays().Top() != nil: // one question at a time
			release(found)
		default:
			w.offer(found, faults...)
			crash.Told(faults)
		}
	})
}

// release leaves copies for another time.
func release(found []*recovery.Found) {
	for _, f := range found {
		f.Release()
	}
}

// offer asks what to do with the copies found, one at a time, and says which
// reports of faults there are.
func (w *Window) offer(found []*recovery.Found, faults ...string) {
	t := w.words.Text
	chosen := 0
	list := widget.NewRadioGroup(nil, nil)
	for i, f := range found {
		list.Options = append(list.Options, w.copyText(i+1, f))
	}
	list.Required = true
	list.SetSelected(list.Options[0])
	file := widget.NewLabel("")
	file.Wrapping = fyne.TextWrapBreak
	reason := newProblem(w)
	show := func() {
		file.SetText(found[chosen].Path)
		file.Hidden = file.Text == ""
		reason.object.Hide()
		if err := found[chosen].Err; err != nil {
			reason.label.SetText(t("recover.cannot", words.Args{"Reason": export.Reason(err)}))
			reason.object.Show()
		}
	}
	list.OnChanged = func(option string) {
		for i, o := range list.Options {
			if o == option {
				chosen = i
			}
		}
		show()
	}
	show()
	text := widget.NewLabel(t("recover.text"))
	text.Wrapping = fyne.TextWrapWord
	rows := container.NewScroll(list)
	rows.SetMinSize(fyne.NewSize(recoverWidth, min(list.MinSize().Height, recoverHeight)))

	s := w.newSheet(t("recover.title"), container.NewVBox(w.aboutFaults(faults), text, rows, file, reason.object),
		answer{text: t("recover.later"), then: func() { release(found) }},
		answer{text: t("recover.discard"), then: func() { w.discard(found, chosen) }},
		answer{
			text: t("recover.do"), main: true,
			able: func() bool { return found[chosen].Err == nil },
			then: func() { w.recover(found, chosen) },
		},
	)
	s.dialog.Show()
	w.focus(s.main)
}

// The list of copies, px: it scrolls beyond.
const (
	recoverWidth  = 560
	recoverHeight = 220
)

// copyText describes a copy in one line that no other copy has.
func (w *Window) copyText(n int, f *recovery.Found) string {
	t := w.words.Text
	title := cut(cmp.Or(f.Plan.Title, t("file.new")), maxTitle)
	args := words.Args{
		"N": n, "Title": title, "File": cut(filepath.Base(f.Path), maxTitle), "Time": f.Time.Local().Format("2006-01-02 15:04"),
	}
	switch {
	case f.Err != nil:
		return t("recover.damaged", args)
	case f.Path == "":
		return t("recover.unnamed", args)
	}
	return t("recover.item", args)
}

// maxTitle is how much of a title or a name the list shows, in letters.
const maxTitle = 28

// cut makes a text one line of so many letters at most.
func cut(text string, most int) string {
	letters := []rune(strings.Join(strings.Fields(text), " "))
	if len(letters) <= most {
		return string(letters)
	}
	return string(letters[:most-1]) + "…"
}

// discard gives up one of the copies and asks about the others.
func (w *Window) discard(found []*recovery.Found, i int) {
	err := found[i].Discard()
	rest := append(found[:i:i], found[i+1:]...)
	switch {
	case err != nil:
		release(rest)
		w.tellError(err)
	case len(rest) > 0:
		w.offer(rest)
	}
}

// recover opens one of the copies as a plan that is not saved, and leaves the
// others.
func (w *Window) recover(found []*recovery.Found, i int) {
	f := found[i]
	release(append(found[:i:i], found[i+1:]...))
	w.take(f.Plan, diskfile.File{Path: f.Path, Mark: f.Mark, ReadOnly: diskfile.ReadOnly(f.Path)})
	w.store.MarkUnsaved()
	w.filing.keeper.Adopt(f)
	if len(found) > 1 {
		w.say(w.words.Text("recover.more"))
		return
	}
	w.say(w.words.Text("recover.done"))
}
