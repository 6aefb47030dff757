package plan_test

import (
	"encoding/json"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// byPath returns a plan's fields by path, each path once.
func byPath(t testing.TB, p plan.Plan) map[string]plan.Field {
	t.Helper()
	out := map[string]plan.Field{}
	for _, f := range plan.Fields(p) {
		require.NotContains(t, out, f.Path, "a path names one value")
		out[f.Path] = f
	}
	return out
}

// another returns a field with a value that differs from its own and that
// [plan.Validate] need not accept.
func another(f plan.Field) plan.Field {
	switch f.Kind {
	case plan.NumberField, plan.CountField:
		f.Number++
	case plan.FlagField:
		f.Flag = !f.Flag
	case plan.TextField:
		f.Text += "x"
	case plan.ChoiceField:
		if f.Text == f.Choices[0] {
			f.Text = f.Choices[1]
		} else {
			f.Text = f.Choices[0]
		}
	}
	return f
}

// fixed matches the fields that say what the file is, or decide which other
// fields there are: setting one of the latter changes more than itself.
var fixed = regexp.MustCompile(`^(format|version|base\.shape|features\[\d+\]\.kind)$`)

// The written file is the judge: a field set must come out at its own key, and
// nowhere else.
func TestSetFieldWritesItsKeyAndNothingElse(t *testing.T) {
	before := byPath(t, fullPlan(t))
	require.Greater(t, len(before), 100, "the fullest plan has every section")
	full := fullPlan(t)
	for path, f := range before {
		if fixed.MatchString(path) {
			continue
		}
		p := full.Clone()
		want := another(f)
		require.True(t, plan.SetField(&p, want), path)
		after := byPath(t, p)
		require.Equal(t, want, after[path])
		after[path] = f
		require.Equal(t, before, after, "%s changed other fields", path)
	}
}

// pathsOf returns the paths of all values of a JSON text in their order, read
// by encoding/json alone.
func pathsOf(t testing.TB, text string) []string {
	t.Helper()
	d := json.NewDecoder(strings.NewReader(text))
	var out []string
	var value func(path string)
	value = func(path string) {
		token, err := d.Token()
		require.NoError(t, err)
		switch token {
		case json.Delim('{'):
			for d.More() {
				name, err := d.Token()
				require.NoError(t, err)
				value(strings.TrimPrefix(path+"."+name.(string), "."))
			}
		case json.Delim('['):
			for i := 0; d.More(); i++ {
				value(path + "[" + strconv.Itoa(i) + "]")
			}
		default:
			out = append(out, path)
			return
		}
		_, err = d.Token() // the closing bracket
		require.NoError(t, err)
	}
	value("")
	return out
}

// A form shows what a file holds, in the file's order. What is empty, or no trial
// and therefore not in the file, has a field too, to be filled in.
func TestFieldsFollowTheFile(t *testing.T) {
	inFile := pathsOf(t, encoded(t, fullPlan(t)))
	var shown []string
	for _, f := range plan.Fields(fullPlan(t)) {
		if slices.Contains(inFile, f.Path) {
			shown = append(shown, f.Path)
			continue
		}
		assert.True(t, f.Text == "" && !f.Flag && (f.Number == 0 || f.Path == "scale"), "%s is not in the file", f.Path)
	}
	assert.Equal(t, inFile, shown)
}

func TestFieldsHoldValuesAndUnits(t *testing.T) {
	p := fullPlan(t)
	p.Title, p.FaceGap = "Plate № 7", -0.25
	p.Stops[1].BothSides = true
	fields := byPath(t, p)
	for _, c := range []struct {
		why  string
		want plan.Field
	}{
		{"a text", plan.Field{Path: "title", Generic: "title", Kind: plan.TextField, Text: "Plate № 7"}},
		{"a length", plan.Field{Path: "face_gap", Generic: "face_gap", Unit: "mm", Range: plan.Range{Low: -5, High: 50}, Number: -0.25}},
		{"an item of a list", plan.Field{
			Path: "catches[0].azimuth", Generic: "catches[].azimuth", Unit: "degrees",
			Range: plan.Range{Low: -360, High: 360}, Number: p.Catches[0].Azimuth,
		}},
		{"a yes or no", plan.Field{
			Path: "stops[1].both_sides", Generic: "stops[].both_sides", Kind: plan.FlagField, Flag: true,
		}},
		{"a whole number", plan.Field{
			Path: "collar.screws.count", Generic: "collar.screws.count", Kind: plan.CountField,
			Unit: "screws", Range: plan.Range{High: 360}, Number: float64(p.Collar.Screws.Count),
		}},
		{"a choice", plan.Field{
			Path: "arrangement.catch_in", Generic: "arrangement.catch_in", Kind: plan.ChoiceField,
			Text: "turntable", Choices: []string{"turntable", "base"},
		}},
		{"a number a plan may lack", plan.Field{
			Path: "shop.reference", Generic: "shop.reference", Unit: "degrees",
			Range: plan.Range{Low: -360, High: 360}, Number: 36,
		}},
	} {
		assert.Equal(t, c.want, fields[c.want.Path], c.why)
	}
}

func TestRange(t *testing.T) {
	hardware := byPath(t, plan.Default())["catch.flange_diameter"].Range
	assert.Equal(t, plan.Range{Low: 0.1, High: 100, OrZero: true}, hardware)
	for x, want := range map[float64]bool{0: true, 0.09: false, 0.1: true, 100: true, 100.1: false, math.NaN(): false} {
		assert.Equal(t, want, hardware.Holds(x), x)
	}
}

func TestFieldsLeaveOutWhatDoesNotBelong(t *testing.T) {
	p := plan.Default()
	fields := byPath(t, p)
	for _, absent := range []string{"base.diameter", "collar.clearance", "tool.offset", "shop.reference", "stops[0].angle"} {
		assert.NotContains(t, fields, absent)
	}
	p.Base.Shape = plan.Disc
	fields = byPath(t, p)
	assert.Contains(t, fields, "base.diameter")
	assert.NotContains(t, fields, "base.width")
	assert.NotContains(t, fields, "base.depth")

	for kind, want := range map[plan.Kind][]string{
		plan.Hole:    {"x", "y", "diameter"},
		plan.Slot:    {"x", "y", "x2", "y2", "width"},
		plan.ArcSlot: {"radius", "from", "to", "width"},
	} {
		p := plan.Default()
		p.Features = []plan.Feature{{Part: plan.PartBase, Kind: kind}}
		var sizes []string
		for _, f := range plan.Fields(p) {
			if name, ok := strings.CutPrefix(f.Path, "features[0]."); ok && f.Kind == plan.NumberField {
				sizes = append(sizes, name)
			}
		}
		assert.Equal(t, want, sizes, kind)
	}
}

// The choices are those a file may say, so setting any one leaves a plan that
// can be saved; a base of the other shape has its own sizes ready.
func TestEveryChoiceIsOneTheFileAllows(t *testing.T) {
	kinds := 0
	for _, f := range plan.Fields(fullPlan(t)) {
		if f.Kind != plan.ChoiceField || strings.HasPrefix(f.Path, "features[") && strings.HasSuffix(f.Path, ".kind") {
			continue
		}
		kinds++
		for _, choice := range f.Choices {
			p := fullPlan(t)
			f.Text = choice
			require.True(t, plan.SetField(&p, f))
			assert.NoError(t, plan.Validate(p), "%s %s", f.Path, choice)
		}
	}
	require.Greater(t, kinds, 5)
}

func TestSetFieldRefusesWhatThePlanHasNot(t *testing.T) {
	for why, f := range map[string]plan.Field{
		"no such key":                   {Path: "turntable.weight", Number: 1},
		"an item beyond the list":       {Path: "catches[7].radius", Number: 90},
		"a key of the other shape":      {Path: "base.diameter", Number: 90},
		"a key of an absent section":    {Path: "collar.clearance", Number: 1},
		"a number that may be absent":   {Path: "shop.reference", Number: 1},
		"a text where a number belongs": {Path: "face_gap", Kind: plan.TextField, Text: "wide"},
		"no path":                       {Number: 1},
	} {
		p := plan.Default()
		assert.False(t, plan.SetField(&p, f), why)
		assert.Equal(t, plan.Default(), p, why)
	}
}

func TestSetFieldJudgesNothing(t *testing.T) {
	p := plan.Default()
	require.True(t, plan.SetField(&p, plan.Field{Path: "turntable.diameter", Number: -3}))
	assert.Equal(t, -3.0, p.Turntable.Diameter)
	assert.Error(t, plan.Validate(p))
}
