// Package store is the one owner of the window's state: the plan being edited,
// the report that follows from it, what is selected, and the file it came from.
// Views read it, call its methods, and are told when something changed; no view
// keeps a copy. It knows no window toolkit. All calls come from one goroutine.
package store
