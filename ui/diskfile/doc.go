// Package diskfile reads and saves plan files and tells whether one has been
// changed, taken away or locked by something else since. It knows no window
// toolkit.
package diskfile
