package detent_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// rounding is how far a distance (mm) may move when the plate is turned, up to
// 10 m from the pivot: half a turn's rounding is 3e-14 degrees, a coordinate's
// 2e-12 mm.
const rounding = 1e-9

func TestSolveIsSoundForEveryPlan(t *testing.T) {
	c := words.English()
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		require.NoError(t, plan.Validate(p))
		before := p.Clone()
		r := detent.Solve(p)
		require.Equal(t, before, p, "the plan is not written to")

		told := map[subject]bool{}
		for _, f := range r.Findings {
			for _, x := range []float64{f.Value, f.Limit} {
				require.False(t, math.IsNaN(x) || math.IsInf(x, 0), "%s has plain numbers", f.ID)
			}
			text := check.Sentence(r.Plate, f, c)
			for _, gap := range []string{"<nil>", "{{", "NaN", "Inf", "[check.", "-0 "} {
				require.NotContains(t, text, gap)
			}
			if len(f.Seats) > 0 {
				s := subject{f.ID, "seat", f.Seats[0]}
				require.NotContains(t, told, s, "at most one finding of an id for a seat")
				told[s] = true
				for _, v := range r.Plate.Seats[f.Seats[0]].Serves {
					if f.ID != "stop-outside-travel" && f.ID != "stop-repeated" { // those name only the stops at fault
						require.Contains(t, f.Angles, v.Angle)
					}
				}
			}
		}

		var b bytes.Buffer
		require.NoError(t, r.Encode(&b, c))
		require.True(t, json.Valid(b.Bytes()))
		require.NotRegexp(t, `-0[,\s\]]`, b.String(), "-0 is never written")
		require.True(t, bytes.Equal(b.Bytes(), encoded(t, detent.Solve(p))), "the same every time")
	})
}

func encoded(t require.TestingT, r detent.Report) []byte {
	var b bytes.Buffer
	require.NoError(t, r.Encode(&b, words.English()))
	return b.Bytes()
}

// TestTurningThePlateChangesNothing turns catches, features and screws about the
// pivot. The parts must be round.
func TestTurningThePlateChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		p.Base.Shape = plan.Disc
		turn := geom.Angle(rapid.Float64Range(-180, 180).Draw(t, "turn"))
		a, b := detent.Solve(p), detent.Solve(turnedBy(p, turn))
		require.Len(t, b.Plate.Seats, len(a.Plate.Seats))
		for i, s := range a.Plate.Seats {
			if s.Nearest >= 0 {
				require.InDelta(t, s.Web, b.Plate.Seats[i].Web, rounding)
			}
		}
		want, got := worsts(a.Findings), worsts(b.Findings)
		for s, v := range want {
			require.Contains(t, got, s)
			require.InDelta(t, v, got[s], rounding, "%v", s)
		}
		require.Len(t, got, len(want))
	})
}

// TestAddingAStopHidesNothing: whatever stop is added, each angle that a finding
// of some id named is still named by a finding of that id, and so is each pocket
// or feature that one was about. The finding may be another: the new stop can be
// the worse neighbour, or share the seat, and tags are counted anew. A new stop
// that shares a hole with an old one only nearly can move it by a millionth of a
// millimetre, or make one hole of two: findings about it may then rightly end, and
// such plans prove nothing here. A false click is left out: a stop put where it is
// makes it a wanted one.
func TestAddingAStopHidesNothing(t *testing.T) {
	named := func(r detent.Report) map[string]bool {
		out := map[string]bool{}
		for _, f := range r.Findings {
			if f.ID == "false-click" {
				continue
			}
			for _, a := range f.Angles {
				out[fmt.Sprint(f.ID, " stop at ", a)] = true
			}
			for _, s := range subjects(f) {
				if s.list != "seat" { // seats are counted anew
					out[fmt.Sprint(s)] = true
				}
			}
		}
		return out
	}
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		before := detent.Solve(p)
		if zero := before.Plate.Trueness.Reference; zero >= 0 { // another reference is another question
			angle := before.Plate.Stops[zero].Angle.Degrees()
			p.Shop.Reference = &angle
			before = detent.Solve(p)
		}
		p.Stops = append(slices.Clone(p.Stops), drawStop(t, p))
		after := detent.Solve(p)
		if !holesStay(before, after) {
			return
		}
		now := named(after)
		for what := range named(before) {
			if !now[what] {
				t.Fatalf("not told any more: %s", what)
			}
		}
	})
}

