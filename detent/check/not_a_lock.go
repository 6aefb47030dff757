package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plate"
)

// notALock is always there: a detent positions, and what holds a table while a
// blade cuts is a clamp.
var notALock = Check{
	ID:       "not-a-lock",
	Severity: Note,
	run: func(_ *plate.Plate, report func(Finding)) {
		report(Finding{})
	},
	say: func(*plate.Plate, Finding) (string, words.Args) { return "text", nil },
}
