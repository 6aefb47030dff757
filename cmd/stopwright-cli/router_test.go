package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

func TestExportOfRefusedProgramsIsUnusableInput(t *testing.T) {
	dir := t.TempDir()
	p := plan.Default()
	set := plan.DefaultRouter()
	set.Spindle = 0
	p.Router = &set
	name := filepath.Join(dir, "p.stopwright")
	file, err := os.Create(name)
	require.NoError(t, err)
	require.NoError(t, plan.Encode(file, p))
	require.NoError(t, file.Close())
	got := cli("", "export", name, "--router", filepath.Join(dir, "p.ngc"))
	assert.Equal(t, statusUnusable, got.status)
	assert.Contains(t, got.err, "Base: the spindle is off")
	assert.Contains(t, got.err, "Turntable: the spindle is off")
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, list, 1, "nothing is written")
}
