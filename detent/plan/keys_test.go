package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestAllowed(t *testing.T) {
	for path, want := range map[string]string{
		"stops[3].angle":         "-360 to 360 degrees",
		"stops[].angle":          "-360 to 360 degrees",
		"stops[12].catches[3]":   "a name of 1 to 10000 characters",
		"turntable.pivot_bore":   "0, or 0.1 to 10000 mm",
		"base.diameter":          "0.1 to 10000 mm",
		"collar.screws.count":    "0 to 360 screws",
		"shop.friction":          "0 to 1.5",
		"stops[0].both_sides":    "true or false",
		"arrangement.catch_in":   `"turntable" or "base"`,
		"readings[0].date":       "a date as 2026-11-20, or empty",
		"turntable":              "",
		"turntable.no_such_key":  "",
		"stops[three].angle":     "",
		"":                       "",
		"as_drilled[9999].catch": "UTF-8 text of at most 10000 characters",
	} {
		assert.Equal(t, want, plan.Allowed(path), path)
	}
}

func TestKeys(t *testing.T) {
	byPath := map[string]plan.Key{}
	for _, k := range plan.Keys() {
		require.NotContains(t, byPath, k.Path, "listed once")
		require.NotEmpty(t, k.Allowed, k.Path)
		byPath[k.Path] = k
	}
	assert.Equal(t, plan.Key{Path: "features[].width", Allowed: "0.1 to 10000 mm", Required: true, Owners: []string{"slot", "arc_slot"}}, byPath["features[].width"])
	assert.Equal(t, plan.Key{Path: "collar.screws.count", Allowed: "0 to 360 screws", Default: "8"}, byPath["collar.screws.count"])
	assert.Equal(t, plan.Key{Path: "shop.reference", Allowed: "-360 to 360 degrees"}, byPath["shop.reference"], "may be absent")
	assert.Equal(t, `"birch-plywood"`, byPath["base.material"].Default)
	assert.True(t, byPath["format"].Required)
}
