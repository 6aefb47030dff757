package recovery

// Wait returns when every file is written or removed.
func (k *Keeper) Wait() { k.running.Wait() }

// Abandon does what the operating system does when a program is killed.
func (k *Keeper) Abandon() {
	k.stop()
	k.closed = true
	k.running.Wait()
	if k.slot != nil {
		k.slot.release()
	}
}
