package main

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/detent/plan"
)

func TestNew(t *testing.T) {
	t.Chdir(t.TempDir())
	r := cli("", "new")
	r.silent(t)
	assert.Equal(t, demo(t, "sanding-table"), r.out, "the first is the one to begin with")

	for _, d := range plans.List() {
		r := cli("", "new", "--demo", d.Name)
		r.silent(t)
		assert.Equal(t, demo(t, d.Name), r.out)

		put(t, ".", "file", "old")
		r = cli("", "new", "--demo", d.Name, "-o", "file")
		r.silent(t)
		assert.Empty(t, r.out)
		assert.Equal(t, demo(t, d.Name), get(t, "file"))
	}
	assert.Equal(t, []string{"file"}, entries(t, "."))
}

func TestNewLists(t *testing.T) {
	t.Chdir(t.TempDir())
	r := cli("", "new", "--list", "-o", "file")
	r.silent(t)
	assert.Equal(t, "sanding-table   Swivelling sanding table\n"+
		"camera-head     Camera head\n"+
		"vice-base       One-sided vice base\n", r.out)
	assert.Empty(t, entries(t, "."), "a list writes nothing")
}

// The notes that the vice base gets, and every plan.
const (
	dustDown = "note dust-trapped: The seats are blind: they open downwards and lose most of the dust, but not what the balls press in."
	noLock   = "note not-a-lock: A detent positions, a clamp locks: clamp before cutting."
)

func TestCheck(t *testing.T) {
	for name, c := range map[string]struct {
		file   string
		status int
		out    []string // lines
	}{
		"clean":   {demo(t, "sanding-table"), statusGood, []string{noLock}},
		"no stop": {edited(t, "vice-base", func(p *plan.Plan) { p.Stops = nil }), statusGood, []string{noLock}},
		"only a warning": {edited(t, "sanding-table", func(p *plan.Plan) { p.Shop.Load = 1 }), statusGood, []string{
			"warning table-lifts: Together the balls lift with 18.8 N, and the load presses down with 9.8 N.", noLock, // 20 - 12*0.1 N at the face
		}},
		"overlap": {overlapping(t), statusFindings, []string{
			"error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.", // 6 - 2*80*sin(0.25°)
			dustDown, noLock,
		}},
		"two of them": {edited(t, "vice-base", func(p *plan.Plan) {
			p.Stops = append(p.Stops, plan.Stop{Angle: 8})
			p.Travel.To = 89
		}), statusFindings, []string{
			"error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.",
			"error stop-outside-travel: The stop at 90° lies outside the travel from -3° to 89°.",
			dustDown, noLock,
		}},
	} {
		t.Run(name, func(t *testing.T) {
			path := put(t, t.TempDir(), "p.stopwright", c.file)
			for _, r := range []result{cli("", "check", path), cli(c.file, "check", "-")} {
				assert.Equal(t, c.status, r.status)
				assert.Equal(t, strings.Join(c.out, "\n")+"\n", r.out)
				assert.Empty(t, r.err)
			}
		})
	}
}

func TestFiveThousandStopsAreGoodInput(t *testing.T) {
	file := edited(t, "vice-base", func(p *plan.Plan) {
		p.Turntable.Diameter, p.Turntable.BearingRadius = 9800, 2000
		p.Base.Width, p.Base.Depth = 9900, 9900
		p.Catches[0].Radius = 4800
		p.Travel = plan.Span{From: 0, To: 360}
		p.Stops = nil
		p.Rules.Web = 0 // 2 pi 4800 / 5000 = 6.03 mm between seats of 6 mm
		for i := range 5000 {
			p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) * 360 / 5000})
		}
	})
	r := cli(file, "check", "-")
	r.silent(t)
	assert.Equal(t, dustDown+"\n"+noLock+"\n", r.out)

	dir := t.TempDir()
	cli(file, "export", "-", "--dxf", filepath.Join(dir, "a.dxf"), "--csv", filepath.Join(dir, "a.csv")).silent(t)
	assert.ElementsMatch(t, []string{"a.dxf", "a-base.dxf", "a-turntable.dxf", "a.csv"}, entries(t, dir))
}

