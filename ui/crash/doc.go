// Package crash writes down how the program ended by a fault of its own, beside
// the recovery copies, so that the next start can say so and the fault be
// reported.
//
// A report holds the version, the fault and the places of the program it came
// through. Nothing of a plan is in it, and no folder of the person's.
package crash
