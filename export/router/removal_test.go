package router_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sameMM is how near (mm) what is cut must come to the report: some times the
// rounding of a program's numbers.
const sameMM = 1e-4

// want is a hole that a program must make, worked out apart from the program.
type want struct {
	x, y     float64
	diameter float64 // at the face
	depth    float64 // of the tool's end
}

// replayed runs a program and returns the machine at its end.
func replayed(t testing.TB, program string) *machine {
	t.Helper()
	m := &machine{at: vec{0, 0, 50}, backOff: 0.254, tool: 1}
	require.NoError(t, interpret(program, m))
	assert.False(t, m.spin, "the spindle is off at the end")
	return m
}

// assertRemoves checks that a program makes exactly the holes wanted: each from
// the face to its depth, as wide as it should be, with nothing left standing in
// it, and nothing cut elsewhere. Tools gives each tool's diameter by its number.
func assertRemoves(t require.TestingT, m *machine, tools []float64, wanted []want) {
	cuts := make([][]motion, len(wanted))
	for _, s := range m.motions {
		low := math.Min(s.from.z, s.to.z)
		if low >= -sameMM {
			continue
		}
		in := holesOf(s, tools[s.tool-1]/2, wanted)
		require.NotEmpty(t, in, "a cut where there is no hole: %+v", s)
		for _, k := range in {
			cuts[k] = append(cuts[k], s)
		}
		sideways := s.from.x != s.to.x || s.from.y != s.to.y
		assert.False(t, s.rapid && sideways, "fast and sideways below the face: %+v", s)
	}
	for k, w := range wanted {
		require.NotEmpty(t, cuts[k], "no cut at %+v", w)
		assertHole(t, w, cuts[k], tools)
	}
	assertAirIsAir(t, m.motions)
}

// holesOf returns the holes within which a motion keeps the whole tool. Holes on
// one axis share their motions.
func holesOf(s motion, radius float64, wanted []want) []int {
	var in []int
	for k, w := range wanted {
		reach := math.Max(math.Hypot(s.from.x-w.x, s.from.y-w.y), math.Hypot(s.to.x-w.x, s.to.y-w.y))
		if s.arc {
			reach = math.Hypot(s.centre.x-w.x, s.centre.y-w.y) + math.Hypot(s.from.x-s.centre.x, s.from.y-s.centre.y)
		}
		deepEnough := math.Min(s.from.z, s.to.z) >= -w.depth-sameMM
		if reach+radius <= w.diameter/2+sameMM && deepEnough {
			in = append(in, k)
		}
	}
	return in
}

// assertHole checks one hole: what swept its floor.
func assertHole(t require.TestingT, w want, cuts []motion, tools []float64) {
	var swept [][2]float64 // rings cleared at the floor, by their inner and outer radius
	for _, s := range cuts {
		if math.Abs(s.to.z+w.depth) > sameMM {
			continue
		}
		r := tools[s.tool-1] / 2
		switch off := math.Hypot(s.to.x-w.x, s.to.y-w.y); {
		case s.arc && s.from.z == s.to.z:
			path := math.Hypot(s.from.x-s.centre.x, s.from.y-s.centre.y)
			swept = append(swept, [2]float64{path - r, path + r})
		case !s.arc && off <= sameMM:
			swept = append(swept, [2]float64{-r, r})
		}
	}
	slices.SortFunc(swept, func(a, b [2]float64) int {
		if a[0] < b[0] {
			return -1
		}
		return 1
	})
	clear := 0.0
	for _, s := range swept {
		if s[0] <= clear {
			clear = math.Max(clear, s[1])
		}
	}
	assert.InDelta(t, w.diameter/2, clear, sameMM, "cleared from the axis to the wall, all at the floor: %+v", w)
}

// assertAirIsAir checks that fast moves below the face only go up where the tool
// has just been, or down no further than it has been there.
func assertAirIsAir(t require.TestingT, all []motion) {
	type spot struct{ x, y float64 }
	deepest := map[spot]float64{}
	for _, s := range all {
		at := spot{s.to.x, s.to.y}
		if s.rapid && s.to.z < 0 && s.to.z < s.from.z {
			assert.GreaterOrEqual(t, s.to.z, deepest[at], "fast into the work: %+v", s)
		}
		deepest[at] = math.Min(deepest[at], s.to.z)
	}
}
