package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words/wordstest"
	"stopwright/detent/plan"
)

func TestDecodeProblems(t *testing.T) {
	example := fileText(t, provedFile)
	long := strings.Repeat("é", plan.MaxText+1)
	for _, c := range []struct{ why, path, value, want string }{
		{"format of something else", "format", `"other"`, `format is "other", must be "stopwright"`},
		{"format missing", "format", ``, `format is missing, must be "stopwright"`},
		{"version missing", "version", ``, `version is missing, must be a whole number, 1`},
		{"a required section missing", "arrangement", ``, `arrangement is missing, must be an object in { }`},
		{"a required section missing", "turntable", ``, `turntable is missing, must be an object in { }`},
		{"a required section missing", "base", ``, `base is missing, must be an object in { }`},
		{"a required section missing", "catch", ``, `catch is missing, must be an object in { }`},
		{"a required list missing", "catches", ``, `catches is missing, must be a list in [ ]`},
		{"a required section missing", "seat", ``, `seat is missing, must be an object in { }`},
		{"a required list missing", "stops", ``, `stops is missing, must be a list in [ ]`},
		{"a required item key missing", "catches[0].name", ``, `catches[0].name is missing, must be a name of 1 to 10000 characters`},
		{"a required item key missing", "catches[0].radius", ``, `catches[0].radius is missing, must be a number, 0.1 to 10000 mm`},
		{"a required item key missing", "stops[1].angle", ``, `stops[1].angle is missing, must be a number, -360 to 360 degrees`},
		{"a required item key missing", "features[0].part", ``, `features[0].part is missing, must be "turntable", "base" or "collar"`},
		{"a hole's place missing", "features[0].x", ``, `features[0].x is missing, must be a number, -10000 to 10000 mm`},
		{"a slot's end missing", "features[1].y2", ``, `features[1].y2 is missing, must be a number, -10000 to 10000 mm`},
		{"an arc slot's width missing", "features[2].width", ``, `features[2].width is missing, must be a number, 0.1 to 10000 mm`},
		{"a required item key missing", "tool.marks[0].x", ``, `tool.marks[0].x is missing, must be a number, -10000 to 10000 mm`},
		{"a required item key missing", "readings[0].measured", ``, `readings[0].measured is missing, must be a number, -360 to 360 degrees`},
		{"a required item key missing", "as_drilled[0].y", ``, `as_drilled[0].y is missing, must be a number, -10000 to 10000 mm`},

		{"a key misspelt", "turntable.diametre", `260`, `turntable.diametre is 260, must be left out: there is no such key`},
		{"an unknown key at the top", "colour", `"red"`, `colour is "red", must be left out: there is no such key`},
		{"an unknown key that could garble the message", "seat.a\nb", `{}`, `seat["a\nb"] is an object, must be left out: there is no such key`},
		{"an unknown key in an item", "stops[0].side", `[1]`, `stops[0].side is a list of 1, must be left out: there is no such key`},
		{"keys are exact", "Title", `""`, `Title is "", must be left out: there is no such key`},
		{"a rectangle's key on a disc", "base", `{"shape": "disc", "width": 340}`, `base.width is 340, must be left out: it belongs to rectangle, not to disc`},
		{"a disc's key on a rectangle", "base.diameter", `340`, `base.diameter is 340, must be left out: it belongs to disc, not to rectangle`},
		{"a slot's key on an arc slot", "features[2].x", `0`, `features[2].x is 0, must be left out: it belongs to hole or slot, not to arc_slot`},
		{"an unknown shape: nothing said of width and depth", "base.shape", `"oval"`, `base.shape is "oval", must be "rectangle" or "disc"`},
		{"an unknown kind: nothing said of its geometry", "features[1].kind", `"groove"`, `features[1].kind is "groove", must be "hole", "slot" or "arc_slot"`},
		{"kind missing: nothing said of its geometry", "features[1].kind", ``, `features[1].kind is missing, must be "hole", "slot" or "arc_slot"`},

		{"a text for a number", "face_gap", `"0.2"`, `face_gap is "0.2", must be a number, -5 to 50 mm`},
		{"null for a number", "catch.protrusion", `null`, `catch.protrusion is null, must be a number, 0.1 to 100 mm`},
		{"null for a number that may be absent", "shop.reference", `null`, `shop.reference is null, must be a number, -360 to 360 degrees`},
		{"a number for a text", "title", `7`, `title is 7, must be UTF-8 text of at most 10000 characters`},
		{"a text for a yes or no", "stops[1].both_sides", `"yes"`, `stops[1].both_sides is "yes", must be true or false`},
		{"a list for an object", "seat", `[]`, `seat is a list of 0, must be an object in { }`},
		{"a number for a section that may be absent", "collar", `7`, `collar is 7, must be an object in { }`},
		{"an object for a list", "features", `{}`, `features is an object, must be a list in [ ]`},
		{"an item of the wrong type", "stops[0]", `36`, `stops[0] is 36, must be an object in { }`},
		{"a name of the wrong type", "stops[1].catches[0]", `1`, `stops[1].catches[0] is 1, must be a name of 1 to 10000 characters`},
		{"half a screw", "collar.screws.count", `7.5`, `collar.screws.count is 7.5, must be a whole number, 0 to 360 screws`},
		{"too many screws", "collar.screws.count", `361`, `collar.screws.count is 361, must be 0 to 360 screws`},
		{"more screws than an int holds", "collar.screws.count", `1e300`, `collar.screws.count is 1e300, must be a whole number, 0 to 360 screws`},

		{"a number beyond float64", "turntable.diameter", `1e999`, `turntable.diameter is 1e999, must be a number, 0.1 to 10000 mm`},
		{"a number near its end", "turntable.diameter", `1e308`, `turntable.diameter is 1e+308, must be 0.1 to 10000 mm`},
		{"a negative size", "turntable.thickness", `-18`, `turntable.thickness is -18, must be 0.1 to 10000 mm`},
		{"no pivot bore is 0, not less than a drill", "turntable.pivot_bore", `0.05`, `turntable.pivot_bore is 0.05, must be 0, or 0.1 to 10000 mm`},
		{"a word of another key", "arrangement.catch_in", `"collar"`, `arrangement.catch_in is "collar", must be "turntable" or "base"`},
		{"words are exact", "arrangement.positive_turn", `"Clockwise"`, `arrangement.positive_turn is "Clockwise", must be "clockwise" or "counterclockwise"`},
		{"an unknown guide", "turntable.guided_by", `"rail"`, `turntable.guided_by is "rail", must be "pivot" or "collar"`},
		{"an unknown form", "seat.form", `""`, `seat.form is "", must be "drilled" or "countersunk"`},
		{"an unknown method", "shop.method", `"laser"`, `shop.method is "laser", must be "hand-drill", "pillar-drill", "pillar-drill-guided", "router", "router-tight" or "measured"`},
		{"an unknown approach", "readings[0].approach", `"left"`, `readings[0].approach is "left", must be "", "clockwise" or "counterclockwise"`},
		{"a day that never was", "readings[0].date", `"2026-02-30"`, `readings[0].date is "2026-02-30", must be a date as 2026-11-20, or empty`},
		{"a date in another order", "readings[0].date", `"20.11.2026"`, `readings[0].date is "20.11.2026", must be a date as 2026-11-20, or empty`},
		{"a date with one digit", "readings[0].date", `"2026-2-3"`, `readings[0].date is "2026-2-3", must be a date as 2026-11-20, or empty`},
		{"a text too long", "notes", `"` + long + `"`, `notes is "` + long[:80] + `…", must be UTF-8 text of at most 10000 characters`},
		{"a name too long", "catches[0].name", `"` + long + `"`, `catches[0].name is "` + long[:80] + `…", must be a name of 1 to 10000 characters`},

		{"a blank name", "catches[0].name", `" "`, `catches[0].name is " ", must be a name of 1 to 10000 characters`},
		{"no catch", "catches", `[]`, `catches is a list of 0, must be 1 to 64 catches`},
		{"a name given twice", "catches", `[{"name": "A", "radius": 9}, {"name": "A", "radius": 8}]`, `catches[1].name is "A", must be a name that no other catch has`},
		{"a catch that is not there", "stops[1].catches", `["A", "B"]`, `stops[1].catches[1] is "B", must be the name of one of the catches`},
		{"a catch named twice", "stops[1].catches", `["A", "A"]`, `stops[1].catches[1] is "A", must be named only once`},
		{"travel backwards", "travel", `{"from": 60, "to": -60}`, `travel.from is 60, must be at most travel.to, which is -60`},
		{"an arc slot backwards", "features[2].from", `31`, `features[2].from is 31, must be at most features[2].to, which is 30`},
		{"humidity backwards", "shop.humidity.low", `71`, `shop.humidity.low is 71, must be at most shop.humidity.high, which is 70`},
	} {
		ps := problemsOf(t, edited(t, example, c.path, c.value))
		if strings.HasPrefix(c.path, "catches") { // then the stop that names A may be wrong too
			ps = ps[:1]
		}
		assert.Equal(t, c.want, ps.Error(), "%s: %s", c.path, c.why)
		wordstest.SaidInGerman(t, ps)
	}
}