// holesStay reports whether every seat of one report is a hole of its own, at the
// same place, in a later one.
func holesStay(before, after detent.Report) bool {
	type service struct {
		angle geom.Angle
		catch int
	}
	hole := map[service]int{}
	for i, s := range after.Plate.Seats {
		for _, v := range s.Serves {
			hole[service{v.Angle, v.Catch}] = i
		}
	}
	taken := map[int]bool{}
	for _, s := range before.Plate.Seats {
		k := hole[service{s.Angle, s.Catch}]
		if taken[k] || after.Plate.Seats[k].Centre != s.Centre {
			return false
		}
		taken[k] = true
	}
	return true
}

// TestEveryFixMends applies each fix offered for a random plan: afterwards no
// finding of its id is about the same stops.
func TestEveryFixMends(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPlan(t)
		before := p.Clone()
		r := detent.Solve(p)
		for _, f := range r.Findings {
			fix := check.FixOf(r.Plate, f)
			if fix == nil {
				continue
			}
			after := fix.Apply(p)
			require.NoError(t, plan.Validate(after))
			mended := detent.Solve(after)
			for _, g := range mended.Findings {
				require.False(t, g.ID == f.ID && sameStops(r, f, mended, g), "%s of %v is mended", f.ID, f.Angles)
			}
			// Whoever writes to the new plan must not reach the old one.
			for i := range after.Catches {
				if after.Catches[i] != before.Catches[i] {
					after.Catches[i].Name = "written"
				}
			}
			if len(after.Stops) != len(before.Stops) {
				for i := range after.Stops {
					after.Stops[i].Label = "written"
				}
			}
			require.Equal(t, before, p, "the old plan is not written to, nor is what the fix changes shared with it")
		}
	})
}

// sameStops reports whether finding g of a later report is about the same stops
// as f: for two seats, the same stops with the same catches; for catches, or the
// form of all seats, the same catches; and else any stop of f.
func sameStops(r detent.Report, f check.Finding, later detent.Report, g check.Finding) bool {
	if f.ID == "stop-outside-travel" || f.ID == "stop-repeated" {
		return slices.ContainsFunc(g.Angles, func(a geom.Angle) bool { return slices.Contains(f.Angles, a) })
	}
	if len(f.Seats) == 0 {
		return slices.Equal(f.Pockets, g.Pockets)
	}
	if len(g.Seats) != 2 {
		return false
	}
	is := func(old, now int) bool {
		s := r.Plate.Seats[old]
		return slices.ContainsFunc(later.Plate.Seats[now].Serves, func(v plate.Service) bool {
			return v.Angle == s.Angle && v.Catch == s.Catch
		})
	}
	return is(f.Seats[0], g.Seats[0]) && is(f.Seats[1], g.Seats[1]) || is(f.Seats[0], g.Seats[1]) && is(f.Seats[1], g.Seats[0])
}

func TestWorst(t *testing.T) {
	p := plan.Default()
	worst, any := detent.Solve(p).Worst()
	assert.True(t, any)
	assert.Equal(t, check.Note, worst, "an empty plan has nothing wrong with it, but a detent is no lock")
	p.Stops = []plan.Stop{{Angle: 1}, {Angle: 1}}
	worst, any = detent.Solve(p).Worst()
	assert.True(t, any)
	assert.Equal(t, check.Error, worst)
}
