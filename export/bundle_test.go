package export_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/assets/words/wordstest"
	"stopwright/detent/plan"
	"stopwright/export"
	"stopwright/export/drawing"
	"stopwright/export/dxf"
)

// in returns a request for every format in a folder.
func in(dir string) export.Request {
	var q export.Request
	for _, f := range export.Formats {
		*f.Path(&q) = filepath.Join(dir, "plate"+f.Ending)
	}
	return q
}

func TestExportWritesEveryFile(t *testing.T) {
	dir := t.TempDir()
	r := report(t)
	written, err := export.Export(r, in(dir))
	require.NoError(t, err)
	names := []string{}
	for _, path := range written {
		names = append(names, filepath.Base(path))
		assert.NotEmpty(t, get(t, path))
	}
	assert.Equal(t, []string{
		"plate.dxf", "plate-base.dxf", "plate-turntable.dxf", "plate-collar.dxf",
		"plate.svg", "plate-base.svg", "plate-turntable.svg", "plate-collar.svg", "plate.pdf", "plate.csv",
		"plate-proof.pdf", "plate-template.pdf", "plate-scale.dxf", "plate-strip.pdf", "plate-coupon.dxf",
		"plate.ngc", "plate-base.ngc", "plate-turntable.ngc", "plate-collar.ngc",
	}, names)
	assert.ElementsMatch(t, names, entries(t, dir))

	info := drawing.Info{Words: words.English()}
	for name, d := range map[string]drawing.Drawing{
		"plate.dxf":           drawing.AllParts(r.Plate, info),
		"plate-base.dxf":      drawing.PartSheet(r.Plate, plan.PartBase, info),
		"plate-turntable.dxf": drawing.PartSheet(r.Plate, plan.PartTurntable, info),
		"plate-collar.dxf":    drawing.PartSheet(r.Plate, plan.PartCollar, info),
	} {
		var want bytes.Buffer
		require.NoError(t, dxf.Write(&want, d))
		assert.Equal(t, want.String(), get(t, filepath.Join(dir, name)), name)
	}
	assert.Contains(t, get(t, filepath.Join(dir, "plate.pdf")), "%PDF-")
	assert.Contains(t, get(t, filepath.Join(dir, "plate.csv")), "5 sides")
}

func TestExportWritesOnlyWhatIsAskedFor(t *testing.T) {
	for _, f := range export.Formats {
		t.Run(f.Name, func(t *testing.T) {
			dir := t.TempDir()
			all, one := in(dir), export.Request{}
			*f.Path(&one) = *f.Path(&all)
			_, err := export.Export(report(t), one)
			require.NoError(t, err)
			for _, name := range entries(t, dir) {
				assert.Equal(t, filepath.Ext(f.Ending), filepath.Ext(name))
			}
		})
	}
	written, err := export.Export(report(t), export.Request{})
	require.NoError(t, err)
	assert.Empty(t, written)
}

func TestPartsHaveTheirNamesBeforeTheEnding(t *testing.T) {
	for name, want := range map[string]string{
		"plate.dxf":     "plate-base.dxf",
		"plate":         "plate-base",
		"plate.old.DXF": "plate.old-base.DXF",
		".dxf":          ".dxf-base", // hidden, and without an ending
		"v1.2/plate":    "v1.2/plate-base",
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, os.Mkdir(filepath.Join(dir, "v1.2"), 0o755))
			_, err := export.Export(report(t), export.Request{DXF: filepath.Join(dir, filepath.FromSlash(name))})
			require.NoError(t, err)
			assert.FileExists(t, filepath.Join(dir, filepath.FromSlash(want)))
		})
	}
}

func TestAPlanWithoutCollarHasNoFileForIt(t *testing.T) {
	dir := t.TempDir()
	r := report(t)
	r.Plate.Plan.Collar = nil
	_, err := export.Export(r, export.Request{DXF: filepath.Join(dir, "a.dxf")})
	require.NoError(t, err)
	assert.ElementsMatch(t, []string{"a.dxf", "a-base.dxf", "a-turntable.dxf"}, entries(t, dir))
}

func TestEqualRequestsGiveEqualBytes(t *testing.T) {
	for _, date := range []string{"", "2026-11-20"} {
		first, second := t.TempDir(), t.TempDir()
		for _, dir := range []string{first, second} {
			q := in(dir)
			q.Date = date
			_, err := export.Export(report(t), q)
			require.NoError(t, err)
		}
		for _, name := range entries(t, first) {
			assert.Equal(t, get(t, filepath.Join(first, name)), get(t, filepath.Join(second, name)), "%s dated %q", name, date)
		}
	}
}