func TestDecodeRepeatedKeys(t *testing.T) {
	for _, c := range []struct{ why, old, new, want string }{
		{"at the top", `"stops":`, `"title": "a", "title": "b", "stops":`, `title is "b", must be given only once`},
		{"in a section", `"turntable": {`, `"turntable": {"diameter": 260, "diameter": 26, "diameter": 2`, `turntable.diameter is 26, must be given only once`},
		{"in an item", `"radius": 105`, `"radius": 105, "radius": 105`, `catches[0].radius is 105, must be given only once`},
		{"a section", `"seat": {}`, `"seat": {}, "seat": {}`, `seat is an object, must be given only once`},
		{"a section that may be absent", `"seat": {}`, `"seat": {}, "collar": {}, "collar": {}`, `collar is an object, must be given only once`},
		{"written with an escape", `"seat": {}`, `"seat": {}, "s\u0065at": 7`, `seat is 7, must be given only once`},
	} {
		ps := problemsOf(t, strings.Replace(minimal, c.old, c.new, 1))
		assert.Equal(t, c.want, ps.Error(), c.why)
		wordstest.SaidInGerman(t, ps)
	}
}

func TestDecodeAllProblemsAtOnce(t *testing.T) {
	text := `{
	  "format": "stopwright", "version": 1, "arrangement": {"catch_in": "lid"}, "turntable": {"diameter": "wide"},
	  "base": {"shape": "disc", "width": 1e999, "thickness": 0}, "catch": {"ball": 6, "protrusion": 1e999},
	  "catches": [{"name": "A"}, {"name": 5, "radius": 105}], "travel": {"from": 90, "to": "x"},
	  "stops": [{"angle": 400, "catches": ["Q"]}, {"angel": 36}, 7], "rules": {"web": -1}
	}`
	assert.Equal(t, strings.Join([]string{
		// Not read, in the order of the keys ...
		`turntable.diameter is "wide", must be a number, 0.1 to 10000 mm`,
		`base.width is 1e999, must be left out: it belongs to rectangle, not to disc`,
		`catch.protrusion is 1e999, must be a number, 0.1 to 100 mm`,
		`catch.ball is 6, must be left out: there is no such key`,
		`catches[0].radius is missing, must be a number, 0.1 to 10000 mm`,
		`catches[1].name is 5, must be a name of 1 to 10000 characters`,
		`seat is missing, must be an object in { }`,
		`travel.to is "x", must be a number, -360 to 360 degrees`,
		`stops[1].angle is missing, must be a number, -360 to 360 degrees`,
		`stops[1].angel is 36, must be left out: there is no such key`,
		`stops[2] is 7, must be an object in { }`,
		// ... then out of range. Nothing follows from what was not read: the
		// catch Q may be the one whose name is 5, and travel may end at 100.
		`arrangement.catch_in is "lid", must be "turntable" or "base"`,
		`base.thickness is 0, must be 0.1 to 10000 mm`,
		`stops[0].angle is 400, must be -360 to 360 degrees`,
		`rules.web is -1, must be 0 to 100 mm`,
	}, "\n"), problemsOf(t, text).Error())
}

