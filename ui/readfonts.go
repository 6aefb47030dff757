package ui

import "fyne.io/fyne/v2"

// readFonts has the toolkit read its fonts, the plain and the bold ones with
// their fallbacks, beside whatever else is done. Nothing may be measured or
// painted until wait returns: the toolkit's caches are not all safe to share.
func readFonts() (wait func()) {
	done := make(chan struct{})
	go func() {
		defer close(done)
		for _, bold := range []bool{false, true} {
			fyne.MeasureText(" ", 1, fyne.TextStyle{Bold: bold})
		}
	}()
	return func() { <-done }
}
