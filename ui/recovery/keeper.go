package recovery

import (
	"sync"
	"time"
)

// Delay is how long after an edit its copy is written: soon enough that the
// copy is whole within five seconds on a slow disk too, late enough that many
// edits make one copy.
const Delay = 3 * time.Second

// Clock tells the time and rings once.
type Clock struct {
	Now func() time.Time
	// After calls f once, that much later, from where the plan may be read. It
	// returns what keeps it from doing so.
	After func(delay time.Duration, f func()) (cancel func())
}

// Keeper keeps the copy of one program's plan. Files are written by goroutines
// of its own. Nothing happens while nothing is edited.
type Keeper struct {
	folder  string
	clock   Clock
	current func() (Copy, bool)
	failed  func(error)
	running sync.WaitGroup

	calls  sync.Mutex // guards what is asked of the keeper:
	cancel func()     // of the alarm; nil: it is not set
	closed bool
	asked  int // jobs handed out so far

	files sync.Mutex // guards what is done about it:
	done  int        // the last job done: an older one is none any more
	slot  *slot      // nil: no copy is kept
	told  bool       // that no copy can be kept
}

// NewKeeper makes a keeper of copies in a folder, which need not be there. One
// of the folder "" keeps nothing.
//
// current returns the plan as it is and whether it must be kept, that is,
// whether it is not saved; the copy's Time is the keeper's to fill in. It is
// called by the keeper's methods and from [Clock.After]. failed is told, from
// another goroutine, when no copy could be written; not again until one could.
func NewKeeper(folder string, clock Clock, current func() (Copy, bool), failed func(error)) *Keeper {
	return &Keeper{folder: folder, clock: clock, current: current, failed: failed, closed: folder == ""}
}

// Edited has a copy written within [Delay].
func (k *Keeper) Edited() {
	k.calls.Lock()
	defer k.calls.Unlock()
	k.setAlarm()
}

func (k *Keeper) setAlarm() {
	if k.cancel == nil && !k.closed {
		k.cancel = k.clock.After(Delay, k.ring)
	}
}

// Settled removes the copy if there is nothing to keep any more, since the plan
// was saved or given up.
func (k *Keeper) Settled() {
	k.calls.Lock()
	defer k.calls.Unlock()
	if k.closed {
		return
	}
	if _, unsaved := k.current(); unsaved {
		k.setAlarm()
		return
	}
	k.stop()
	k.behind(k.drop)
}

// Adopt goes on with a copy that was found, in place of the keeper's own: it
// stays until the plan recovered from it is saved or given up.
func (k *Keeper) Adopt(f *Found) {
	k.calls.Lock()
	defer k.calls.Unlock()
	if k.closed {
		f.Release()
		return
	}
	k.stop()
	k.asked++
	k.do(k.asked, func() error {
		defer func() { k.slot = f.slot }()
		return k.drop()
	})
}

// Flush writes or removes the copy now, and returns when that is done: the
// program is about to end, and nobody was asked.
func (k *Keeper) Flush() {
	k.calls.Lock()
	defer k.calls.Unlock()
	if k.closed {
		return
	}
	k.stop()
	job := k.drop
	if c, unsaved := k.current(); unsaved {
		job = k.write(c)
	}
	k.asked++
	k.do(k.asked, job)
	k.Wait()
}

// Close removes the copy and returns when that is done: the plan was saved or
// given up, and the program ends. The keeper does nothing after.
func (k *Keeper) Close() {
	k.calls.Lock()
	defer k.calls.Unlock()
	if k.closed {
		return
	}
	k.stop()
	k.closed = true
	k.asked++
	k.do(k.asked, k.drop)
	k.Wait()
}

// Wait returns when every file is written or removed that was to be.
func (k *Keeper) Wait() { k.running.Wait() }

// stop takes back the alarm.
func (k *Keeper) stop() {
	if k.cancel != nil {
		k.cancel()
		k.cancel = nil
	}
}

// ring is what the alarm does.
func (k *Keeper) ring() {
	k.calls.Lock()
	defer k.calls.Unlock()
	if k.cancel == nil {
		return // it was taken back too late
	}
	k.cancel = nil
	if c, unsaved := k.current(); unsaved {
		k.behind(k.write(c))
		return
	}
	k.behind(k.drop)
}

// behind does a job in a goroutine of its own: a disk may be slow.
func (k *Keeper) behind(job func() error) {
	k.asked++
	n := k.asked
	k.running.Go(func() { k.do(n, job) })
}

// do does job n, one at a time, unless a later one is done already.
func (k *Keeper) do(n int, job func() error) {
	k.files.Lock()
	defer k.files.Unlock()
	if n < k.done {
		return
	}
	k.done = n
	if err := job(); err != nil && !k.told {
		k.told = true
		k.failed(err)
	}
}

// drop is the job of removing the copy.
func (k *Keeper) drop() error {
	if k.slot == nil {
		return nil
	}
	_ = k.slot.remove() // one that stays is offered at the next start: too much is better than too little
	k.slot = nil
	return nil
}

// write makes the job of writing a copy.
func (k *Keeper) write(c Copy) func() error {
	c.Time = k.clock.Now()
	return func() error {
		content, err := encode(c)
		if err != nil {
			return err
		}
		if k.slot != nil && !k.slot.whole() { // somebody has emptied the folder
			k.slot.release()
			k.slot = nil
		}
		if k.slot == nil {
			if k.slot, err = newSlot(k.folder, c.Time); err != nil {
				return err
			}
		}
		if err := k.slot.write(content); err != nil {
			return err
		}
		k.told = false
		return nil
	}
}
