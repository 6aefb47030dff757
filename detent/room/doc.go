// Package room says what would make room for stops whose seats do not fit on
// one ring: a larger ring, more catches, more rings, holes that serve several
// stops. It also finds every false click, which is what such answers risk.
//
// It takes and gives plain numbers: turns in degrees, lengths in mm. A turn is
// the table's, positive the plan's way. A place on a ring is told in the same
// sense, from where the first catch stands with the table at zero: a catch at
// place d, the table turned by t, stands over place d+t of the seats' part.
package room
