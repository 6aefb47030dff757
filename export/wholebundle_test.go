package export_test

import (
	"archive/zip"
	"context"
	"io"
	"os"
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

// day is what a caller might give.
const day = "2026-11-25"

// quiet takes no notice of progress.
func quiet(export.Progress) {}

// bundled writes a bundle that is not refused.
func bundled(t testing.TB, r detent.Report, to string) export.Bundled {
	t.Helper()
	done, err := export.Bundle(context.Background(), r, request(to), quiet)
	require.NoError(t, err)
	return done
}

func request(to string) export.BundleRequest {
	return export.BundleRequest{Request: export.Request{Date: day}, To: to, Name: "trial"}
}

func TestBundleHoldsEveryFormat(t *testing.T) {
	dir := t.TempDir()
	to := filepath.Join(dir, "trial-"+day)
	r := report(t)
	done := bundled(t, r, to)
	assert.Equal(t, to, done.Path)
	assert.Empty(t, done.LeftOut)
	assert.ElementsMatch(t, done.Files, entries(t, to))
	assert.Equal(t, []string{"trial-" + day}, entries(t, dir), "nothing is left beside it")

	alone := in(t.TempDir())
	alone.Date = day
	written, err := export.Export(r, alone)
	require.NoError(t, err)
	assert.Len(t, done.Files, len(written)+2, "the contents and the plan besides")
	page := get(t, filepath.Join(to, "contents.html"))
	for _, path := range written {
		name := "trial" + strings.TrimPrefix(filepath.Base(path), "plate")
		if filepath.Ext(name) != ".ngc" { // the card names the programs' files
			assert.Equal(t, get(t, path), get(t, filepath.Join(to, name)), "the same bytes as exported alone")
		}
		assert.Contains(t, page, `href="./`+name+`"`)
	}
	p, err := export.ReadPlan(filepath.Join(to, "trial.stopwright"))
	require.NoError(t, err)
	assert.True(t, plan.Equal(r.Plate.Plan, p))
}

func TestBundleAsAZip(t *testing.T) {
	dir := t.TempDir()
	folder, file := filepath.Join(dir, "trial"), filepath.Join(dir, "both.ZIP")
	r := report(t)
	want := bundled(t, r, folder)
	assert.Equal(t, want.Files, bundled(t, r, file).Files)
	z, err := zip.OpenReader(file)
	require.NoError(t, err)
	defer z.Close()
	var names []string
	for _, f := range z.File {
		name, inside := strings.CutPrefix(f.Name, "both/")
		assert.True(t, inside, "unpacked it makes one folder: %s", f.Name)
		names = append(names, name)
		assert.Equal(t, day, f.Modified.UTC().Format("2006-01-02"))
		content, err := f.Open()
		require.NoError(t, err)
		data, err := io.ReadAll(content)
		require.NoError(t, err)
		assert.Equal(t, get(t, filepath.Join(folder, name)), string(data), name)
	}
	assert.Equal(t, want.Files, names)

	again := filepath.Join(dir, "again", "both.ZIP")
	require.NoError(t, os.Mkdir(filepath.Dir(again), 0o755))
	bundled(t, r, again)
	assert.Equal(t, get(t, file), get(t, again), "equal requests give equal bytes")
}

// What cannot be made is left out, and the page says why.
func TestBundleLeavesOutWhatIsRefused(t *testing.T) {
	p := report(t).Plate.Plan
	set := plan.DefaultRouter()
	set.Spindle = 0
	p.Router = &set
	to := filepath.Join(t.TempDir(), "trial")
	done := bundled(t, detent.Solve(p), to)
	require.Len(t, done.LeftOut, 1)
	assert.Equal(t, "router", done.LeftOut[0].Format)
	for _, name := range entries(t, to) {
		assert.NotEqual(t, ".ngc", filepath.Ext(name))
	}
	page := get(t, filepath.Join(to, "contents.html"))
	assert.Contains(t, page, "spindle is off")
	assert.NotContains(t, page, ".ngc")
}

func TestBundleDoesNotWriteOver(t *testing.T) {
	r := report(t)
	for _, c := range []struct {
		why     string
		prepare func(t *testing.T, to string)
		zip     bool
		replace bool
		says    string // "": it is replaced
	}{
		{"a folder that is there", func(t *testing.T, to string) { require.NoError(t, os.Mkdir(to, 0o755)) }, false, false, "there is already"},
		{"a file that is there", func(t *testing.T, to string) { put(t, filepath.Dir(to), filepath.Base(to), "mine") }, true, false, "there is already"},
		{"an empty folder, told to", func(t *testing.T, to string) { require.NoError(t, os.Mkdir(to, 0o755)) }, false, true, ""},
		{"an older bundle, told to", func(t *testing.T, to string) {
			require.NoError(t, os.Mkdir(to, 0o755))
			put(t, to, "contents.html", "old")
			put(t, to, "trial-collar.old", "old")
		}, false, true, ""},
		{"an older zip file, told to", func(t *testing.T, to string) { put(t, filepath.Dir(to), filepath.Base(to), "old") }, true, true, ""},
		{"a folder with something else in it", func(t *testing.T, to string) {
			require.NoError(t, os.Mkdir(to, 0o755))
			put(t, to, "contents.html", "old")
			put(t, to, "photograph.jpg", "mine")
		}, false, true, `it holds "photograph.jpg", which is no part of a bundle`},
		{"a folder with a folder in it", func(t *testing.T, to string) {
			require.NoError(t, os.MkdirAll(filepath.Join(to, "trial"), 0o755))
		}, false, true, `it holds "trial"`},
		{"a file where the folder should be", func(t *testing.T, to string) { put(t, filepath.Dir(to), filepath.Base(to), "mine") }, false, true, "what is there already is no bundle"},
		{"a folder where the zip file should be", func(t *testing.T, to string) { require.NoError(t, os.Mkdir(to, 0o755)) }, true, true, "what is there already is no bundle"},
	} {
		t.Run(c.why, func(t *testing.T) {
			dir := t.TempDir()
			to := filepath.Join(dir, "trial")
			if c.zip {
				to += ".zip"
			}
			c.prepare(t, to)
			before := tree(t, dir)
			q := request(to)
			q.Replace = c.replace
			done, err := export.Bundle(context.Background(), r, q, quiet)
			if c.says != "" {
				require.ErrorContains(t, err, c.says)
				assert.Equal(t, before, tree(t, dir), "nothing is touched")
				return
			}
			require.NoError(t, err)
			assert.Equal(t, []string{filepath.Base(to)}, entries(t, dir))
			if !c.zip {
				assert.ElementsMatch(t, done.Files, entries(t, to), "nothing of the old one is left")
			}
		})
	}
	_, err := export.Bundle(context.Background(), r, request(""), quiet)
	require.ErrorContains(t, err, "no folder is named")
	_, err = export.Bundle(context.Background(), r, request(filepath.Join(t.TempDir(), "none", "trial")), quiet)
	var file *export.FileError
	require.ErrorAs(t, err, &file)
	assert.Contains(t, err.Error(), "there is no folder")
}

// tree lists everything below a folder with what is in it.
func tree(t *testing.T, dir string) map[string]string {
	t.Helper()
	all := map[string]string{}
	require.NoError(t, filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if err != nil {
			return err
		}
		all[path] = ""
		if d.Type().IsRegular() {
			all[path] = get(t, path)
		}
		return nil
	}))
	return all
}

