// Package plan holds the plan: everything a maker decided about one turning
// plate, as a plain value and as a file.
//
// [Decode] reads a file and [Encode] writes one; both go through [Validate],
// which names every value that is out of range, all at once.
package plan
