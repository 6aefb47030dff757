// Package ui is the window. One store owns the state; the views show it and
// call back, and never talk to one another. What the plate view paints comes
// from the drawing model that the files come from.
package ui
