package detent

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/room"
)

// place finds azimuths for the catches of an answer at which pockets, tracks and
// seats have room. The first group stays where the plan's first catch is, if it
// can, and the others are spread round the plate; each is turned from there by
// whole degrees, no farther than it must, one group after the other.
func (s *site) place(a room.Answer) ([]plan.Placement, bool) {
	turns := make([][]geom.Angle, len(a.Catches))
	for _, t := range a.Stops {
		turns[t.Catch] = append(turns[t.Catch], t.Turn)
	}
	groups := 0
	for _, c := range a.Catches {
		groups = max(groups, c.Group+1)
	}
	names := s.names(len(a.Catches))
	placed := make([]plan.Placement, 0, len(a.Catches))
	for g := range groups {
		from := s.azimuth() + geom.FullTurn*geom.Angle(g)/geom.Angle(groups)
		if groups < len(a.Catches) {
			from = s.widestGap(placed)
		}
		group, ok := s.placeGroup(a, g, from, turns, placed)
		if !ok {
			return nil, false
		}
		for _, p := range group {
			p.Name = names[len(placed)]
			placed = append(placed, p)
		}
	}
	return placed, true
}

// placeGroup turns one group until it has room beside what is placed already.
func (s *site) placeGroup(a room.Answer, group int, from geom.Angle, turns [][]geom.Angle, placed []plan.Placement) ([]plan.Placement, bool) {
	for k := range 360 {
		shift := geom.Angle((k + 1) / 2)
		if k%2 == 0 {
			shift = -shift
		}
		if out, ok := s.placeAt(a, group, from+shift, turns, placed); ok {
			return out, true
		}
	}
	return nil, false
}

func (s *site) placeAt(a room.Answer, group int, from geom.Angle, turns [][]geom.Angle, placed []plan.Placement) ([]plan.Placement, bool) {
	var out []plan.Placement
	for i, c := range a.Catches {
		if c.Group != group {
			continue
		}
		az := tidy(from + s.sigma*c.Place)
		on := s.ring(c.Radius)
		if !s.pocketFits(on, az) || !s.clear(c.Radius, az, placed) || !s.trackFits(on, az) || !s.seatsFit(on, az, turns[i]) {
			return nil, false
		}
		out = append(out, plan.Placement{Azimuth: az.Degrees(), Radius: c.Radius})
	}
	return out, true
}

// widestGap returns the azimuth in the middle of the widest gap between catches,
// and that of the plan's first where there are none.
func (s *site) widestGap(placed []plan.Placement) geom.Angle {
	if len(placed) == 0 {
		return s.azimuth()
	}
	var at []geom.Angle
	for _, p := range placed {
		at = append(at, geom.Angle(p.Azimuth).Turn())
	}
	slices.Sort(at)
	middle, widest := geom.Angle(0), geom.Angle(0)
	for i, a := range at {
		next := at[0] + geom.FullTurn
		if i+1 < len(at) {
			next = at[i+1]
		}
		if next-a > widest+room.Slack {
			middle, widest = (a+next)/2, next-a
		}
	}
	return middle
}

// clear reports whether a pocket keeps the web rule to those placed already.
func (s *site) clear(radius float64, az geom.Angle, placed []plan.Placement) bool {
	at := geom.Polar(radius, az)
	for _, p := range placed {
		if geom.Polar(p.Radius, geom.Angle(p.Azimuth)).Distance(at) < s.widest+s.plan.Rules.Web-room.Slack {
			return false
		}
	}
	return true
}

// tidy brings an azimuth to (-180, 180] and drops the rounding of sums: a
// billionth of a degree is well below what makes two seats of one hole.
func tidy(az geom.Angle) geom.Angle {
	const perDegree = 1e9
	return geom.Angle(math.Round(az.Wrap().Degrees()*perDegree) / perDegree).Wrap()
}
