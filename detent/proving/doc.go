// Package proving says what measured stops tell of a plate: whether all are off
// alike, whether the ring of seats lies off the pivot, which single seat is out
// and by how much, how far the table plays, and what to measure next.
//
// Plain numbers in, plain numbers out. Angles are degrees in the plan's own
// positive sense unless said otherwise; places are mm in the part that holds the
// seats, at table zero, seen from above; azimuths are clockwise from +y.
//
// The law that all of it rests on: a stop's reading less its angle is
//
//	common + sigma·(180/π)·(ex·cos az - ey·sin az)/R + the seat's own + play
//
// for a ring of radius R whose centre lies at (ex, ey) off the pivot: the
// one-cycle-a-turn error of an eccentric graduated circle, of amplitude e/R (W.
// Chauvenet, A Manual of Spherical and Practical Astronomy, vol. II,
// eccentricity of graduated circles). It is true to the first order of e/R. Where
// several catches drop together their arms decide between them: see [Stop].
package proving
