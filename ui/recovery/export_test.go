package recovery

// Abandon does what the operating system does when a program is killed.
func (k *Keeper) Abandon() {
	k.stop()
	k.closed = true
	k.Wait()
	if k.slot != nil {
		k.slot.release()
	}
}
