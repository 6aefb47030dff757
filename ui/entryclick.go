package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// MouseDown selects the whole value where the press gives the field the keys, as
// Tab does: a size is typed over far more often than mended. The next press sets
// the cursor. Notes of several lines are not typed over so easily.
func (e *valueEntry) MouseDown(m *desktop.MouseEvent) {
	e.clicked = !e.active && !e.MultiLine && m.Button == desktop.MouseButtonPrimary
	e.Entry.MouseDown(m)
	if e.clicked {
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
}

// Dragged selects from where the mouse was pressed, as in any text.
func (e *valueEntry) Dragged(d *fyne.DragEvent) {
	if e.clicked {
		e.clicked = false
		e.Entry.MouseDown(&desktop.MouseEvent{
			PointEvent: fyne.PointEvent{Position: d.Position.Subtract(d.Dragged)}, Button: desktop.MouseButtonPrimary,
		})
	}
	e.Entry.Dragged(d)
}
