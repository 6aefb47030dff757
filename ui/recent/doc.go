// Package recent remembers which plan files were opened or saved last, in a
// file of its own that all running programs share. It knows no window toolkit.
package recent