func TestExportPrintsTheDateAndUsesThePaper(t *testing.T) {
	plain, dated, letter := t.TempDir(), t.TempDir(), t.TempDir()
	for dir, q := range map[string]export.Request{
		plain: in(plain), dated: in(dated), letter: in(letter),
	} {
		if dir == dated {
			q.Date = "2026-11-20"
		}
		if dir == letter {
			q.Paper = drawing.Letter
		}
		_, err := export.Export(report(t), q)
		require.NoError(t, err)
	}
	for _, name := range entries(t, plain) {
		p, d, l := get(t, filepath.Join(plain, name)), get(t, filepath.Join(dated, name)), get(t, filepath.Join(letter, name))
		assert.NotEqual(t, p, d, "%s has a date when one is given", name)
		assert.Equal(t, filepath.Ext(name) == ".pdf", p != l, "%s and the paper", name)
	}
	assert.Contains(t, get(t, filepath.Join(dated, "plate.csv")), "2026-11-20")
	assert.Contains(t, get(t, filepath.Join(dated, "plate.dxf")), "2026-11-20")
	assert.Contains(t, get(t, filepath.Join(dated, "plate.pdf")), "/CreationDate (D:20261120", "the file's own date")
	assert.NotContains(t, get(t, filepath.Join(plain, "plate.csv")), "2026")
	assert.Contains(t, get(t, filepath.Join(plain, "plate.pdf")), "595.28 841.89", "A4 in points")
	assert.Contains(t, get(t, filepath.Join(letter, "plate.pdf")), "612.00 792.00", "Letter in points")
}

// Whatever is wrong with one file, no other may be touched.
func TestExportWritesAllOrNothing(t *testing.T) {
	for name, spoil := range map[string]func(dir string, q *export.Request){
		"a folder that is not there": func(dir string, q *export.Request) { q.CSV = filepath.Join(dir, "no", "plate.csv") },
		"a folder in the way":        func(dir string, q *export.Request) { q.CSV = filepath.Join(dir, "folder") },
		"a folder in a part's way":   func(dir string, q *export.Request) { q.DXF = filepath.Join(dir, "blocked.dxf") },
		"a file in the path":         func(dir string, q *export.Request) { q.PDF = filepath.Join(dir, "plate.csv", "x.pdf") },
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, os.Mkdir(filepath.Join(dir, "folder"), 0o755))
			require.NoError(t, os.Mkdir(filepath.Join(dir, "blocked-turntable.dxf"), 0o755))
			for _, name := range []string{"plate.dxf", "plate-base.dxf", "plate.pdf", "plate.csv"} {
				put(t, dir, name, "old")
			}
			before := entries(t, dir)
			q := in(dir)
			spoil(dir, &q)
			written, err := export.Export(report(t), q)
			var file *export.FileError
			require.ErrorAs(t, err, &file)
			assert.Empty(t, written)
			assert.NotContains(t, err.Error(), "already written")
			assert.Equal(t, before, entries(t, dir))
			for _, name := range []string{"plate.dxf", "plate-base.dxf", "plate.pdf", "plate.csv"} {
				assert.Equal(t, "old", get(t, filepath.Join(dir, name)))
			}
		})
	}
}

func TestExportRefusesToWriteAFileTwice(t *testing.T) {
	for name, c := range map[string]struct {
		paths func(dir string) (dxf, csv string)
		plan  bool
	}{
		"the same path": {func(dir string) (string, string) {
			return filepath.Join(dir, "x"), filepath.Join(dir, "x")
		}, false},
		"another spelling": {func(dir string) (string, string) {
			return filepath.Join(dir, "x"), dir + "/folder/../x"
		}, false},
		"a part's own file": {func(dir string) (string, string) {
			return filepath.Join(dir, "x.dxf"), filepath.Join(dir, "x-base.dxf")
		}, false},
		"a link to another": {func(dir string) (string, string) {
			return filepath.Join(dir, "x"), filepath.Join(dir, "link-to-x")
		}, false},
		"another name of the same file": {func(dir string) (string, string) {
			return filepath.Join(dir, "one"), filepath.Join(dir, "two")
		}, false},
		"the plan": {func(dir string) (string, string) {
			return "", filepath.Join(dir, "plan.stopwright")
		}, true},
		"a link to the plan": {func(dir string) (string, string) {
			return "", filepath.Join(dir, "link-to-plan")
		}, true},
		"the plan as a part's file": {func(dir string) (string, string) {
			return filepath.Join(dir, "link-to.plan"), "" // link-to-base.plan
		}, true},
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			require.NoError(t, os.Mkdir(filepath.Join(dir, "folder"), 0o755))
			plan := put(t, dir, "plan.stopwright", "the plan")
			one := put(t, dir, "one", "old")
			require.NoError(t, os.Link(one, filepath.Join(dir, "two")))
			for link, to := range map[string]string{
				"link-to-x": "x", "link-to-plan": "plan.stopwright", "link-to-base.plan": "plan.stopwright",
			} {
				require.NoError(t, os.Symlink(to, filepath.Join(dir, link)))
			}
			before := entries(t, dir)
			var q export.Request
			q.DXF, q.CSV = c.paths(dir)
			q.Plan = plan
			_, err := export.Export(report(t), q)
			var clash *export.ClashError
			require.ErrorAs(t, err, &clash)
			assert.Equal(t, c.plan, clash.Plan)
			wordstest.SaidInGerman(t, clash)
			assert.Equal(t, before, entries(t, dir))
			assert.Equal(t, "the plan", get(t, plan))
			assert.Equal(t, "old", get(t, one))
		})
	}
}
