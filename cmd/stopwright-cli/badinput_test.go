package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// replaced returns a demonstration's file with the first of one text replaced.
func replaced(t *testing.T, old, new string) string {
	t.Helper()
	file := demo(t, "vice-base")
	require.Contains(t, file, old)
	return strings.Replace(file, old, new, 1)
}

// stops returns n stops, each at its own angle.
func stops(n int) string {
	all := make([]string, n)
	for i := range all {
		all[i] = fmt.Sprintf(`{"angle": %g}`, float64(i)/1000)
	}
	return strings.Join(all, ",")
}

// Whatever is in a file, there is a sentence about it and nothing else.
func TestBadInput(t *testing.T) {
	whole := demo(t, "vice-base")
	for name, c := range map[string]struct {
		file string
		says []string // key, value, limit
	}{
		"empty":           {"", []string{"this is not a plan file", "it is empty"}},
		"only a mark":     {"\uFEFF", []string{"this is not a plan file"}},
		"not a plan":      {"Dear Sir,\n", []string{"this is not a plan file"}},
		"other JSON":      {`{"name": "x", "values": [1, 2]}`, []string{"this is not a plan file"}},
		"a list":          {"[1, 2]", []string{"this is not a plan file"}},
		"binary":          {"\x7fELF\x02\x01\x01\x00\x00\xff\xfe", []string{"this is not a plan file"}},
		"binary within":   {replaced(t, "One-sided", "One\xff\xfesided"), []string{"line 4, column", "not UTF-8"}},
		"truncated":       {whole[:len(whole)/2], []string{"line ", "column "}},
		"all but the end": {strings.TrimSuffix(whole, "}\n"), []string{"line ", "column "}},
		"two of them":     {whole + whole, []string{"line ", "column "}},
		"newer version":   {replaced(t, `"version": 1`, `"version": 2`), []string{"this plan is version 2, this program reads version 1"}},
		"version 0":       {replaced(t, `"version": 1`, `"version": 0`), []string{"version is 0, must be 1"}},
		"another format":  {replaced(t, `"stopwright"`, `"chart"`), []string{`format is "chart", must be "stopwright"`}},
		"unknown key":     {replaced(t, `"title"`, `"titel"`), []string{"titel is ", "no such key"}},
		"key twice":       {replaced(t, `"face_gap": 0.3,`, `"face_gap": 0.3, "face_gap": 0.4,`), []string{"face_gap"}},
		"key missing":     {replaced(t, `, "radius": 80`, ""), []string{"catches[0].radius is missing, must be a number, 0.1 to 10000 mm"}},
		"wrong type":      {replaced(t, `"face_gap": 0.3`, `"face_gap": "0.3"`), []string{`face_gap is "0.3", must be`}},
		"not a number":    {replaced(t, `"face_gap": 0.3`, `"face_gap": NaN`), []string{"line ", "column "}},
		"1e308":           {replaced(t, `"radius": 80`, `"radius": 1e308`), []string{"catches[0].radius is 1e+308, must be 0.1 to 10000 mm"}},
		"1e309":           {replaced(t, `"radius": 80`, `"radius": 1e309`), []string{"catches[0].radius is 1e309"}},
		"out of range":    {replaced(t, `"angle": 31.6`, `"angle": -360.001`), []string{"stops[3].angle is -360.001, must be -360 to 360 degrees"}},
		"backward travel": {replaced(t, `"from": -3`, `"from": 94`), []string{"travel.from is 94, must be at most travel.to, which is 93"}},
		"duplicate catch": {replaced(t, `"radius": 80}`, `"radius": 80}, {"name": "A", "azimuth": 140, "radius": 80}`), []string{`catches[1].name is "A", must be a name that no other catch has`}},
		"unknown catch":   {replaced(t, `"label": "square"`, `"catches": ["B"]`), []string{`stops[0].catches[0] is "B", must be the name of one of the catches`}},
		"10,001 seats":    {replaced(t, `"stops": [`, `"stops": [`+stops(10001-7)+","), []string{"stops is ", "10001", "10000"}},
		"nested for ever": {replaced(t, `"title": "One-sided vice base"`, `"title": `+strings.Repeat("[", 1<<20)), []string{"more than a plan file may hold"}},
		"a text too long": {replaced(t, "One-sided", strings.Repeat("x", 10001)), []string{"title is ", "at most 10000 characters"}},
		"several at once": {strings.Replace(replaced(t, `"web": 2`, `"web": -1`), `"edge": 4`, `"edge": 101`, 1), []string{"rules.web is -1, must be 0 to 100 mm", "rules.edge is 101, must be 0 to 100 mm"}},
		"thousands at once": {
			replaced(t, `"stops": [`, `"stops": [`+strings.ReplaceAll(stops(5000), `"angle"`, `"angel"`)+","),
			[]string{"stops[0].angel is 0, must be left out", "more"},
		},
	} {
		t.Run(name, func(t *testing.T) {
			dir := t.TempDir()
			t.Chdir(dir)
			put(t, dir, "bad.stopwright", c.file)
			put(t, dir, "old.csv", "old")
			for _, args := range [][]string{
				{"check", "bad.stopwright"},
				{"report", "bad.stopwright"},
				{"report", "--json", "bad.stopwright"},
				{"export", "bad.stopwright", "--dxf", "a.dxf", "--pdf", "a.pdf", "--csv", "old.csv"},
			} {
				r := cli("", args...)
				r.complains(t, statusUnusable, c.says...)
				for line := range strings.Lines(r.err) {
					assert.Contains(t, line, `cannot read "bad.stopwright": `, "every line names the file")
				}
			}
			cli(c.file, "check", "-").complains(t, statusUnusable, append(c.says, "cannot read standard input: ")...)
			assert.Equal(t, []string{"bad.stopwright", "old.csv"}, entries(t, dir), "nothing is written")
			assert.Equal(t, "old", get(t, "old.csv"))
		})
	}
}

func TestPlansThatCannotBeRead(t *testing.T) {
	dir := t.TempDir()
	for path, says := range map[string]string{
		dir:                          "it is a folder",
		filepath.Join(dir, "no"):     "there is no such file",
		filepath.Join(dir, "no", ""): "there is no such file",
	} {
		cli("", "check", path).complains(t, statusUnusable, `cannot read "`+path+`": `+says)
	}
}

// 200 MB of almost nothing: the file is sparse and only its beginning is read.
func TestAHugeFile(t *testing.T) {
	const size = 200 << 20
	path := put(t, t.TempDir(), "huge", `{"format": "stopwright", "title": "`)
	require.NoError(t, os.Truncate(path, size))
	cli("", "check", path).complains(t, statusUnusable, "more than a plan file may hold", "over 16 MB")

	// The same from a stream, and of blanks, which are fine in a plan.
	blanks := "{" + strings.Repeat(" ", 17<<20)
	cli(blanks, "check", "-").complains(t, statusUnusable, "over 16 MB")
}
