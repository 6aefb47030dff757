package check

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// rounding is how far a value (mm or degrees) may be from the one reckoned in a
// fixture: well under the slack.
const rounding = 1e-11

// only returns the findings of one check.
func only(all []Finding, id string) []Finding {
	return slices.DeleteFunc(slices.Clone(all), func(f Finding) bool { return f.ID != id })
}

func TestFindings(t *testing.T) {
	for _, c := range All {
		require.NotEmpty(t, append(cases[c.ID], casesOneWayUp[c.ID]...), "%s has fixtures", c.ID)
		for _, fix := range cases[c.ID] {
			t.Run(c.ID+"/"+fix.why, func(t *testing.T) { judge(t, c, fix.plan, fix.want) })
			t.Run(c.ID+"/"+fix.why+"/other way up", func(t *testing.T) { judge(t, c, otherWayUp(fix.plan), fix.want) })
		}
		for _, fix := range casesOneWayUp[c.ID] {
			t.Run(c.ID+"/"+fix.why, func(t *testing.T) { judge(t, c, fix.plan, fix.want) })
		}
	}
}

// judge compares what a check finds in a plan with what it should.
func judge(t *testing.T, c Check, p plan.Plan, want []expected) {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	pl := plate.New(p)
	got := only(Run(pl), c.ID)
	require.Len(t, got, len(want))
	for i, w := range want {
		g := got[i]
		assert.Equal(t, c.Severity, g.Severity)
		allowed := rounding
		if c.ID == "trueness-over-target" {
			allowed = loosely
		}
		assert.InDelta(t, w.Value, g.Value, allowed)
		assert.InDelta(t, w.Limit, g.Limit, allowed)
		assert.Equal(t, w.Unit, g.Unit)
		assert.Equal(t, w.Angles, g.Angles)
		assert.Equal(t, w.Seats, g.Seats)
		assert.Equal(t, w.Features, g.Features)
		assert.Equal(t, w.Pockets, g.Pockets)
		assert.Equal(t, w.Tracks, g.Tracks)
		assert.Equal(t, w.text, Sentence(pl, g, words.English()))
	}
}

// fired calls yield for every finding of every fixture.
func fired(yield func(pl *plate.Plate, f Finding)) {
	for _, table := range []map[string][]fixture{cases, casesOneWayUp} {
		for id, fixtures := range table {
			for _, fix := range fixtures {
				pl := plate.New(fix.plan)
				for _, f := range only(Run(pl), id) {
					yield(pl, f)
				}
			}
		}
	}
}

var placeholder = regexp.MustCompile(`{{\.(\w+)}}`)

// TestEverySentenceIsSaid holds the catalogue and the checks together: no
// sentence without a check that says it, none said that is not there, and no
// gap left in one.
func TestEverySentenceIsSaid(t *testing.T) {
	c := words.English()
	said := map[string]bool{}
	fired(func(pl *plate.Plate, f Finding) {
		end, args := byID[f.ID].say(pl, f)
		key := "check." + f.ID + "." + end
		said[key] = true
		require.True(t, c.Has(key), key)
		for _, m := range placeholder.FindAllStringSubmatch(c.Text(key), -1) {
			assert.Contains(t, args, m[1], key)
		}
		text := Sentence(pl, f, c)
		assert.NotContains(t, text, "<nil>")
		assert.NotContains(t, text, "{{")
		assert.NotContains(t, text, "{hole", "a feature is named, not printed")
	})
	for _, check := range All {
		for _, end := range []string{"title", "why"} {
			key := "check." + check.ID + "." + end
			said[key] = true
			assert.True(t, c.Has(key), key)
		}
	}
	for _, key := range c.Keys() {
		if strings.HasPrefix(key, "check.") {
			assert.True(t, said[key], "%s is said by some fixture", key)
		}
	}
}

func TestWorst(t *testing.T) {
	for _, c := range []struct {
		why  string
		in   []Severity
		want Severity
		ok   bool
	}{
		{"nothing found", nil, "", false},
		{"a note alone", []Severity{Note}, Note, true},
		{"the gravest, wherever it stands", []Severity{Note, Error, Warning}, Error, true},
		{"a warning over a note", []Severity{Warning, Note}, Warning, true},
	} {
		t.Run(c.why, func(t *testing.T) {
			var in []Finding
			for _, s := range c.in {
				in = append(in, Finding{Severity: s})
			}
			got, ok := Worst(in)
			assert.Equal(t, c.want, got)
			assert.Equal(t, c.ok, ok)
		})
	}
}

func TestChecksAreInOrder(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range All {
		assert.False(t, seen[c.ID], "%s is listed once", c.ID)
		seen[c.ID] = true
		assert.Contains(t, []Severity{Error, Warning, Note}, c.Severity)
	}
}