// Stopped at any step, nothing is left of a bundle.
func TestBundleStoppedAtAnyStep(t *testing.T) {
	r := report(t)
	for _, name := range []string{"trial", "trial.zip"} {
		steps := 0
		dir := t.TempDir()
		_, err := export.Bundle(context.Background(), r, request(filepath.Join(dir, name)), func(export.Progress) { steps++ })
		require.NoError(t, err)
		for stop := range steps {
			dir := t.TempDir()
			ctx, cancel := context.WithCancel(context.Background())
			at := 0
			_, err := export.Bundle(ctx, r, request(filepath.Join(dir, name)), func(export.Progress) {
				if at == stop {
					cancel()
				}
				at++
			})
			require.ErrorIs(t, err, context.Canceled, "step %d", stop)
			assert.Empty(t, entries(t, dir), "step %d", stop)
		}
	}
}

func TestBundleTellsHowFarItIs(t *testing.T) {
	var told []export.Progress
	done, err := export.Bundle(context.Background(), report(t), request(filepath.Join(t.TempDir(), "trial")), func(p export.Progress) {
		told = append(told, p)
	})
	require.NoError(t, err)
	require.Len(t, told, len(done.Files), "each file but the plan, which takes no time, and the last step")
	for i, p := range told[:len(told)-1] {
		assert.Equal(t, len(done.Files), p.Total)
		assert.NotEmpty(t, p.File)
		if i > 0 {
			assert.Greater(t, p.Done, told[i-1].Done)
		}
	}
	last := told[len(told)-1]
	assert.Equal(t, export.Progress{Done: len(done.Files), Total: len(done.Files)}, last)
}