// The keys that other programs rely on.
func TestReportAsJSON(t *testing.T) {
	seatKeys := []string{
		"angle", "label", "catch", "part", "face", "azimuth", "radius", "x", "y",
		"drill_x", "drill_y", "diameter", "depth", "web", "serves",
	}
	clickKeys := []string{
		"catch", "drop", "contact_angle", "play", "play_angle", "seated_force", "riding_force", "holding_torque",
		"centring_torque", "drag_torque", "capture_angle", "dead_band", "track_dent",
	}
	findingKeys := []string{"id", "severity", "angles", "features", "value", "limit", "unit", "text"}
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			path := put(t, t.TempDir(), d.File(), demo(t, d.Name))
			r := cli("", "report", path, "--json")
			r.silent(t)
			var got struct {
				Seats    []map[string]any
				Findings []map[string]any
				Click    []map[string]any
			}
			require.NoError(t, json.Unmarshal([]byte(r.out), &got))
			require.NotEmpty(t, got.Seats)
			require.NotEmpty(t, got.Findings, "there is always a note")
			require.Len(t, got.Click, 1, "one catch")
			for k, x := range got.Click[0] {
				assert.NotNil(t, x, "%s: the demonstrations click", k)
			}
			for _, k := range clickKeys {
				assert.Contains(t, got.Click[0], k)
			}
			for _, s := range got.Seats {
				for _, k := range seatKeys {
					assert.Contains(t, s, k)
				}
			}
		})
	}
	r := cli(overlapping(t), "report", "-", "--json", "--quick")
	assert.Equal(t, statusFindings, r.status)
	assert.Empty(t, r.err)
	var got struct{ Findings []map[string]any }
	require.NoError(t, json.Unmarshal([]byte(r.out), &got))
	require.Len(t, got.Findings, 3, "and two notes")
	for _, k := range findingKeys {
		assert.Contains(t, got.Findings[0], k)
	}
	assert.Equal(t, []any{7.5, 8.0}, got.Findings[0]["angles"])
}

// A ball of 6 mm that stands out 2 mm sinks 3 - √(3² - 2.25²) mm in a seat of
// 4.5 mm. Each plan has one thing wrong with that, and another program reads
// what and by how much.
func TestReportTellsWhatIsWrongWithTheClick(t *testing.T) {
	const exact = 1e-9
	sinks := 3 - math.Sqrt(9-2.25*2.25)
	for _, c := range []struct {
		why          string
		change       func(*plan.Plan)
		id           string
		value, limit float64
		unit         string
	}{
		{
			"a mouth of 0.99 of the ball", func(p *plan.Plan) { p.Seat.Diameter, p.Catch.Protrusion = 0.99*6, 3 },
			"ball-locks", (math.Asin(0.99) + math.Atan(0.15)) * 180 / math.Pi, 90, "deg",
		},
		{"a ball 0.2 mm short of the rim", func(p *plan.Plan) { p.FaceGap = 2 - sinks + 0.2 }, "ball-short", sinks - 0.2, sinks, "mm"},
		{
			"a flat-bottomed seat 0.8 mm deep", func(p *plan.Plan) { p.Seat.Depth, p.Seat.DrillPoint, p.Seat.ReliefDiameter = 0.8, 180, 0 },
			"seat-bottoms", 0.8, sinks, "mm",
		},
		{"faces warped to a gap of 1.8 mm", func(p *plan.Plan) { p.FaceGap = 1.8 }, "ball-short", 0.2, sinks, "mm"},
	} {
		t.Run(c.why, func(t *testing.T) {
			r := cli(edited(t, "sanding-table", c.change), "report", "-", "--json")
			assert.Equal(t, statusFindings, r.status)
			var got struct {
				Findings []struct {
					ID, Severity, Unit string
					Value, Limit       float64
					Angles             []float64
				}
				Click []map[string]any
			}
			require.NoError(t, json.Unmarshal([]byte(r.out), &got))
			f := got.Findings[0]
			assert.Equal(t, c.id, f.ID)
			assert.Equal(t, "error", f.Severity)
			assert.InDelta(t, c.value, f.Value, exact)
			assert.InDelta(t, c.limit, f.Limit, exact)
			assert.Equal(t, c.unit, f.Unit)
			assert.Len(t, f.Angles, 13, "every stop")
			for _, other := range got.Findings[1:] {
				assert.NotEqual(t, "error", other.Severity, other.ID)
			}
			require.Len(t, got.Click, 1)
			assert.Equal(t, "A", got.Click[0]["catch"])
			assert.Equal(t, c.id == "ball-locks", got.Click[0]["holding_torque"] == nil)
		})
	}
}

func TestReportAsTable(t *testing.T) {
	r := cli(overlapping(t), "report", "-")
	assert.Equal(t, statusFindings, r.status)
	assert.Empty(t, r.err)
	lines := strings.Split(strings.TrimSuffix(r.out, "\n"), "\n")
	assert.Equal(t, "One-sided vice base", lines[0])
	assert.Equal(t, "8 seats in the turntable, underside up, as it lies at the drill; mouth 6 mm, 5 mm deep.", lines[2])
	head := slices.IndexFunc(lines, func(s string) bool { return strings.HasPrefix(strings.TrimSpace(s), "seat ") })
	require.Positive(t, head)
	// x = 80 sin 20°, y = 80 cos 20°; the turntable lies underside up: x changes sign.
	assert.Equal(t, []string{"A1", "A", "20.000", "80.000", "27.362", "75.175", "-27.362", "75.175", "4.465", "0", "square"},
		strings.Fields(lines[head+1]))
	assert.Contains(t, lines[len(lines)-3], "error seats-overlap: ")
	assert.Equal(t, []string{dustDown, noLock}, lines[len(lines)-2:])

	r = cli(edited(t, "vice-base", func(p *plan.Plan) { p.Stops, p.Seat.Depth = nil, 0 }), "report", "-")
	r.silent(t)
	assert.Contains(t, r.out, "0 seats in the turntable")
	assert.Contains(t, r.out, "mouth 6 mm, right through.")
	assert.True(t, strings.HasSuffix(r.out, "\n\n"+noLock+"\n"), r.out)
}

