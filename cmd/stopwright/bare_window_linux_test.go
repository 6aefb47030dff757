//go:build !ci

package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/export"
)

// On a system that names no home, no language and no message bus, the main job
// can be done all the same, and nothing is said that a person could not use.
func TestABareSystemIsEnough(t *testing.T) {
	path := filepath.Join(t.TempDir(), "table.stopwright")
	require.NoError(t, export.SavePlan(path, plan.Default()))
	d := sitAt(t, []string{
		"HOME=", "XDG_CONFIG_HOME=", "XDG_CACHE_HOME=", "LC_ALL=C", "LANG=C", "DBUS_SESSION_BUS_ADDRESS=unix:path=/nonexistent",
		"MESA_SHADER_CACHE_DISABLE=true", // or the renderer, not we, says that it has no folder
	}, path)
	d.key("ctrl+l")
	d.line("33")
	d.until("the title says it is not saved", d.unsaved)
	assert.Equal(t, []float64{33}, d.save(path))
	d.quit()
	left, err := os.ReadDir(filepath.Dir(path))
	require.NoError(t, err)
	assert.Len(t, left, 1, "nothing half written")
}