// A disk without room, or without leave to write.
func TestBundleThatCannotBeWritten(t *testing.T) {
	if os.Geteuid() == 0 {
		// Root may write anywhere: a name too long for the disk stands in.
		_, err := export.Bundle(context.Background(), report(t), request(filepath.Join(t.TempDir(), strings.Repeat("n", 300))), quiet)
		require.ErrorContains(t, err, "the name is too long")
		return
	}
	dir := t.TempDir()
	require.NoError(t, os.Chmod(dir, 0o500))
	_, err := export.Bundle(context.Background(), report(t), request(filepath.Join(dir, "trial")), quiet)
	require.ErrorContains(t, err, "you may not write in its folder")
}

// Nothing that a maker types gets out of its place on the page.
func TestContentsAreEscaped(t *testing.T) {
	p := report(t).Plate.Plan
	bad := `<script>alert(1)</script>"'><img src=x onerror=alert(2)>`
	p.Title, p.Notes, p.Base.Material = bad, bad, bad
	p.Catches[0].Name = bad
	p.Stops = []plan.Stop{{Angle: 0, Label: bad}, {Angle: 0.5, Label: bad}}
	require.NoError(t, plan.Validate(p))
	to := filepath.Join(t.TempDir(), "trial")
	bundled(t, detent.Solve(p), to)
	page := get(t, filepath.Join(to, "contents.html"))
	assert.NotContains(t, page, "<script")
	assert.NotContains(t, page, "<img src=x")
	assert.Contains(t, page, "&lt;script&gt;")
	assert.NotContains(t, page, "ZgotmplZ", "no link is taken for an address")
	assert.NotContains(t, strings.ReplaceAll(page, "http://www.w3.org/2000/svg", ""), "http", "the page needs no network")
}

func TestContentsInEveryLanguage(t *testing.T) {
	for _, language := range words.Languages() {
		c, err := words.In(language)
		require.NoError(t, err)
		q := request(filepath.Join(t.TempDir(), "trial"))
		q.Words, q.Date = c, ""
		_, err = export.Bundle(context.Background(), report(t), q, quiet)
		require.NoError(t, err)
		page := get(t, filepath.Join(q.To, "contents.html"))
		assert.Contains(t, page, `<html lang="`+language+`">`)
		assert.Contains(t, page, c.Text("bundle.page.cautions"))
		assert.NotContains(t, page, "[bundle", "every word is there")
		assert.NotContains(t, page, "[export", "every word is there")
	}
}

func TestBundleNames(t *testing.T) {
	for title, want := range map[string]string{
		"Swivelling sanding table": "swivelling-sanding-table",
		"../../etc/passwd":         "etc-passwd",
		"Größe 1:2":                "größe-1-2",
		"":                         "plate",
		"***":                      "plate",
		"CON":                      "plate",
		"con-1":                    "con-1",
		strings.Repeat("x", 100):   strings.Repeat("x", 60),
	} {
		assert.Equal(t, want, export.BundleName(title), title)
	}
	dir := t.TempDir()
	assert.Equal(t, filepath.Join(dir, "trial-"+day), export.BundlePath(dir, "trial", day), "in a folder that is there")
	assert.Equal(t, filepath.Join(dir, "trial"), export.BundlePath(dir, "trial", ""))
	assert.Equal(t, filepath.Join(dir, "new"), export.BundlePath(filepath.Join(dir, "new")+"/", "trial", day), "else to the place itself")
}

func BenchmarkBundle720(b *testing.B) {
	p := plan.Default()
	for i := range 720 {
		p.Stops = append(p.Stops, plan.Stop{Angle: float64(i) / 2})
	}
	r := detent.Solve(p)
	for b.Loop() {
		_, err := export.Bundle(context.Background(), r, request(filepath.Join(b.TempDir(), "trial")), quiet)
		require.NoError(b, err)
	}
}

// A format that gives an error of any kind is left out, and the rest is there.
func TestBundleLeavesOutWhatFails(t *testing.T) {
	q := request(filepath.Join(t.TempDir(), "trial"))
	q.Printer.X = 100 // a bar of 150 mm, far too short
	done, err := export.Bundle(context.Background(), report(t), q, quiet)
	require.NoError(t, err)
	var out []string
	for _, l := range done.LeftOut {
		out = append(out, l.Format)
	}
	assert.Contains(t, out, "template")
	assert.Contains(t, done.Files, "trial.dxf")
	assert.NotContains(t, done.Files, "trial-template.pdf")
	assert.Contains(t, get(t, filepath.Join(q.To, "contents.html")), "100 mm", "the page says why")
}
