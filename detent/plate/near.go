package plate

import (
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
		switch {
		case a.radius != b.radius:
			return sign(a.radius - b.radius)
		case a.at != b.at:
			return sign(float64(a.at - b.at))
		}
		return a.seat - b.seat
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

func sign(x float64) int {
	if x < 0 {
		return -1
	}
	return 1
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
		if r.radius == radius {
			return 0
		}
		return sign(r.radius - radius)
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
	n := len(r.at)
	az := from.Azimuth.Turn()
	start, _ := slices.BinarySearch(r.at, az)
	distance := func(j int) float64 { return from.Centre.Distance(ix.seats[r.seat[j%n]].Centre) }
	// Clockwise of i the distance grows as far as half a turn away.
	opposite, _ := slices.BinarySearch(r.at, (az + 180).Turn())
	ahead := opposite - start
	if az >= 180 {
		ahead += n
	}
	consider := func(j int) {
		if d := distance(j); d < best.Distance {
			*best = Neighbour{r.seat[j%n], d}
		}
	}
	if m := firstTrue(ahead, func(m int) bool { return distance(start+m) > beyond }); m < ahead {
		consider(start + m)
	}
	behind := n - ahead
	if m := firstTrue(behind, func(m int) bool { return distance(start+n-1-m) > beyond }); m < behind {
		consider(start + n - 1 - m)
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
