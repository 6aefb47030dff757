// Package scale draws what the table's turn is read from: graduations that turn
// with the table, an index line on the part below, and beside it a vernier.
//
// A scale is drawn flat, to be engraved on the table or cut as a ring, or as a
// strip to be wrapped round the table's rim. Which way its numbers grow follows
// from the plan's positive turn: when the table turns that way, the index must
// come to larger numbers, so seen from above they grow against it.
package scale
