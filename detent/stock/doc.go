// Package stock knows what a maker can buy and what handbooks say of it:
// drills, balls, screws and their holes, countersinks, woods and panels,
// friction, and how all of these grow with damp and warmth.
//
// Every record says where it comes from and how sure it is ([Evidence]), so
// that a screen can show both beside the number. What no source gives is left
// out ([Value.Known]), never filled in with a guess that looks like a figure.
//
// Lists come back in a fixed order and as copies: a caller may change them.
package stock