func TestExport(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	put(t, dir, "p.stopwright", demo(t, "sanding-table"))
	r := cli("", "export", "p.stopwright", "--dxf", "a.dxf", "--pdf", "a.pdf", "--csv", "a.csv", "--date", "2026-11-20", "--paper", "LETTER")
	r.silent(t)
	assert.Empty(t, r.out)
	files := []string{"a-base.dxf", "a-collar.dxf", "a-turntable.dxf", "a.csv", "a.dxf", "a.pdf"}
	assert.Equal(t, append(files, "p.stopwright"), entries(t, dir))
	assert.Contains(t, get(t, "a.csv"), "2026-11-20")
	assert.Contains(t, get(t, "a.pdf"), "612.00 792.00")

	other := t.TempDir()
	t.Chdir(other)
	cli(demo(t, "sanding-table"), "export", "-", "--dxf", "a.dxf", "--pdf", "a.pdf", "--csv", "a.csv", "--date", "2026-11-20", "--paper", "letter").silent(t)
	for _, name := range files {
		assert.Equal(t, get(t, filepath.Join(dir, name)), get(t, name), "the same bytes every time")
	}
}

// The layers have their depths in their names where that is asked for, and only
// then.
func TestExportNamesLayersWithDepths(t *testing.T) {
	t.Chdir(t.TempDir())
	cli(demo(t, "sanding-table"), "export", "-", "--dxf", "a.dxf").silent(t)
	assert.NotContains(t, get(t, "a.dxf"), "-THROUGH")
	cli(demo(t, "sanding-table"), "export", "-", "--layer-depths", "--dxf", "a.dxf").silent(t)
	assert.Contains(t, get(t, "a.dxf"), "OUTLINE-THROUGH")
	assert.Contains(t, get(t, "a-base.dxf"), "SEATS-6_00MM")
}

func TestExportWritesWhateverTheFindings(t *testing.T) {
	t.Chdir(t.TempDir())
	r := cli(overlapping(t), "export", "-", "--csv", "a.csv")
	assert.Equal(t, statusFindings, r.status)
	assert.Empty(t, r.out)
	assert.Equal(t, "error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.\n", r.err)
	assert.Equal(t, dustDown+"\n"+noLock+"\n", r.notes)
	assert.NotEmpty(t, get(t, "a.csv"))
}

func TestFilesThatCannotBeWritten(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	p := put(t, dir, "p.stopwright", demo(t, "vice-base"))
	put(t, dir, "old.dxf", "old")
	require.NoError(t, os.Mkdir("folder", 0o755))
	before := entries(t, dir)
	for name, c := range map[string]struct {
		args   string
		status int
		says   string
	}{
		"new, no such folder":     {"new -o no/x", statusUnwritten, `cannot write "no/x": there is no folder "no/"`},
		"new, in a file":          {"new -o old.dxf/x", statusUnwritten, `cannot write "old.dxf/x": part of the path is a file`},
		"new, a folder":           {"new -o folder", statusUnwritten, `cannot write "folder": it is a folder`},
		"export, no such folder":  {"export PLAN --dxf old.dxf --csv no/x", statusUnwritten, `cannot write "no/x"`},
		"export, in a file":       {"export PLAN --dxf old.dxf --pdf old.dxf/x", statusUnwritten, `cannot write "old.dxf/x"`},
		"export, a folder":        {"export PLAN --csv folder --dxf old.dxf", statusUnwritten, `cannot write "folder"`},
		"export, twice one file":  {"export PLAN --dxf old.dxf --csv ./old.dxf", statusUnusable, `"./old.dxf" would be written twice`},
		"export, a part's file":   {"export PLAN --dxf old.dxf --csv old-base.dxf", statusUnusable, `"old-base.dxf" would be written twice`},
		"export, over its plan":   {"export PLAN --dxf old.dxf --csv p.stopwright", statusUnusable, `"p.stopwright" is the plan itself`},
		"export, worse than flaw": {"export - --csv no/x", statusUnwritten, `cannot write "no/x"`},
	} {
		t.Run(name, func(t *testing.T) {
			r := cli(demo(t, "camera-head"), strings.Fields(strings.ReplaceAll(c.args, "PLAN", p))...)
			r.complains(t, c.status, c.says)
			assert.Equal(t, 1, strings.Count(r.err, "\n"), "one line")
			assert.Equal(t, before, entries(t, dir))
			assert.Equal(t, "old", get(t, "old.dxf"))
			assert.Equal(t, demo(t, "vice-base"), get(t, p))
		})
	}
	r := cli(overlapping(t), "export", "-", "--csv", "no/x")
	assert.Equal(t, statusUnwritten, r.status, "that nothing was written matters more than what was found")
	assert.Contains(t, r.err, "seats-overlap")
	assert.Contains(t, r.err, "cannot write")
}
