package ui

import (
	"context"
	"time"

	"fyne.io/fyne/v2"

	"stopwright/detent"
	"stopwright/detent/plate"
)

// studyWait is how long the plan must stay as it is before its study begins: a
// seat being dragged changes it sixty times a second.
const studyWait = 150 * time.Millisecond

// studies carries out what takes time behind the window: one study at once, of
// the plan as it is now.
type studies struct {
	of     *plate.Plate // being studied; nil: none
	cancel context.CancelFunc

	wait time.Duration
	run  func(work func()) // behind the window
	back func(done func()) // on the window's own goroutine
}

// behind returns studies that run on goroutines of their own.
func behind() studies {
	return studies{wait: studyWait, run: func(work func()) { go work() }, back: fyne.Do}
}

// atOnce returns studies that are done by the time they are asked for.
func atOnce() studies {
	here := func(work func()) { work() }
	return studies{run: here, back: here}
}

// study has the plan studied behind the window, unless it has been or is being.
// Pages that show a study call it when they are refreshed, and are refreshed
// again when it is done.
func (w *Window) study() {
	r := w.store.Report()
	if _, done := w.store.Studied(); done || w.studies.of == r.Plate {
		return
	}
	w.studies.stop()
	ctx, cancel := context.WithCancel(context.Background())
	w.studies.of, w.studies.cancel = r.Plate, cancel
	wait, back := w.studies.wait, w.studies.back
	w.studies.run(func() {
		select {
		case <-ctx.Done():
			return
		case <-time.After(wait):
		}
		studied, err := detent.Study(ctx, r)
		if err != nil {
			return // stopped
		}
		back(func() {
			if w.studies.of == r.Plate {
				w.studies.stop()
				w.store.SetStudied(studied)
			}
		})
	})
}

// stop gives up the study under way, if there is one.
func (s *studies) stop() {
	if s.cancel != nil {
		s.cancel()
	}
	s.of, s.cancel = nil, nil
}
