package detent

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// site is the two parts as ground to build on: where a pocket, a track and a seat
// have room beside edges, bores and features.
type site struct {
	plan   plan.Plan
	sigma  geom.Angle
	widest float64 // of a pocket, mm
	most   float64 // the largest ring radius that edges allow somewhere, mm

	pockets, seats ground // the parts that hold them
	rings          map[float64]*circle
}

// ground is one part: its edges and what is cut in it.
type ground struct {
	outline  plate.Outline
	bore     float64
	features []plate.Feature
}

// circle is one ring on both parts, with the features near enough to matter.
type circle struct {
	radius           float64
	byPocket, bySeat []plate.Feature
}

func newSite(pl *plate.Plate) *site {
	s := &site{plan: pl.Plan, sigma: pl.Sigma, rings: map[float64]*circle{}}
	for _, p := range pl.Pockets {
		s.widest = max(s.widest, p.Widest())
	}
	on := func(part plan.Part) ground {
		g := ground{outline: plate.OutlineOf(pl.Plan, part), bore: plate.BoreOf(pl.Plan, part)}
		for _, f := range pl.Features {
			if f.Part == part {
				g.features = append(g.features, f)
			}
		}
		return g
	}
	s.pockets, s.seats = on(pl.CatchPart), on(pl.SeatsPart)
	edge := pl.Plan.Rules.Edge
	s.most = min(s.pockets.outline.Farthest()-edge-s.widest/2, s.seats.outline.Farthest()-edge-pl.Plan.Seat.Mouth()/2)
	return s
}

// maxRadii bounds the rings that are tried: their steps grow on tables larger
// than this many of them.
const maxRadii = 400

// radii lists the ring radii on which a pocket and the ball's track have room at
// some azimuth, in order, the plan's own among them.
func (s *site) radii(own float64) []float64 {
	edge := s.plan.Rules.Edge
	least := max(s.pockets.bore/2+s.widest/2, s.seats.bore/2+s.plan.Seat.Mouth()/2) + edge
	least = max(room.RoundUp(least), room.RadiusStep)
	step := room.RadiusStep * max(1, math.Ceil((s.most-least)/room.RadiusStep/maxRadii))
	var out []float64
	for r := least; r <= s.most+room.Slack; r += step {
		out = append(out, r)
	}
	if at, there := slices.BinarySearch(out, own); !there {
		out = slices.Insert(out, at, own)
	}
	const look = 5 // degrees: how closely round the ring
	return slices.DeleteFunc(out, func(r float64) bool {
		c := s.ring(r)
		for az := geom.Angle(0); az < geom.FullTurn; az += look {
			if s.pocketFits(c, az+s.azimuth()) && s.trackFits(c, az+s.azimuth()) {
				return false
			}
		}
		return true
	})
}

// azimuth returns that of the plan's first catch, from which places are turned.
func (s *site) azimuth() geom.Angle { return geom.Angle(s.plan.Catches[0].Azimuth) }

// ring returns the circle of a radius, and gathers what is near it once.
func (s *site) ring(radius float64) *circle {
	if c, known := s.rings[radius]; known {
		return c
	}
	c := &circle{radius: radius}
	whole := geom.Arc{Radius: radius, Sweep: geom.FullTurn}
	near := func(g ground, reach float64) []plate.Feature {
		var out []plate.Feature
		for _, f := range g.features {
			if f.Core.DistanceToArc(whole)-f.Half < reach {
				out = append(out, f)
			}
		}
		return out
	}
	web := s.plan.Rules.Web
	c.byPocket, c.bySeat = near(s.pockets, s.widest/2+web), near(s.seats, s.plan.Seat.Mouth()/2+web)
	s.rings[radius] = c
	return c
}

// pocketFits reports whether a pocket at an azimuth keeps the rules to edges,
// bore and features.
func (s *site) pocketFits(c *circle, az geom.Angle) bool {
	return s.holeFits(s.pockets, c.byPocket, c.radius, az, s.widest/2)
}

// trackFits reports whether the ball of a catch at an azimuth stays on the face
// and clear of openings all through the travel.
func (s *site) trackFits(c *circle, az geom.Angle) bool {
	t := s.plan.Travel
	path := geom.ArcBetween(c.radius, az+s.sigma*geom.Angle(t.From), az+s.sigma*geom.Angle(t.To))
	if s.seats.outline.InsideArc(path) < 0 || s.seats.bore > 0 && c.radius < s.seats.bore/2 {
		return false
	}
	for _, f := range c.bySeat {
		if f.Core.DistanceToArc(path) < f.Half {
			return false
		}
	}
	return true
}

// seatsFit reports whether the seats of a catch at an azimuth keep the rules to
// edges, bore and features.
func (s *site) seatsFit(c *circle, az geom.Angle, turns []geom.Angle) bool {
	for _, t := range turns {
		if !s.holeFits(s.seats, c.bySeat, c.radius, az+s.sigma*t, s.plan.Seat.Mouth()/2) {
			return false
		}
	}
	return true
}

func (s *site) holeFits(g ground, near []plate.Feature, radius float64, az geom.Angle, half float64) bool {
	at := geom.Polar(radius, az)
	rules := s.plan.Rules
	if g.outline.Inside(at)-half < rules.Edge-room.Slack || g.bore > 0 && radius-g.bore/2-half < rules.Edge-room.Slack {
		return false
	}
	for _, f := range near {
		if f.Clear(at, half) < rules.Web-room.Slack {
			return false
		}
	}
	return true
}
