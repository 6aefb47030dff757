// Package check judges a plate: each file holds one check, with its id, its
// severity, what it measures and what it does not flag. Its title, its reason
// and its sentences are in the word catalogue under check.ID.
//
// Rules pass at equality, within [Slack]. A seat has at most one finding of an
// id: its worst.
package check
