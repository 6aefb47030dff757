package ui

import (
	"path/filepath"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
)

// onDisk is what has become of the plan's file.
type onDisk struct {
	state diskfile.State
	mark  diskfile.Mark // of the file now
	// theirs is the plan that a changed file holds now, unless err says why it
	// cannot be read.
	theirs plan.Plan
	file   diskfile.File
	err    error
}

// lookOnDisk finds out what has become of a file. One that cannot be looked at
// just now counts as the same: saving will say why.
func lookOnDisk(f diskfile.File, trust diskfile.Trust) onDisk {
	var d onDisk
	d.state, d.mark, _ = f.Mark.Compare(f.Path, trust)
	if d.state == diskfile.Changed {
		d.theirs, d.file, d.err = diskfile.Read(f.Path)
	}
	return d
}

// lookAtDisk looks, when the window gains the keys, whether another program has
// changed its files.
func (w *Window) lookAtDisk() {
	w.lookAtRecent()
	f := w.filing.file
	var d onDisk
	w.filing.behind(func() { d = lookOnDisk(f, diskfile.TrustTime) }, func() {
		if w.filing.file == f { // not saved or opened anew meanwhile
			w.noticeOnDisk(d)
		}
	})
}

// noticeOnDisk says or asks what is to be known of the plan's file.
func (w *Window) noticeOnDisk(d onDisk) {
	f := &w.filing
	switch d.state {
	case diskfile.Same:
		f.file.Mark, f.gone = d.mark, false
	case diskfile.Gone:
		if !f.gone {
			f.gone = true
			w.store.MarkUnsaved()
			w.say(w.words.Text("disk.gone", words.Args{"File": f.file.Path}))
		}
	case diskfile.Changed:
		if w.win.Canvas().Overlays().Top() != nil {
			return // one question at a time: this one comes back
		}
		w.askTheirs(d, answer{text: w.words.Text("disk.mine"), then: func() { w.keepMine(d) }})
	}
}

// unlessChanged goes on at once where the plan's file is as it was or has gone,
// and else asks before another program's changes are written over.
func (w *Window) unlessChanged(then func()) {
	d := lookOnDisk(w.filing.file, diskfile.ReadAll)
	if d.state != diskfile.Changed || d.holds(w.store.Plan()) {
		then()
		return
	}
	w.askTheirs(d,
		answer{text: w.words.Text("ask.cancel")},
		answer{text: w.words.Text("disk.replace"), then: then},
	)
}

// holds reports whether the changed file holds just this plan.
func (d onDisk) holds(p plan.Plan) bool { return d.err == nil && plan.Equal(d.theirs, p) }

// askTheirs asks about a file that another program has changed: the answers
// given, or to load theirs, which Enter does only where nothing of one's own
// stands against it.
func (w *Window) askTheirs(d onDisk, answers ...answer) {
	t := w.words.Text
	if d.holds(w.store.Plan()) {
		w.keepTheirs(d)
		return
	}
	args := words.Args{"File": filepath.Base(w.filing.file.Path)}
	text := t("disk.changed.text", args)
	unsaved := w.store.Unsaved()
	if unsaved {
		text = t("disk.changed.both", args)
	}
	if d.err == nil {
		answers = append(answers, answer{text: t("disk.theirs"), then: func() { w.keepTheirs(d) }, main: !unsaved})
	} else {
		text += "\n\n" + w.inWords(d.err)
	}
	if unsaved || d.err != nil {
		answers[0].main = true
	}
	w.ask(t("disk.changed"), text, answers...)
}

// keepMine keeps the plan as it is, now as one that its file does not hold.
func (w *Window) keepMine(d onDisk) {
	w.filing.file.Mark = d.mark
	w.store.MarkUnsaved()
}

// keepTheirs makes the plan what its file holds. It is an edit, so undo brings
// back one's own.
func (w *Window) keepTheirs(d onDisk) {
	if err := w.store.Replace(w.words.Text("disk.theirs"), d.theirs); err != nil {
		w.tellError(err)
		return
	}
	w.filing.file, w.filing.gone = d.file, false
	w.store.Saved(d.file.Path)
}
