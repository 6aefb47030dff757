package plan_test

import (
	"reflect"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestCloneSharesNothing(t *testing.T) {
	original, untouched := fullPlan(t), fullPlan(t)
	clone := original.Clone()
	require.Equal(t, original, clone)
	changed := 0
	leaves(reflect.ValueOf(&clone), "plan", func(path string, leaf reflect.Value) {
		change(leaf)
		require.Equal(t, untouched, original, "%s of the clone was written", path)
		changed++
	})
	require.Positive(t, changed)
	require.NotEqual(t, original, clone)

	require.Equal(t, plan.Plan{}, plan.Plan{}.Clone(), "what is absent stays so")
}

// notWritten matches the fields of fullPlan that are no part of it: its base is
// a rectangle, its features a hole, a slot and an arc slot.
var notWritten = regexp.MustCompile(`Base\.Diameter` +
	`|Features\[0\]\.(X2|Y2|Width|Radius|From|To)` +
	`|Features\[1\]\.(Diameter|Radius|From|To)` +
	`|Features\[2\]\.(X|Y|X2|Y2|Diameter)$`)

// TestEqualSeesEveryField also fails where a field is added to a plan without a
// key in the file.
func TestEqualSeesEveryField(t *testing.T) {
	p, q := fullPlan(t), fullPlan(t)
	require.True(t, plan.Equal(p, q))
	leaves(reflect.ValueOf(&q), "plan", func(path string, leaf reflect.Value) {
		was := reflect.New(leaf.Type()).Elem()
		was.Set(leaf)
		change(leaf)
		assert.Equal(t, notWritten.MatchString(path), plan.Equal(p, q), path)
		leaf.Set(was)
	})
	require.True(t, plan.Equal(p, q))
}

func TestEqualSeesWhatIsAbsent(t *testing.T) {
	for why, edit := range map[string]func(p *plan.Plan){
		"collar":      func(p *plan.Plan) { p.Collar = nil },
		"reference":   func(p *plan.Plan) { p.Shop.Reference = nil },
		"router":      func(p *plan.Plan) { p.Router = nil },
		"tool":        func(p *plan.Plan) { p.Tool = nil },
		"a mark":      func(p *plan.Plan) { p.Tool.Marks = nil },
		"a stop":      func(p *plan.Plan) { p.Stops = p.Stops[:1] },
		"a reading":   func(p *plan.Plan) { p.Readings = nil },
		"as drilled":  func(p *plan.Plan) { p.AsDrilled = nil },
		"the order":   func(p *plan.Plan) { p.Stops[0], p.Stops[1] = p.Stops[1], p.Stops[0] },
		"the catches": func(p *plan.Plan) { p.Stops[1].Catches = nil },
	} {
		p := fullPlan(t)
		edit(&p)
		assert.False(t, plan.Equal(fullPlan(t), p), why)
	}
	empty := plan.Default()
	empty.Stops, empty.Readings = []plan.Stop{}, []plan.Reading{}
	assert.True(t, plan.Equal(plan.Default(), empty), "an empty list is no list")
}
