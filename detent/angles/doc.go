// Package angles works out the sets of stops that makers ask for by name:
// mitres of polygons, equal divisions, ranges by step, mouldings laid flat; and
// it recognises an angle read from the fence instead of from square.
//
// All angles are degrees. A stop's angle is from square: 0 cuts straight across,
// 45 mitres a four-sided frame.
package angles
