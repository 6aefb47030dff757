// Package figures draws what a size of a catch or a seat means: a section
// through the part, the catch, its ball and the seat, with one size measured
// out. The drawing shows where a size is taken, not the plan's own proportions:
// gaps and allowances are drawn large enough to see. It needs no window.
package figures
