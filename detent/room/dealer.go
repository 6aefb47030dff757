package room

import "stopwright/detent/geom"

// What [Assign] remembers: beam pasts at all stops together, and leastBeam at
// each. At this size it takes some milliseconds.
const (
	beam      = 8_000
	leastBeam = 64
)

// dealer knows what is dealt: stops in order to slots of a least gap each.
type dealer struct{ stops, gaps []geom.Angle }

// dealt is one stop dealt to a slot, after others.
type dealt struct {
	prev, slot int
	cost       int // sum of the slots' numbers
}

// past is what matters of the stops dealt so far: the last stop of each slot, and
// the first of each; -1 where it no longer matters.
type past struct{ last, first [MaxCatches]int16 }

// pastAt is a past and the deal that led to it.
type pastAt struct {
	past
	node int
}

func noPast() past {
	var p past
	for k := range p.last {
		p.last[k], p.first[k] = -1, -1
	}
	return p
}

// alike reports whether two slots can be told apart by nothing that matters.
func (d dealer) alike(p *past, a, b int) bool {
	return d.gaps[a] == d.gaps[b] && p.last[a] == p.last[b] && p.first[a] == p.first[b]
}

// may reports whether a slot can take stop i after what it has.
func (d dealer) may(p *past, slot, i int) bool {
	last, first, gap := p.last[slot], p.first[slot], d.gaps[slot]
	return (last < 0 || d.stops[i]-d.stops[last] >= gap) &&
		(first < 0 || d.stops[first]+geom.FullTurn-d.stops[i] >= gap)
}

// put returns the past after a slot has taken stop i, without what no later stop
// can be near to.
func (d dealer) put(p past, slot, i int) past {
	n := len(d.stops)
	p.last[slot] = int16(i)
	if p.first[slot] < 0 && d.stops[i]+geom.FullTurn-d.stops[n-1] < d.gaps[slot] {
		p.first[slot] = int16(i)
	}
	for k, gap := range d.gaps {
		if last := p.last[k]; last >= 0 && (i == n-1 || d.stops[i+1]-d.stops[last] >= gap) {
			p.last[k] = -1
		}
	}
	return p
}

// bound returns how long the slots are bound by what they have after stop i.
func (d dealer) bound(p *past, i int) geom.Angle {
	total := geom.Angle(0)
	for k, gap := range d.gaps {
		if last := p.last[k]; last >= 0 {
			total += d.stops[last] + gap - d.stops[i]
		}
		if first := p.first[k]; first >= 0 {
			total += gap - d.stops[first]
		}
	}
	return total
}

// mayFit reports whether the stops are few enough wherever they crowd: within an
// angle L a slot takes at most L/gap + 1 of them, and 360/gap in a full turn. It
// tries stretches of few stops and then of ever more.
func (d dealer) mayFit() bool {
	n := len(d.stops)
	whole := 0
	for _, gap := range d.gaps {
		whole += int(max(1, geom.FullTurn/gap))
	}
	if n > whole {
		return false
	}
	for count := 2; count <= n; count += 1 + count/16 {
		for i := 0; i+count <= n; i++ {
			room := 0
			span := d.stops[i+count-1] - d.stops[i]
			for _, gap := range d.gaps {
				room += int(span/gap) + 1
			}
			if room < count {
				return false
			}
		}
	}
	return true
}
