// Package recovery keeps a copy of a plan that is not saved, so that a program
// which ends without asking loses nothing, and finds the copies that others
// left behind. It knows no window toolkit.
//
// A copy lies in a folder as ID.copy, beside ID.lock. The program that keeps it
// holds a lock of the operating system on the latter, which ends with the
// program however it ends: a copy whose lock can be had was left behind. No
// process number is asked after, as those are given out again, and no clock is
// trusted. Each running program has a copy of its own, also of the same plan.
//
// Where the disk knows no locks, as some network disks do not, a copy that
// another running program still keeps may be offered too. Taking it up leaves
// that program's plan alone, and its next edit writes it a new copy.
package recovery
