package export_test

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/export"
)

// formatNamed returns one of the formats.
func formatNamed(t *testing.T, name string) export.Format {
	t.Helper()
	for _, f := range export.Formats {
		if f.Name == name {
			return f
		}
	}
	require.Fail(t, "no such format", name)
	return export.Format{}
}

// The file asked for belongs to no part, so running it by mistake must not move
// a machine.
func TestTheFileAskedForMovesNothing(t *testing.T) {
	dir := t.TempDir()
	_, err := export.Export(report(t), export.Request{Router: filepath.Join(dir, "plate.ngc")})
	require.NoError(t, err)
	assert.Equal(t, []string{"plate-base.ngc", "plate-collar.ngc", "plate-turntable.ngc", "plate.ngc"}, entries(t, dir))
	for _, line := range strings.Split(strings.TrimSpace(get(t, filepath.Join(dir, "plate.ngc"))), "\n") {
		if line != "%" && line != "M2" {
			assert.True(t, strings.HasPrefix(line, "("), line)
		}
	}
	assert.Contains(t, get(t, filepath.Join(dir, "plate.ngc")), "plate-base.ngc")
	assert.Contains(t, get(t, filepath.Join(dir, "plate-base.ngc")), "G1 Z")
}

func TestRefusedProgramsWriteNothing(t *testing.T) {
	p := report(t).Plate.Plan
	set := plan.DefaultRouter()
	set.Spindle, set.Cutter = 0, 20
	p.Router = &set
	r, dir := detent.Solve(p), t.TempDir()
	_, err := export.Export(r, export.Request{DXF: filepath.Join(dir, "plate.dxf"), Router: filepath.Join(dir, "plate.ngc")})
	var refused export.Refused
	require.ErrorAs(t, err, &refused)
	assert.Contains(t, refused.In(words.English()), "spindle is off")
	assert.Contains(t, refused.In(words.English()), "too wide", "every problem at once")
	assert.Empty(t, entries(t, dir), "the drawing neither")

	router := formatNamed(t, "router")
	assert.Equal(t, refused.Error(), router.Refuses(r, export.Request{}).Error())
	require.NoError(t, router.Refuses(report(t), export.Request{}))
	require.NoError(t, formatNamed(t, "dxf").Refuses(r, export.Request{}))
}
