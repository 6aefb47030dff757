package plan_test

import (
	"fmt"
	"math"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// rangeCase is the range of one number, written out by hand from the file
// format and not taken from the package.
type rangeCase struct {
	path   string
	lo, hi float64
	orZero bool
}

var ranges = []rangeCase{
	{"turntable.diameter", 0.1, 10000, false},
	{"turntable.thickness", 0.1, 10000, false},
	{"turntable.pivot_bore", 0.1, 10000, true},
	{"turntable.radial_play", 0, 50, false},
	{"turntable.bearing_radius", 0.1, 10000, true},
	{"base.width", 0.1, 10000, false},
	{"base.depth", 0.1, 10000, false},
	{"base.thickness", 0.1, 10000, false},
	{"collar.clearance", -5, 50, false},
	{"collar.outside_diameter", 0.1, 10000, false},
	{"collar.thickness", 0.1, 10000, false},
	{"collar.screws.circle", 0.1, 10000, false},
	{"collar.screws.diameter", 0.1, 100, false},
	{"collar.screws.start", -360, 360, false},
	{"face_gap", -5, 50, false},
	{"catch.ball_diameter", 0.1, 100, false},
	{"catch.protrusion", 0.1, 100, false},
	{"catch.free_force", 0, 1000, false},
	{"catch.flush_force", 0, 1000, false},
	{"catch.body_diameter", 0.1, 100, false},
	{"catch.body_length", 0.1, 100, false},
	{"catch.flange_diameter", 0.1, 100, true},
	{"catch.flange_thickness", 0.1, 100, false},
	{"catch.body_allowance", -5, 50, false},
	{"catch.recess_allowance", -5, 50, false},
	{"catches[0].azimuth", -360, 360, false},
	{"catches[0].radius", 0.1, 10000, false},
	{"seat.diameter", 0.1, 100, false},
	{"seat.depth", 0, 100, false},
	{"seat.drill_point", 60, 180, false},
	{"seat.countersink_angle", 30, 150, false},
	{"seat.relief_diameter", 0.1, 100, true},
	{"seat.chamfer", 0, 50, false},
	{"making.knock_out", 0.1, 100, true},
	{"making.pivot.turntable", -5, 50, false},
	{"making.pivot.base", -5, 50, false},
	{"making.screws.pilot", 0.1, 100, true},
	{"making.screws.pilot_depth", 0, 100, false},
	{"making.screws.head", 0.1, 100, true},
	{"making.screws.head_depth", 0.1, 100, false},
	{"making.dust.width", 0.1, 100, true},
	{"making.dust.bridge", 1, 1000, false},
	{"making.end_stops.diameter", 0.1, 100, true},
	{"making.end_stops.radius", 0.1, 10000, true},
	{"making.end_stops.azimuth", -360, 360, false},
	{"making.end_stops.play", 0, 10, false},
	{"making.end_stops.beyond", 0, 45, false},
	{"making.clamp.diameter", 0.1, 100, true},
	{"making.clamp.radius", 0.1, 10000, true},
	{"making.clamp.azimuth", -360, 360, false},
	{"making.clamp.play", 0, 10, false},
	{"making.clamp.beyond", 0, 45, false},
	{"making.fence.width", 0.1, 100, true},
	{"making.fence.length", 0.1, 10000, false},
	{"making.fence.spacing", 0.1, 10000, false},
	{"making.fence.y", -10000, 10000, false},
	{"making.registration.diameter", 0.1, 100, true},
	{"making.registration.distance", 0.1, 10000, true},
	{"making.wear_ring.width", 0.1, 10000, true},
	{"making.wear_ring.thickness", 0.1, 100, false},
	{"making.carrier.width", 0.1, 10000, true},
	{"making.carrier.length", 0.1, 10000, false},
	{"making.carrier.thickness", 0.1, 100, false},
	{"making.carrier.pad_thickness", 0.1, 100, true},
	{"making.carrier.screw", 0.1, 100, false},
	{"making.carrier.pilot", 0.1, 100, false},
	{"making.carrier.spacing", 0.1, 10000, false},
	{"travel.from", -360, 60, false}, // the example's travel ends at 60
	{"travel.to", -60, 360, false},
	{"stops[1].angle", -360, 360, false},
	{"features[0].x", -10000, 10000, false},
	{"features[0].y", -10000, 10000, false},
	{"features[0].diameter", 0.1, 10000, false},
	{"features[1].x2", -10000, 10000, false},
	{"features[1].y2", -10000, 10000, false},
	{"features[1].width", 0.1, 10000, false},
	{"features[2].radius", 0.1, 10000, false},
	{"features[2].from", -360, 30, false},
	{"features[2].to", -30, 360, false},
	{"features[2].width", 0.1, 10000, false},
	{"scale", 0.05, 20, false},
	{"rules.web", 0, 100, false},
	{"rules.edge", 0, 100, false},
	{"shop.seat_error", 0, 50, false},
	{"shop.catch_error", 0, 50, false},
	{"shop.friction", 0, 1.5, false},
	{"shop.table_friction", 0, 1.5, false},
	{"shop.load", 0, 1000, false},
	{"shop.stock_width", 0.1, 10000, false},
	{"shop.target", 0, 360, false},
	{"shop.reference", -360, 360, false},
	{"shop.humidity.made_at", 0, 100, false},
	{"shop.humidity.low", 0, 70, false},
	{"shop.humidity.high", 35, 100, false},
	{"router.safe_height", 0.1, 100, false},
	{"router.approach", 0.1, 100, false},
	{"router.depth_per_pass", 0.1, 100, false},
	{"router.peck", 0.1, 100, true},
	{"router.feed", 1, 30000, false},
	{"router.plunge_feed", 1, 30000, false},
	{"router.rapid", 1, 30000, false},
	{"router.cutter", 0.1, 100, false},
	{"router.cutter_length", 0.1, 100, false},
	{"router.drill_to", 0.1, 100, true},
	{"router.breakthrough", 0, 100, false},
	{"router.spoil_board", 0, 100, false},
	{"tool.offset", -10000, 10000, false},
	{"tool.fence", -10000, 10000, false},
	{"tool.kerf", 0, 100, false},
	{"tool.reach", 0.1, 10000, true},
	{"tool.fence_length", 0.1, 10000, false},
	{"tool.fence_thickness", 0.1, 10000, false},
	{"tool.fence_opening", 0.1, 10000, true},
	{"tool.fence_screw", 0.1, 100, false},
	{"tool.fence_inset", 0.1, 10000, false},
	{"tool.fence_underside", 0, 10000, false},
	{"tool.marks[0].angle", -360, 360, false},
	{"tool.marks[0].x", -10000, 10000, false},
	{"readings[0].angle", -360, 360, false},
	{"readings[0].measured", -360, 360, false},
	{"as_drilled[0].angle", -360, 360, false},
	{"as_drilled[0].x", -10000, 10000, false},
	{"as_drilled[0].y", -10000, 10000, false},
}

func TestRanges(t *testing.T) {
	example := encoded(t, fullPlan(t))
	number := func(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
	for _, c := range append(ranges, rangeCase{"base.diameter", 0.1, 10000, false}) {
		text := example
		if c.path == "base.diameter" {
			text = edited(t, text, "base", `{"shape": "disc"}`)
		}
		inside := []float64{c.lo, c.hi}
		if c.orZero {
			inside = append(inside, 0)
		}
		for _, x := range inside {
			_, err := plan.Decode(strings.NewReader(edited(t, text, c.path, number(x))))
			assert.NoError(t, err, "%s may be %v", c.path, x)
		}
		for _, x := range []float64{math.Nextafter(c.lo, math.Inf(-1)), math.Nextafter(c.hi, math.Inf(1))} {
			ps := problemsOf(t, edited(t, text, c.path, number(x)))
			require.NotEmpty(t, ps, "%s may not be %v", c.path, x)
			assert.Contains(t, ps.Error(), number(x), "%s: the value is named", c.path)
		}
	}
}

// TestRangesNamed sees to it that the table above leaves no number out, and
// that the range told is the range held.
func TestRangesNamed(t *testing.T) {
	listed := map[string]rangeCase{}
	for _, c := range ranges {
		c.path = strings.NewReplacer("[0]", "[]", "[1]", "[]", "[2]", "[]").Replace(c.path)
		listed[c.path] = c
	}
	for _, k := range plan.Keys() {
		if !strings.Contains(k.Allowed, " to ") || strings.Contains(k.Allowed, "characters") {
			continue // no number
		}
		switch k.Path {
		case "collar.screws.count", "base.diameter", "router.spindle": // have tests of their own
			continue
		}
		c, ok := listed[k.Path]
		require.True(t, ok, "%s has no range in the table", k.Path)
		switch k.Path {
		case "travel.from", "travel.to", "features[].from", "features[].to", "shop.humidity.low", "shop.humidity.high":
			continue // limited further by another key
		}
		want := fmt.Sprintf("%v to %v", c.lo, c.hi)
		if c.orZero {
			want = "0, or " + want
		}
		assert.True(t, strings.HasPrefix(k.Allowed, want), "%s: %s", k.Path, k.Allowed)
	}
}

func TestValidateRefusesNaNAndInfinity(t *testing.T) {
	p := fullPlan(t)
	require.NoError(t, plan.Validate(p))
	tried := 0
	leaves(reflect.ValueOf(&p), "plan", func(path string, leaf reflect.Value) {
		if leaf.Kind() != reflect.Float64 {
			return
		}
		was := leaf.Float()
		for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
			leaf.SetFloat(x)
			var ps plan.Problems
			require.ErrorAs(t, plan.Validate(p), &ps, "%s = %v", path, x)
			assert.EqualValues(t, strconv.FormatFloat(x, 'g', -1, 64), ps[0].Value, path)
			tried++
		}
		leaf.SetFloat(was)
	})
	require.Greater(t, tried, 3*len(ranges), "every number in the plan, those of no kind included")
	require.NoError(t, plan.Validate(p))
}

func TestValidateText(t *testing.T) {
	p := plan.Default()
	p.Notes = strings.Repeat("é", plan.MaxText)
	require.NoError(t, plan.Validate(p), "characters count, not bytes")
	p.Notes = "\xff"
	require.ErrorContains(t, plan.Validate(p), "notes is ", "bytes that a file could not give back")
}

func TestValidateCounts(t *testing.T) {
	stops := func(n int, s plan.Stop) []plan.Stop {
		list := make([]plan.Stop, n)
		for i := range list {
			list[i] = s
		}
		return list
	}
	catches := func(n int) (list []plan.Placement, names []string) {
		for i := range n {
			list = append(list, plan.Placement{Name: fmt.Sprint("C", i), Radius: 100})
			names = append(names, fmt.Sprint("C", i))
		}
		return list, names
	}
	all, names := catches(plan.MaxCatches)
	over, overNames := catches(plan.MaxCatches + 1)

	for _, c := range []struct {
		why  string
		edit func(p *plan.Plan)
		want string // empty: allowed
	}{
		{"no stops", func(p *plan.Plan) { p.Stops = nil }, ""},
		{"as many stops as there may be", func(p *plan.Plan) { p.Stops = stops(10000, plan.Stop{Angle: 1}) }, ""},
		{
			"one more", func(p *plan.Plan) { p.Stops = stops(10001, plan.Stop{Angle: 1}) },
			"stops is a list of 10001, must be 0 to 10000 stops",
		},
		{"as many on both sides", func(p *plan.Plan) { p.Stops = stops(5000, plan.Stop{Angle: 1, BothSides: true}) }, ""},
		{"one more on both sides", func(p *plan.Plan) {
			p.Stops = append(stops(5000, plan.Stop{Angle: 1, BothSides: true}), plan.Stop{})
		}, "stops is 10001 seats, must be at most 10000 seats, counting both sides and every catch"},
		{"0 has no other side", func(p *plan.Plan) { p.Stops = stops(10000, plan.Stop{BothSides: true}) }, ""},
		{"nor has -0", func(p *plan.Plan) {
			p.Stops = stops(10000, plan.Stop{Angle: math.Copysign(0, -1), BothSides: true})
		}, ""},
		{"every catch at 156 stops", func(p *plan.Plan) {
			p.Catches, p.Stops = all, stops(156, plan.Stop{Angle: 1, Catches: names})
		}, ""},
		{"every catch at 157 stops", func(p *plan.Plan) {
			p.Catches, p.Stops = all, stops(157, plan.Stop{Angle: 1, Catches: names})
		}, "stops is 10048 seats, must be at most 10000 seats, counting both sides and every catch"},
		{"every catch at far too many stops", func(p *plan.Plan) {
			p.Catches, p.Stops = all, stops(10000, plan.Stop{Angle: 1, BothSides: true, Catches: names})
		}, "stops is 1280000 seats, must be at most 10000 seats, counting both sides and every catch"},
		{"65 catches", func(p *plan.Plan) { p.Catches = over }, "catches is a list of 65, must be 1 to 64 catches"},
		{
			"65 names", func(p *plan.Plan) { p.Catches, p.Stops = all, []plan.Stop{{Catches: overNames}} },
			"stops[0].catches is a list of 65, must be 0 to 64 catches",
		},
		{"no catch", func(p *plan.Plan) { p.Catches = nil }, "catches is a list of 0, must be 1 to 64 catches"},
		{"10000 features", func(p *plan.Plan) { p.Features = features(10000) }, ""},
		{
			"10001 features", func(p *plan.Plan) { p.Features = features(10001) },
			"features is a list of 10001, must be 0 to 10000 features",
		},
		{"10000 readings", func(p *plan.Plan) { p.Readings = make([]plan.Reading, 10000) }, ""},
		{
			"10001 readings", func(p *plan.Plan) { p.Readings = make([]plan.Reading, 10001) },
			"readings is a list of 10001, must be 0 to 10000 readings",
		},
		{
			"10001 as drilled", func(p *plan.Plan) { p.AsDrilled = make([]plan.AsDrilled, 10001) },
			"as_drilled is a list of 10001, must be 0 to 10000 seats",
		},
		{
			"10001 marks", func(p *plan.Plan) {
				tool := plan.NewTool()
				tool.Marks = make([]plan.Mark, 10001)
				p.Tool = &tool
			},
			"tool.marks is a list of 10001, must be 0 to 10000 marks",
		},
		{"readings of a stop and catch that are gone", func(p *plan.Plan) {
			p.Readings = []plan.Reading{{Angle: 12}}
			p.AsDrilled = []plan.AsDrilled{{Angle: 12, Catch: "gone"}}
		}, ""},
	} {
		p := plan.Default()
		c.edit(&p)
		err := plan.Validate(p)
		if c.want == "" {
			assert.NoError(t, err, c.why)
		} else {
			assert.EqualError(t, err, c.want, c.why)
		}
	}
}

func features(n int) []plan.Feature {
	list := make([]plan.Feature, n)
	for i := range list {
		list[i] = plan.Feature{Part: plan.PartBase, Kind: plan.Hole, Diameter: 4}
	}
	return list
}

// TestDecodeCounts is for the lists that are refused before memory is taken.
func TestDecodeCounts(t *testing.T) {
	list := func(item string, n int) string {
		return "[" + strings.TrimSuffix(strings.Repeat(item+",", n), ",") + "]"
	}
	decoded(t, edited(t, minimal, "stops", list(`{"angle": 0}`, 10000)))
	for path, want := range map[string]string{
		"stops":      "stops is a list of 10001, must be 0 to 10000 stops",
		"catches":    "catches is a list of 10001, must be 1 to 64 catches",
		"features":   "features is a list of 10001, must be 0 to 10000 features",
		"readings":   "readings is a list of 10001, must be 0 to 10000 readings",
		"as_drilled": "as_drilled is a list of 10001, must be 0 to 10000 seats",
	} {
		assert.Equal(t, want, problemsOf(t, edited(t, minimal, path, list(`{}`, 10001))).Error())
	}
}
