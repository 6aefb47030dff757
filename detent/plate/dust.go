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

// dustSlots lists the slots beside the tracks, as far along as the balls go. Of
// what would lie on the pivot there is none.
func dustSlots(pl *Plate) []Feature {
	d := pl.Plan.Making.Dust
	if d.Width == 0 {
		return nil
	}
	off := pl.Plan.Seat.Mouth()/2 + pl.Plan.Rules.Web + d.Width/2
	var out []Feature
	for _, span := range trackSpans(pl.Tracks) {
		for _, side := range [...]struct {
			side plan.Side
			r    float64
		}{{plan.Inside, span.Radius - off}, {plan.Outside, span.Radius + off}} {
			if d.Side != plan.Both && d.Side != side.side || side.r <= d.Width/2 {
				continue
			}
			for _, piece := range bridged(geom.Arc{Radius: side.r, From: span.From, Sweep: span.Sweep}, d.Bridge+d.Width) {
				out = append(out, Feature{
					Part: pl.SeatsPart, Kind: plan.ArcSlot, Index: len(out), Fitting: DustSlot,
					Core: piece, Half: d.Width / 2,
				})
			}
		}
	}
	return out
}

// trackSpans joins the tracks that run into each other on one ring, and lists
// what there is by radius and azimuth. Whole rings are whole.
func trackSpans(tracks []Track) []geom.Arc {
	var all []geom.Arc
	for _, t := range tracks {
		a := t.Path
		a.From = a.From.Turn()
		all = append(all, a)
	}
	slices.SortFunc(all, func(a, b geom.Arc) int {
		return cmp.Or(cmp.Compare(a.Radius, b.Radius), cmp.Compare(a.From, b.From), cmp.Compare(a.Sweep, b.Sweep))
	})
	var out []geom.Arc
	for from := 0; from < len(all); {
		to := from + 1
		for to < len(all) && all[to].Radius == all[from].Radius {
			to++
		}
		out = append(out, joined(all[from:to])...)
		from = to
	}
	return out
}

// joined joins arcs of one radius, by azimuth, that touch.
func joined(arcs []geom.Arc) []geom.Arc {
	out := []geom.Arc{arcs[0]}
	for _, a := range arcs[1:] {
		last := &out[len(out)-1]
		if a.From <= last.From+last.Sweep {
			last.Sweep = max(last.Sweep, a.From+a.Sweep-last.From)
		} else {
			out = append(out, a)
		}
	}
	// The last may reach round to the first.
	for n := len(out); n > 1; n = len(out) {
		last, first := &out[n-1], out[0]
		if last.From+last.Sweep < first.From+geom.FullTurn {
			break
		}
		last.Sweep = max(last.Sweep, first.From+geom.FullTurn+first.Sweep-last.From)
		out = out[1:]
	}
	if out[0].Whole() {
		return []geom.Arc{{Radius: out[0].Radius, Sweep: geom.FullTurn}}
	}
	return out
}

// bridged cuts an arc into equal pieces none of which is too long, with gap mm
// from the end of one to the start of the next. Pieces that the gaps eat up are
// points.
func bridged(a geom.Arc, gap float64) []geom.Arc {
	n := int(math.Ceil(float64(a.Sweep / longestDust)))
	if n < 1 {
		n = 1
	}
	apart := geom.FromRadians(2 * math.Asin(math.Min(1, gap/(2*a.Radius))))
	gaps := geom.Angle(n - 1)
	if a.Whole() {
		gaps = geom.Angle(n)
	}
	sweep := max(0, (a.Sweep-gaps*apart)/geom.Angle(n))
	out := make([]geom.Arc, n)
	for i := range out {
		out[i] = geom.Arc{Radius: a.Radius, From: (a.From + geom.Angle(i)*(sweep+apart)).Turn(), Sweep: sweep}
	}
	return out
}
