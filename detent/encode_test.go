package detent_test

import (
	"context"
	"encoding/json"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// decode reads an encoded report as any other program would.
func decode(t *testing.T, p plan.Plan) map[string]any {
	t.Helper()
	var out map[string]any
	require.NoError(t, json.Unmarshal(encoded(t, detent.Solve(p)), &out))
	return out
}

func keysOf(v any) []string {
	var out []string
	for k := range v.(map[string]any) {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

func items(v any) []any { return v.([]any) }

// ids returns the ids of encoded findings.
func ids(findings []any) []string {
	var out []string
	for _, f := range findings {
		out = append(out, f.(map[string]any)["id"].(string))
	}
	return out
}

func TestReportKeys(t *testing.T) {
	p := plan.Default() // catch in the turntable: seats in the base, seen from its top
	p.Seat = plan.Seat{Form: plan.Drilled, Diameter: 4.5, Depth: 6, DrillPoint: 118, CountersinkAngle: 90, Chamfer: 0.25}
	p.Catches = []plan.Placement{{Name: "A", Radius: 100}}
	p.Stops = []plan.Stop{{Angle: 90, Label: "across"}, {Angle: 87}}
	p.Features = []plan.Feature{{Part: plan.PartBase, Kind: plan.Hole, X: 100, Diameter: 1, Label: "screw"}}
	r := decode(t, p)
	assert.Equal(t, []string{"click", "cut_line", "findings", "pairs", "proving", "room", "season", "seats", "trueness"}, keysOf(r))

	seats := items(r["seats"])
	require.Len(t, seats, 2)
	s := seats[1].(map[string]any)
	assert.Equal(t, []string{
		"angle", "azimuth", "catch", "depth", "diameter", "drill_x", "drill_y", "face", "label", "part", "radius",
		"serves", "tag", "web", "x", "y",
	}, keysOf(s))
	web := s["web"]
	delete(s, "web")
	assert.Equal(t, map[string]any{
		"tag": "A2", "angle": 90.0, "label": "across", "catch": "A", "part": "base", "face": "top",
		"azimuth": 90.0, "radius": 100.0, "x": 100.0, "y": 0.0, "drill_x": 100.0, "drill_y": 0.0,
		"diameter": 5.0, "depth": 6.0, "serves": []any{map[string]any{"angle": 90.0, "catch": "A"}},
	}, s)
	// A chord of 3 degrees, from the tables: 200 x 0.0261769483.
	assert.InDelta(t, 200*0.0261769483-5, web, 1e-7)

	findings := items(r["findings"])
	assert.Equal(t, []string{"web-thin", "feature-overlap", "track-crossed", "dead-band-wide", "trueness-over-target", "dust-trapped", "not-a-lock"}, ids(findings),
		"a thin web, the screw in the seat and under the ball, holes placed by hand to a mark, seats without relief")
	for _, f := range findings {
		assert.Equal(t, []string{"angles", "features", "id", "limit", "severity", "text", "unit", "value"}, keysOf(f))
	}
}

func TestReportAtTheDrill(t *testing.T) {
	p := plan.Default()
	p.Arrangement.CatchIn = plan.PartBase
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 120, Radius: 100}}
	p.Stops = []plan.Stop{{Angle: 30}}
	r := decode(t, p)
	s := items(r["seats"])[0].(map[string]any)
	assert.Equal(t, "turntable", s["part"])
	assert.Equal(t, "underside", s["face"])
	assert.Equal(t, []any{100.0, 0.0}, []any{s["x"], s["y"]}, "the table has turned clockwise: 120 - 30")
	assert.Equal(t, []any{-100.0, 0.0}, []any{s["drill_x"], s["drill_y"]}, "lying on its face, left and right change places")
	assert.Contains(t, s, "web")
	assert.Nil(t, s["web"], "null when alone")
}

func TestEmptyReport(t *testing.T) {
	r := decode(t, plan.Default())
	assert.Empty(t, items(r["seats"]))
	assert.Equal(t, []string{"not-a-lock"}, ids(items(r["findings"])), "which is always said")
	assert.Len(t, items(r["click"]), 1, "the catch is known before the stops are")
}

func TestReportNamesEveryFeature(t *testing.T) {
	p := plan.Default()
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, Y: 105, Diameter: 5, Label: "foot <screw>"},
		{Part: plan.PartBase, Kind: plan.ArcSlot, Radius: 105, From: 20, To: 30, Width: 5},
	}
	var features, angles []any
	for _, f := range items(decode(t, p)["findings"]) {
		if f.(map[string]any)["id"] == "not-a-lock" {
			continue
		}
		assert.Equal(t, "track-crossed", f.(map[string]any)["id"])
		features = append(features, items(f.(map[string]any)["features"])...)
		angles = append(angles, items(f.(map[string]any)["angles"])...)
	}
	assert.Equal(t, []any{"foot <screw>", "curved slot 2"}, features)
	assert.Empty(t, angles)
	assert.Contains(t, string(encoded(t, detent.Solve(p))), "foot <screw>", "written as it is, for a person to read")
}

func TestStudyStopsWhenTold(t *testing.T) {
	r := detent.Solve(plan.Default())
	ctx, cancel := context.WithCancel(t.Context())
	got, err := detent.Study(ctx, r)
	require.NoError(t, err)
	assert.Equal(t, r.Plate, got.Plate)
	cancel()
	_, err = detent.Study(ctx, r)
	assert.ErrorIs(t, err, context.Canceled)
}
