package ui

import "stopwright/detent/plan"

func (w *Window) sizesFor(f plan.Field) func(*valueEntry) { return nil }
