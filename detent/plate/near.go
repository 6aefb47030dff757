package plate

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
)

// ringIndex finds neighbours among seats without looking at every pair: seats
// of one radius are kept in order of azimuth, and along such a ring the
// distance from any fixed point grows steadily on each side.
type ringIndex struct {
	rings []ringSeats // by radius
	seats []Seat
}

// ringSeats are the seats of one radius, by azimuth in [0, 360).
type ringSeats struct {
	radius float64
	at     []geom.Angle
	seat   []int // index of the seat at each azimuth
}

func newRingIndex(seats []Seat) ringIndex {
	type place struct {
		radius float64
		at     geom.Angle
		seat   int
	}
	all := make([]place, len(seats))
	for i, s := range seats {
		all[i] = place{s.Radius, s.Azimuth.Turn(), i}
	}
	slices.SortFunc(all, func(a, b place) int {
		return cmp.Or(cmp.Compare(a.radius, b.radius), cmp.Compare(a.at, b.at), a.seat-b.seat)
	})
	ix := ringIndex{seats: seats}
	for _, p := range all {
		if n := len(ix.rings); n == 0 || ix.rings[n-1].radius != p.radius {
			ix.rings = append(ix.rings, ringSeats{radius: p.radius})
		}
		r := &ix.rings[len(ix.rings)-1]
		r.at = append(r.at, p.at)
		r.seat = append(r.seat, p.seat)
	}
	return ix
}

// Neighbour is another seat and how far its centre is, mm. Seat is -1 and
// Distance infinite when there is none.
type Neighbour struct {
	Seat     int
	Distance float64
}

// NearestBeyond returns the seat nearest to seat i among those whose centres
// are more than d mm from its own.
func (pl *Plate) NearestBeyond(i int, d float64) Neighbour { return pl.index.nearest(i, d) }

// findWebs fills in every seat's nearest neighbour and the web to it.
func (ix ringIndex) findWebs(mouth float64) {
	for i := range ix.seats {
		n := ix.nearest(i, 0)
		ix.seats[i].Nearest, ix.seats[i].Web = n.Seat, n.Distance-mouth
	}
}

// nearest looks along every ring near enough to matter.
func (ix ringIndex) nearest(i int, beyond float64) Neighbour {
	from := ix.seats[i]
	best := Neighbour{-1, math.Inf(1)}
	own, _ := slices.BinarySearchFunc(ix.rings, from.Radius, func(r ringSeats, radius float64) int {
		return cmp.Compare(r.radius, radius)
	})
	for k := own; k < len(ix.rings) && ix.rings[k].radius-from.Radius < best.Distance; k++ {
		ix.along(k, i, beyond, &best)
	}
	for k := own - 1; k >= 0 && from.Radius-ix.rings[k].radius < best.Distance; k-- {
		ix.along(k, i, beyond, &best)
	}
	return best
}

// along improves best with the first seat of ring k, on each side of seat i,
// whose distance is more than beyond (at least 0, so never i itself).
func (ix ringIndex) along(k, i int, beyond float64, best *Neighbour) {
	r, from := ix.rings[k], ix.seats[i]
	n := len(r.seat)
	distance := func(j int) float64 { return from.Centre.Distance(ix.seats[r.seat[j%n]].Centre) }
	look := func(count int, step func(m int) int) {
		m := firstTrue(count, func(m int) bool { return distance(step(m)) > beyond })
		if m == count {
			return
		}
		if d := distance(step(m)); d < best.Distance {
			*best = Neighbour{r.seat[step(m)%n], d}
		}
	}
	// Clockwise of i the distance grows as far as half a turn away, and so it
	// does the other way.
	az := from.Azimuth.Turn()
	opposite := az + 180
	if opposite >= geom.FullTurn {
		opposite -= geom.FullTurn
	}
	start, ahead := r.search(az), r.search(opposite)
	if opposite < az {
		ahead += n
	}
	ahead -= start
	look(ahead, func(m int) int { return start + m })
	look(n-ahead, func(m int) int { return start + n - 1 - m })
}

// search returns the place on the ring of the first seat at or after azimuth
// at, in [0, 360); the number of seats when there is none.
func (r ringSeats) search(at geom.Angle) int {
	k, _ := slices.BinarySearch(r.at, at)
	return k
}

// beside returns the seats next to azimuth at on either side; the same seat
// twice when the ring has one.
func (r ringSeats) beside(at geom.Angle) [2]int {
	n, k := len(r.seat), r.search(at)
	return [2]int{r.seat[k%n], r.seat[(k+n-1)%n]}
}

// besideEach calls yield with every seat and, on each ring whose radius is at
// most near mm away, the seat next to it on either side. Along a ring distance
// only grows, so that a group of seats no farther than near from one to the next
// is linked by these pairs.
func (ix ringIndex) besideEach(near float64, yield func(a, b int)) {
	for k, r := range ix.rings {
		for _, other := range ix.rings[k:] {
			if other.radius-r.radius > near {
				break
			}
			for m, seat := range r.seat {
				for _, next := range other.beside(r.at[m]) {
					yield(seat, next)
				}
			}
		}
	}
}

// firstTrue returns the least m in [0, n) for which holds is true, n if none;
// holds must be false and then true. It steps in growing strides from 0, since
// the answer is nearly always near.
func firstTrue(n int, holds func(int) bool) int {
	lo, hi := 0, 1
	for hi <= n && !holds(hi-1) {
		lo, hi = hi, 2*hi
	}
	hi = min(hi-1, n)
	for lo < hi {
		mid := int(uint(lo+hi) >> 1)
		if holds(mid) {
			hi = mid
		} else {
			lo = mid + 1
		}
	}
	return lo
}

// nearestTo returns the seat nearest to a place.
func (ix ringIndex) nearestTo(p geom.Point) Neighbour {
	best := Neighbour{-1, math.Inf(1)}
	at := p.Azimuth().Turn()
	for _, r := range ix.rings {
		if math.Abs(r.radius-p.Norm()) >= best.Distance {
			continue
		}
		for _, seat := range r.beside(at) {
			if d := ix.seats[seat].Centre.Distance(p); d < best.Distance {
				best = Neighbour{seat, d}
			}
		}
	}
	return best
}
