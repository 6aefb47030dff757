package ui

import (
	"os"
	"path/filepath"
	"time"

	"fyne.io/fyne/v2"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/ui/diskfile"
	"stopwright/ui/recent"
	"stopwright/ui/recovery"
	"stopwright/ui/store"
)

// filing is what the window knows of files beside what is in its store.
type filing struct {
	file    diskfile.File // the plan's, as it was last read or written
	gone    bool          // that it has gone was said
	recent  *recent.List
	missing map[string]bool // recent files that are not there
	folder  string          // of recovery copies; "": none are kept
	keeper  *recovery.Keeper
	clock   recovery.Clock
	behind  func(work, then func()) // does work that may take long, then the rest where the window may be touched
}

// newFiling keeps nothing beyond the run of the program.
func newFiling() filing {
	return filing{
		recent: recent.Open(""),
		keeper: recovery.NewKeeper("", recovery.Clock{}, nil, nil),
		clock: recovery.Clock{Now: time.Now, After: func(d time.Duration, f func()) func() {
			t := time.AfterFunc(d, func() { fyne.Do(f) })
			return func() { t.Stop() }
		}},
		behind: func(work, then func()) {
			go func() {
				work()
				fyne.Do(then)
			}()
		},
	}
}

// OwnFolder returns where the program keeps files of its own for the user, ""
// if the system does not say. It need not be there. A folder that cleaning
// programs may empty, as one for caches, would be no place for recovery copies.
func OwnFolder() string {
	settings, err := os.UserConfigDir()
	if err != nil {
		return ""
	}
	return filepath.Join(settings, "stopwright")
}

// KeepIn makes the window remember recent files, and copies of what is not
// saved, in a folder. Called once, before the window is shown; "" keeps nothing,
// and says so.
func (w *Window) KeepIn(folder string) {
	if folder == "" {
		w.say(w.words.Text("recover.nofolder"))
		return
	}
	f := &w.filing
	f.recent = recent.Open(filepath.Join(folder, "recent.json"))
	f.folder = filepath.Join(folder, "recovery")
	f.keeper = recovery.NewKeeper(f.folder, f.clock, w.toKeep, func(err error) {
		fyne.Do(func() { w.say(w.words.Text("recover.none", words.Args{"Reason": err})) })
	})
	w.store.OnChange(w.keep)
	w.showRecent()
}

// toKeep returns the plan for a recovery copy, and whether it is not saved.
func (w *Window) toKeep() (recovery.Copy, bool) {
	return recovery.Copy{Plan: w.store.Plan(), Path: w.store.Path(), Mark: w.filing.file.Mark}, w.store.Unsaved()
}

// keep sees to the recovery copy after a change.
func (w *Window) keep(c store.Change) {
	switch {
	case c&store.FileChanged == 0:
	case c&store.PlanChanged != 0 && c != store.Everything: // an edit: to look whether it is saved can wait
		w.filing.keeper.Edited()
	default:
		w.filing.keeper.Settled()
	}
}

// take makes p the plan, with its file, as one with nothing unsaved.
func (w *Window) take(p plan.Plan, f diskfile.File) {
	w.filing.file, w.filing.gone = f, false
	w.store.Load(p, f.Path)
	w.remember(f.Path)
	if f.ReadOnly {
		w.say(w.words.Text("file.readonly", words.Args{"File": filepath.Base(f.Path)}))
		return
	}
	w.say("")
}

// Ended is called when the program ends. If nobody was asked about changes that
// are not saved, as when the desktop ends all programs, they are kept for the
// next start.
func (w *Window) Ended() { w.filing.keeper.Flush() }
