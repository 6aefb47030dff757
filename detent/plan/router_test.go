package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestRouterSection(t *testing.T) {
	quiet := plan.DefaultRouter()
	quiet.Spindle = 0
	for _, c := range []struct {
		why, router string
		want        *plan.Router
	}{
		{"a file of before there was such a section", ``, nil},
		{"an empty section has the defaults", `{}`, ptr(plan.DefaultRouter())},
		{"one key given; a spindle that is off can be saved", `{"spindle": 0}`, &quiet},
	} {
		text := edited(t, minimal, "router", c.router)
		got := decoded(t, text)
		assert.Equal(t, c.want, got.Router, c.why)
		if c.want == nil {
			assert.Equal(t, plan.DefaultRouter(), got.RouterSettings(), c.why)
		} else {
			assert.Equal(t, *c.want, got.RouterSettings(), c.why)
		}
	}
}

func TestRouterChoices(t *testing.T) {
	for _, c := range []struct{ path, value, want string }{
		{"router.spindle", `60001`, "router.spindle is 60001, must be 0 to 60000 rev/min"},
		{"router.spindle", `-1`, "router.spindle is -1, must be 0 to 60000 rev/min"},
		{"router.spindle", `0.5`, "router.spindle is 0.5, must be a whole number, 0 to 60000 rev/min"},
		{"router.units", `"cm"`, `router.units is "cm", must be "mm" or "inch"`},
		{"router.tool_change", `""`, `router.tool_change is "", must be "m6" or "pause"`},
		{"router.canned", `"yes"`, `router.canned is "yes", must be true or false`},
	} {
		ps := problemsOf(t, edited(t, edited(t, minimal, "router", `{}`), c.path, c.value))
		require.Len(t, ps, 1, c.path)
		assert.Equal(t, c.want, ps.Error())
	}
}

func ptr[T any](x T) *T { return &x }
