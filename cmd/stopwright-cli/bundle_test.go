package main

import (
	"archive/zip"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// demoFile writes a demonstration plan and returns its path.
func demoFile(t *testing.T, dir, name string) string {
	t.Helper()
	path := filepath.Join(dir, name+".stopwright")
	cli("", "new", "--demo", name, "-o", path).silent(t)
	return path
}

func TestBundleIntoAFolder(t *testing.T) {
	dir := t.TempDir()
	plan := demoFile(t, dir, "camera-head")
	got := cli("", "bundle", plan, dir, "--date", "2026-11-25")
	got.silent(t)
	want := filepath.Join(dir, "camera-head-2026-11-25")
	assert.Equal(t, want+"\n", got.out, "it says where")
	assert.FileExists(t, filepath.Join(want, "contents.html"))
	assert.FileExists(t, filepath.Join(want, "camera-head-base.ngc"))

	cli("", "bundle", plan, dir, "--date", "2026-11-25").complains(t, statusUnusable, "there is already", "--replace")
	cli("", "bundle", plan, dir, "--date", "2026-11-25", "--replace").silent(t)
	require.NoError(t, os.WriteFile(filepath.Join(want, "mine.txt"), nil, 0o600))
	cli("", "bundle", plan, dir, "--date", "2026-11-25", "--replace").complains(t, statusUnwritten, "mine.txt")
}

func TestBundleIntoAZipFileFromStandardInput(t *testing.T) {
	dir := t.TempDir()
	plan := cli("", "new", "--demo", "vice-base").out
	to := filepath.Join(dir, "all.zip")
	cli(plan, "bundle", "-", to).silent(t)
	z, err := zip.OpenReader(to)
	require.NoError(t, err)
	defer z.Close()
	assert.Equal(t, "all/contents.html", z.File[0].Name)
	assert.Equal(t, "all/one-sided-vice-base", strings.TrimSuffix(z.File[1].Name, ".dxf"), "files are called after the title")
}

func TestBundleTellsWhatIsLeftOut(t *testing.T) {
	plan := strings.Replace(cli("", "new", "--demo", "vice-base").out, `"spindle": 14000`, `"spindle": 0`, 1)
	got := cli(plan, "bundle", "-", filepath.Join(t.TempDir(), "all"))
	assert.Equal(t, statusGood, got.status)
	assert.Contains(t, got.err, "left out router: Base: the spindle is off")
	assert.NotEmpty(t, got.out)
}

func TestBundleUsage(t *testing.T) {
	for why, args := range map[string][]string{
		"nothing":     {"bundle"},
		"no place":    {"bundle", "p"},
		"a third":     {"bundle", "p", "q", "r"},
		"no name":     {"bundle", "p", ""},
		"a bad date":  {"bundle", "p", "q", "--date", "today"},
		"a bad paper": {"bundle", "p", "q", "--paper", "b5"},
	} {
		got := cli("", args...)
		assert.Equal(t, statusUnusable, got.status, why)
		assert.Contains(t, got.err, "help bundle", why)
	}
	dir := t.TempDir()
	cli("", "bundle", demoFile(t, dir, "vice-base"), filepath.Join(dir, "none", "all")).complains(t, statusUnwritten, "there is no folder")
}
