package detent

import (
	"cmp"
	"context"
	"iter"
	"math"
	"slices"

	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// Room is one way to give every stop its seat: a whole plan, and what tells it
// from others.
type Room struct {
	Kind  room.Kind
	Fits  bool      // the parts hold it and no check finds an error of place
	Plan  plan.Plan // as it would be
	Seats int
	Web   float64 // least material between two seats, mm; infinite where there is one

	// A ring that does not fit: the radius (mm) it would need, and the largest the
	// parts have room for.
	Needs, Most float64

	Warnings []check.Finding // that the plan has not got as it is

	Wrong, Clears int // how many errors and warnings the plan has as it is, and how many of them are gone
}

// Smallest returns the radius of the smallest ring, mm.
func (r Room) Smallest() float64 {
	least := math.Inf(1)
	for _, c := range r.Plan.Catches {
		least = min(least, c.Radius)
	}
	return least
}

// Moved returns the farthest that a stop is moved, in degrees, from where another
// plan has it: 0 but for the nearest stops that fit.
func (r Room) Moved(from plan.Plan) float64 {
	was, now := plate.StopsOf(from), plate.StopsOf(r.Plan)
	most := 0.0
	for i := range min(len(was), len(now)) {
		most = max(most, (was[i].Angle - now[i].Angle).Abs().Degrees())
	}
	return most
}

// studyRooms adds the ways to make room to the report.
func studyRooms(ctx context.Context, r *Report) error {
	rooms, err := MakeRoom(ctx, r.Plate.Plan)
	if err == nil {
		r.Rooms = rooms
	}
	return err
}

// MakeRoom finds ways to give every stop of a plan a seat of its own, or one
// that serves others as well. Those that fit come first: fewest catches, then
// largest least web, then smallest ring. One ring is always told of, with what
// it would need where it does not fit. Stops are moved only where nothing else
// fits. In an answer each stop is held by one catch.
//
// It gives the context's error when told to stop. The same plan has the same
// answers.
func MakeRoom(ctx context.Context, p plan.Plan) ([]Room, error) {
	m := newMaker(p)
	if len(m.stops) == 0 {
		return nil, ctx.Err()
	}
	var out []Room
	one, ok := m.first(ctx, m.problem.OneRing())
	if !ok {
		one = m.unfit()
	}
	out = append(out, one)
	out = append(out, m.divided(ctx)...)
	out = append(out, m.fewest(ctx, m.problem.SharedRing, 1)...)
	out = append(out, m.fewest(ctx, m.problem.SeparateRings, 2)...)
	out = append(out, m.fewest(ctx, m.problem.MixedRings, 1)...)
	if !slices.ContainsFunc(out, func(r Room) bool { return r.Fits }) {
		if a, ok := m.first(ctx, m.problem.NearestStops()); ok {
			out = append(out, a)
		}
	}
	slices.SortStableFunc(out, func(a, b Room) int {
		return cmp.Or(
			cmp.Compare(rank(a.Fits), rank(b.Fits)),
			len(a.Plan.Catches)-len(b.Plan.Catches),
			-cmp.Compare(a.Web, b.Web),
			cmp.Compare(a.Smallest(), b.Smallest()),
		)
	})
	return out, ctx.Err()
}

func rank(fits bool) int {
	if fits {
		return 0
	}
	return 1
}

// maker turns a leaf's answers into plans.
type maker struct {
	plan    plan.Plan
	stops   []plate.Stop
	site    *site
	problem room.Problem
	had     map[string]int // how much each check finds wrong with the plan as it is
	tries   int            // plans tried for each kind
}

func newMaker(p plan.Plan) maker {
	r := Solve(p)
	m := maker{plan: p, stops: r.Plate.Stops, site: newSite(r.Plate), had: map[string]int{}}
	for _, f := range r.Findings {
		if f.Wrong() {
			m.had[f.ID]++
		}
	}
	m.problem = room.Problem{
		From: geom.Angle(p.Travel.From), To: geom.Angle(p.Travel.To),
		Mouth: p.Seat.Mouth(), Web: p.Rules.Web, Pocket: m.site.widest + p.Rules.Web,
		Own: p.Catches[0].Radius,
	}
	m.problem.Radii = m.site.radii(m.problem.Own)
	for _, s := range m.stops {
		m.problem.Stops = append(m.problem.Stops, s.Angle)
	}
	// A plan of thousands of seats takes its time.
	const most, seats = 40, 5000
	m.tries = max(3, min(most, seats/max(1, len(m.stops))))
	return m
}

// ofPlace are the checks about where things lie: what an answer must not break,
// whatever the plan did. The others are about ball, catch and travel, which no
// answer changes.
var ofPlace = map[string]bool{
	"seats-overlap": true, "web-thin": true, "edge-thin": true, "feature-overlap": true,
	"track-crossed": true, "track-leaves": true, "pocket-edge": true, "false-click": true,
}

// first returns the first answer that the parts hold, of m.tries.
func (m maker) first(ctx context.Context, answers iter.Seq[room.Answer]) (Room, bool) {
	tries := 0
	for a := range answers {
		if ctx.Err() != nil || tries == m.tries {
			break
		}
		tries++
		if placed, ok := m.site.place(a); ok {
			if r, ok := m.try(a, placed); ok {
				return r, true
			}
		}
	}
	return Room{}, false
}

// fewest returns the answer of a kind with the fewest catches that the parts
// hold, and up to most of them if each next number of catches leaves larger webs.
func (m maker) fewest(ctx context.Context, kind func(context.Context, int) iter.Seq[room.Answer], most int) []Room {
	var out []Room
	for k := 2; k <= room.MaxCatches && len(out) < most; k++ {
		r, ok := m.first(ctx, kind(ctx, k))
		switch {
		case ok && (len(out) == 0 || r.Web > out[len(out)-1].Web+check.Slack):
			out = append(out, r)
		case len(out) > 0:
			return out
		}
	}
	return out
}

// divided returns answers for equal divisions of a turn: the one with the fewest
// catches, and further ones each with at least half as many again, since the
// maker may rather bore a few more pockets than drill many more seats.
func (m maker) divided(ctx context.Context) []Room {
	var out []Room
	least := 2
	for c := 2; c <= room.MaxCatches; c++ {
		if c < least || c*c > len(m.stops) && len(out) > 0 {
			continue // more catches than seats are no gain
		}
		if r, ok := m.first(ctx, m.problem.Divided(ctx, c)); ok {
			out, least = append(out, r), (3*c+1)/2
		}
	}
	return out
}

// try solves the plan of an answer, and is false where that finds an error of
// place, or another that the plan had not got.
func (m maker) try(a room.Answer, placed []plan.Placement) (Room, bool) {
	p := m.planOf(a, placed)
	if plan.Validate(p) != nil { // a ring beyond what a plan may have
		return Room{}, false
	}
	r := Solve(p)
	for _, f := range r.Findings {
		if f.Severity == check.Error && (ofPlace[f.ID] || m.had[f.ID] == 0) {
			return Room{}, false
		}
	}
	return m.roomOf(a.Kind, r), true
}

func (m maker) roomOf(kind room.Kind, r Report) Room {
	out := Room{Kind: kind, Fits: true, Plan: r.Plate.Plan, Seats: len(r.Plate.Seats), Web: math.Inf(1)}
	for _, s := range r.Plate.Seats {
		out.Web = min(out.Web, s.Web)
	}
	for _, f := range r.Findings {
		if f.Severity == check.Warning && m.had[f.ID] == 0 {
			out.Warnings = append(out.Warnings, f)
		}
	}
	out.Wrong, out.Clears = m.clears(r.Findings)
	return out
}

// clears returns how many errors and warnings the plan has as it is, and how many
// of them are not among the findings of an answer, check by check: as many as a
// check finds fewer.
func (m maker) clears(findings []check.Finding) (had, gone int) {
	left := map[string]int{}
	for _, f := range findings {
		if f.Wrong() {
			left[f.ID]++
		}
	}
	for id, n := range m.had {
		had, gone = had+n, gone+max(0, n-left[id])
	}
	return had, gone
}

// unfit is the one ring that all stops would need. Its plan may be beyond what a
// plan may have, and is not to be solved.
func (m maker) unfit() Room {
	needs := room.RoundUp(room.SmallestRing(m.problem.Stops, m.problem.Mouth+m.problem.Web))
	a := m.problem.OnRing(needs)
	own := m.plan.Catches[0]
	own.Radius = max(needs, room.RadiusStep)
	r := Room{Kind: a.Kind, Plan: m.planOf(a, []plan.Placement{own}), Seats: len(a.Seats()), Web: a.Web, Needs: needs}
	if n := len(m.problem.Radii); n > 0 {
		r.Most = m.problem.Radii[n-1]
	}
	return r
}
