package main

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func decoded(t *testing.T, file string) plan.Plan {
	t.Helper()
	p, err := plan.Decode(strings.NewReader(file))
	require.NoError(t, err)
	return p
}

// At half size rings and outlines halve; ball, seat and drills do not.
func TestTrial(t *testing.T) {
	t.Chdir(t.TempDir())
	file := edited(t, "sanding-table", func(p *plan.Plan) { p.Rules.Web, p.Shop.Target = 0.5, 0.5 }) // which half size keeps too
	path, whole := put(t, ".", "p.stopwright", file), decoded(t, file)
	for why, c := range map[string]struct {
		stdin, args string
		factor      float64
	}{
		"half size if not said":    {"", "trial " + path, 0.5},
		"from standard input":      {file, "trial -", 0.5},
		"larger":                   {"", "trial --size 1.5 " + path, 1.5},
		"with a decimal comma":     {"", "trial " + path + " --size 0,8", 0.8},
		"as a fraction":            {"", "trial " + path + " --size 3/4", 0.75},
		"into a file, over an old": {"", "trial " + path + " -o old", 0.5},
	} {
		t.Run(why, func(t *testing.T) {
			put(t, ".", "old", "old")
			r := cli(c.stdin, strings.Fields(c.args)...)
			r.silent(t)
			assert.Contains(t, r.notes, "note not-a-lock", "the trial is checked as its own plan")
			if strings.HasSuffix(c.args, "-o old") {
				assert.Empty(t, r.out)
				r.out = get(t, "old")
			}
			got := decoded(t, r.out)
			const thousandth = 0.001 // mm, to which a trial's lengths are rounded
			assert.InDelta(t, c.factor, got.Scale, 0)
			assert.InDelta(t, whole.Turntable.Diameter*c.factor, got.Turntable.Diameter, thousandth)
			assert.InDelta(t, whole.Catches[0].Radius*c.factor, got.Catches[0].Radius, thousandth)
			assert.Equal(t, whole.Seat, got.Seat)
			assert.Equal(t, whole.Catch, got.Catch)
			assert.Equal(t, whole.Stops, got.Stops)
			assert.Equal(t, []string{"old", "p.stopwright"}, entries(t, "."))
		})
	}
	assert.Equal(t, file, get(t, path))
}

// Two seats of 4.5 mm, 3 degrees apart on a ring of 105 mm, lie 5.5 mm apart; at
// half size they run into each other, and the trial is written all the same.
func TestATrialIsCheckedAsItsOwnPlan(t *testing.T) {
	file := edited(t, "sanding-table", func(p *plan.Plan) {
		p.Stops = []plan.Stop{{Angle: 0}, {Angle: 3}}
		p.Rules.Web = 0
	})
	cli(file, "check", "-").silent(t)
	r := cli(file, "trial", "-")
	assert.Equal(t, statusFindings, r.status)
	assert.Contains(t, r.err, "error seats-overlap: ")
	assert.InDelta(t, 0.5, decoded(t, r.out).Scale, 0)
}

func TestTrialsThatAreRefused(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	p := put(t, dir, "p.stopwright", demo(t, "camera-head"))
	for why, c := range map[string]struct {
		args   string
		status int
		says   string
	}{
		"no plan":                     {"trial", statusUnusable, "trial needs a PLAN; see: stopwright-cli help trial\n"},
		"the plate's own size":        {"trial PLAN --size 1", statusUnusable, "must be 0.05 to 20, and not 1"},
		"just too small":              {"trial PLAN --size 0.0499", statusUnusable, "must be 0.05 to 20, and not 1"},
		"just too large":              {"trial PLAN --size 20.001", statusUnusable, "must be 0.05 to 20, and not 1"},
		"no number":                   {"trial PLAN --size half", statusUnusable, `invalid value "half"`},
		"over the plan itself":        {"trial PLAN -o ./p.stopwright", statusUnusable, `"./p.stopwright" is the plan itself`},
		"no such plan":                {"trial nothing", statusUnusable, `cannot read "nothing"`},
		"where nothing can be put":    {"trial PLAN -o no/x", statusUnwritten, `cannot write "no/x": there is no folder "no/"`},
		"beyond what a plan may have": {"trial - --size 20", statusUnusable, "no trial of that size: base.width"},
	} {
		t.Run(why, func(t *testing.T) {
			huge := edited(t, "vice-base", func(p *plan.Plan) { p.Base.Width, p.Base.Depth = 1000, 1000 })
			r := cli(huge, strings.Fields(strings.ReplaceAll(c.args, "PLAN", p))...)
			if why == "where nothing can be put" { // what the trial is found to lack is told before
				r.err = r.err[strings.Index(r.err, program):]
			}
			r.complains(t, c.status, c.says)
			assert.Equal(t, []string{filepath.Base(p)}, entries(t, dir))
			assert.Equal(t, demo(t, "camera-head"), get(t, p))
		})
	}
}
