// Package plan holds the plan: everything a maker decided about one turning
// plate, as a plain value and as a file.
//
// [Decode] reads a file and [Encode] writes one; both go through [Validate],
// which names every value that is out of range, all at once.
//
// The keys of a file, with their ranges and what may be left out, are listed
// once, in schema.go. What is done with them is a visitor each: the reader, the
// writer, the checker, and the lister behind [Keys].
package plan
