package main

import (
	"encoding/json"
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

func TestCheck(t *testing.T) {
	for name, c := range map[string]struct {
		file   string
		status int
		out    []string // lines
	}{
		"clean":   {demo(t, "sanding-table"), statusGood, []string{"no findings"}},
		"no stop": {edited(t, "vice-base", func(p *plan.Plan) { p.Stops = nil }), statusGood, []string{"no findings"}},
		"overlap": {overlapping(t), statusFindings, []string{
			"error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.", // 6 - 2*80*sin(0.25°)
		}},
		"two of them": {edited(t, "vice-base", func(p *plan.Plan) {
			p.Stops = append(p.Stops, plan.Stop{Angle: 8})
			p.Travel.To = 89
		}), statusFindings, []string{
			"error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.",
			"error stop-outside-travel: The stop at 90° lies outside the travel from -3° to 89°.",
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
	assert.Equal(t, "no findings\n", r.out)

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
	findingKeys := []string{"id", "severity", "angles", "features", "value", "limit", "unit", "text"}
	for _, d := range plans.List() {
		t.Run(d.Name, func(t *testing.T) {
			path := put(t, t.TempDir(), d.File(), demo(t, d.Name))
			r := cli("", "report", path, "--json")
			r.silent(t)
			var got struct {
				Seats    []map[string]any
				Findings []map[string]any
			}
			require.NoError(t, json.Unmarshal([]byte(r.out), &got))
			require.NotEmpty(t, got.Seats)
			require.NotNil(t, got.Findings, "an empty list, not null")
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
	require.Len(t, got.Findings, 1)
	for _, k := range findingKeys {
		assert.Contains(t, got.Findings[0], k)
	}
	assert.Equal(t, []any{7.5, 8.0}, got.Findings[0]["angles"])
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
	assert.Contains(t, lines[len(lines)-1], "error seats-overlap: ")

	r = cli(edited(t, "vice-base", func(p *plan.Plan) { p.Stops, p.Seat.Depth = nil, 0 }), "report", "-")
	r.silent(t)
	assert.Contains(t, r.out, "0 seats in the turntable")
	assert.Contains(t, r.out, "mouth 6 mm, right through.")
	assert.True(t, strings.HasSuffix(r.out, "\nno findings\n"), r.out)
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

func TestExportWritesWhateverTheFindings(t *testing.T) {
	t.Chdir(t.TempDir())
	r := cli(overlapping(t), "export", "-", "--csv", "a.csv")
	assert.Equal(t, statusFindings, r.status)
	assert.Empty(t, r.out)
	assert.Equal(t, "error seats-overlap: Seats A2 at 7.5° and A3 at 8° overlap by 5.3 mm.\n", r.err)
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
