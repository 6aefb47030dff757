package plate

import (
	"cmp"
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// longestDust is how far one dust slot runs at most, so that no tongue of
// material is left that bends. Common practice, no source.
const longestDust geom.Angle = 90

// dustSlots lists the slots beside the tracks, as far along as the balls go; beside
// a wear ring, where there is one, which would cover them. Of what would lie on
// the pivot there is none.
func dustSlots(pl *Plate) []Feature {
	d := pl.Plan.Making.Dust
	if d.Width == 0 {
		return nil
	}
	off := pl.Plan.Rules.Web + d.Width/2
	var out []Feature
	for _, ring := range dustRings(pl) {
		for _, side := range [...]struct {
			side plan.Side
			r    float64
		}{{plan.Inside, ring.inner - off}, {plan.Outside, ring.outer + off}} {
			if d.Side != plan.Both && d.Side != side.side || side.r <= d.Width/2 {
				continue
			}
			for _, piece := range bridged(ring.tracks, side.r, d.Bridge+d.Width) {
				out = append(out, Feature{
					Part: pl.SeatsPart, Kind: plan.ArcSlot, Index: len(out), Fitting: DustSlot,
					Core: piece, Half: d.Width / 2,
				})
			}
		}
	}
	return out
}

// dustRing is a band that dust slots lie beside: the radii of its edges, mm, and
// the balls' paths in it, by azimuth in [0, 360).
type dustRing struct {
	inner, outer float64
	tracks       []geom.Arc
}

// dustRings lists the bands, from the pivot outward: one as wide as the seats
// for every ring, or the wear ring with all of them.
func dustRings(pl *Plate) []dustRing {
	all := make([]geom.Arc, len(pl.Tracks))
	for i, t := range pl.Tracks {
		all[i] = t.Path
		all[i].From = all[i].From.Turn()
	}
	byAzimuth := func(a, b geom.Arc) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.Sweep, b.Sweep))
	}
	if inner, outer := WearRing(pl.Plan); outer > 0 {
		slices.SortFunc(all, byAzimuth)
		return []dustRing{{inner / 2, outer / 2, all}}
	}
	slices.SortFunc(all, func(a, b geom.Arc) int { return cmp.Or(cmp.Compare(a.Radius, b.Radius), byAzimuth(a, b)) })
	half := pl.Plan.Seat.Mouth() / 2
	var out []dustRing
	for _, a := range all {
		if n := len(out); n == 0 || out[n-1].tracks[0].Radius != a.Radius {
			out = append(out, dustRing{inner: a.Radius - half, outer: a.Radius + half})
		}
		last := &out[len(out)-1]
		last.tracks = append(last.tracks, a)
	}
	return out
}

// bridged lists slots at a radius along the tracks of a ring, with at least gap
// mm from the end of one to the start of the next.
func bridged(ring []geom.Arc, radius, gap float64) []geom.Arc {
	apart := geom.FromRadians(2 * math.Asin(math.Min(1, gap/(2*radius))))
	var out []geom.Arc
	for _, span := range joined(ring, apart) {
		span.Radius = radius
		out = append(out, cut(span, apart)...)
	}
	return out
}

// joined joins arcs of one ring, by azimuth, that are less than apart from each
// other. What is left open of a whole ring is more than that, too.
func joined(arcs []geom.Arc, apart geom.Angle) []geom.Arc {
	out := []geom.Arc{arcs[0]}
	for _, a := range arcs[1:] {
		last := &out[len(out)-1]
		if a.From < last.From+last.Sweep+apart {
			last.Sweep = max(last.Sweep, a.From+a.Sweep-last.From)
		} else {
			out = append(out, a)
		}
	}
	// The last may reach round to the first.
	for len(out) > 1 {
		last, first := &out[len(out)-1], out[0]
		if last.From+last.Sweep+apart <= first.From+geom.FullTurn {
			break
		}
		last.Sweep = max(last.Sweep, first.From+geom.FullTurn+first.Sweep-last.From)
		out = out[1:]
	}
	if out[0].Sweep+apart > geom.FullTurn {
		return []geom.Arc{{Sweep: geom.FullTurn}}
	}
	return out
}

// shortest is the least turn that a slot is worth: at 10 m radius it is a fifth
// of a thousandth of a millimetre. What is shorter is a hole.
const shortest geom.Angle = 1e-6

// drawable returns the sweep of a slot, 0 where there is not enough of it.
func drawable(sweep geom.Angle) geom.Angle {
	if sweep < shortest {
		return 0
	}
	return sweep
}

// cut cuts an arc into equal pieces none of which is too long, apart from each
// other. Pieces that the gaps eat up are points.
func cut(a geom.Arc, apart geom.Angle) []geom.Arc {
	n := max(1, int(math.Ceil(float64(a.Sweep/longestDust))))
	gaps := geom.Angle(n - 1)
	if a.Whole() {
		gaps++
	}
	sweep := drawable((a.Sweep - gaps*apart) / geom.Angle(n))
	out := make([]geom.Arc, n)
	for i := range out {
		out[i] = geom.Arc{Radius: a.Radius, From: (a.From + geom.Angle(i)*(sweep+apart)).Turn(), Sweep: sweep}
	}
	return out
}