func TestProblemsAreBounded(t *testing.T) {
	stops := func(n int) string {
		return edited(t, minimal, "stops", "["+strings.TrimSuffix(strings.Repeat(`{"angle": 999},`, n), ",")+"]")
	}
	few := problemsOf(t, stops(50))
	assert.Equal(t, 50, strings.Count(few.Error(), "\n")+1, "as many as are printed")
	assert.NotContains(t, few.Error(), "more")

	some := problemsOf(t, stops(51))
	require.Len(t, some, 51)
	assert.True(t, strings.HasSuffix(some.Error(), "\n… and 1 more"), "one beyond")
	wordstest.SaidInGerman(t, some)

	many := problemsOf(t, stops(plan.MaxSeats))
	require.Len(t, many, 1000)
	assert.True(t, strings.HasSuffix(many.Error(), "\n… and at least 950 more"), "those not gathered are not counted")
	wordstest.SaidInGerman(t, many)

	var unknown strings.Builder
	for i := range 5000 {
		fmt.Fprintf(&unknown, `"k%d": 0,`, i)
	}
	require.Len(t, problemsOf(t, strings.Replace(minimal, "{", "{"+unknown.String(), 1)), 1000)
	unread := strings.TrimSuffix(strings.Repeat(`{},`, 5000), ",")
	require.Len(t, problemsOf(t, edited(t, minimal, "stops", "["+unread+"]")), 1000)
}
