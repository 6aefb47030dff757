package main

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/export"
)

func TestHelp(t *testing.T) {
	for _, args := range [][]string{{"help"}, {"-h"}, {"--help"}} {
		r := cli("", args...)
		r.silent(t)
		assert.Equal(t, usage, r.out)
	}
	for _, v := range verbs() {
		assert.Contains(t, usage, "\n  "+v.name+" ", "the program's help lists every verb")
		for _, args := range [][]string{{"help", v.name}, {v.name, "--help"}, {v.name, "plan", "-h"}} {
			r := cli("", args...)
			r.silent(t)
			assert.Equal(t, v.usage, r.out, args)
		}
	}
}

// Help stays within the width of a terminal.
func TestHelpIsNarrow(t *testing.T) {
	const width = 80 // columns
	texts := []string{usage}
	for _, v := range verbs() {
		texts = append(texts, v.usage)
	}
	for _, text := range texts {
		for line := range strings.Lines(text) {
			assert.LessOrEqual(t, len(strings.TrimRight(line, "\n")), width, line)
		}
	}
}

func TestExportHelpNamesEveryFormat(t *testing.T) {
	for _, f := range export.Formats {
		assert.Contains(t, exportUsage, "\n  --"+f.Name+" F ")
	}
}

func TestUsageErrors(t *testing.T) {
	dir := t.TempDir()
	p := put(t, dir, "p.stopwright", demo(t, "vice-base"))
	for name, c := range map[string]struct {
		args string
		says string
	}{
		"nothing at all":         {"", "what should be done is missing; see: stopwright-cli help\n"},
		"unknown verb":           {"exprt", `there is no verb "exprt"`},
		"flag for a verb":        {"--json", `there is no verb "--json"`},
		"help on what is not":    {"help exprt", `there is no verb "exprt"`},
		"help on two":            {"help new check", "help takes one verb"},
		"check nothing":          {"check", "check needs a PLAN; see: stopwright-cli help check\n"},
		"check two":              {"check PLAN other", `check takes one PLAN, not also "other"`},
		"check with a flag":      {"check PLAN --json", "flag provided but not defined: -json; see: stopwright-cli help check\n"},
		"report nothing":         {"report --json", "report needs a PLAN"},
		"report maybe":           {"report --json=maybe PLAN", `invalid boolean value "maybe" for -json`},
		"export nothing":         {"export", "export needs a PLAN"},
		"export no file":         {"export PLAN", "export needs at least one of --dxf, --svg, --pdf, --csv, --proof, --template, --scale, --strip, --coupon, --router"},
		"export only a date":     {"export PLAN --date 2026-11-20", "export needs at least one of"},
		"export unknown format":  {"export PLAN --stl x", "flag provided but not defined: -stl"},
		"export without value":   {"export PLAN --dxf", "flag needs an argument: -dxf"},
		"export empty value":     {"export PLAN --dxf=", "the name of a file is needed"},
		"export a flag's value":  {"export PLAN --dxf --pdf x", `invalid value "--pdf" for flag -dxf: that looks like a flag; a file of that name is ./--pdf`},
		"export to a dash":       {"export PLAN --csv -", "that looks like a flag"},
		"date in words":          {"export PLAN --csv x --date today", `invalid value "today" for flag -date: must be a date as 2026-11-20`},
		"date not in the year":   {"export PLAN --csv x --date 2026-02-30", "must be a date"},
		"date turned round":      {"export PLAN --csv x --date 20-11-2026", "must be a date"},
		"unknown paper":          {"export PLAN --pdf x --paper a5", `invalid value "a5" for flag -paper: must be one of a4, letter`},
		"bar of nothing":         {"export PLAN --template x --bar-x 0", `invalid value "0" for flag -bar-x: must be above 0`},
		"bar far off":            {"export PLAN --template x --bar-y 190mm", "The bar up the paper is 200 mm long and measures 190 mm."},
		"bar in words":           {"export PLAN --template x --bar-x long", `invalid value "long" for flag -bar-x`},
		"step of a third":        {"export PLAN --scale x.dxf --step 1/3", "must be 1, 0.5 or 0.25"},
		"step of nothing":        {"export PLAN --scale x.dxf --step 0", "must be 1, 0.5 or 0.25"},
		"no such vernier":        {"export PLAN --scale x.dxf --vernier 7", `a vernier read to "7": must be 0.1, 5 or none`},
		"a vernier that is none": {"export PLAN --scale x.dxf --step 0.25", "cannot be read to 0.1° by a vernier"},
		"index nowhere":          {"export PLAN --scale x.dxf --index north", `invalid value "north" for flag -index`},
		"new unknown":            {"new --demo table", `there is no demonstration plan "table"; there are sanding-table, camera-head, vice-base`},
		"new with a file":        {"new x.stopwright", `new takes no "x.stopwright"; a file is named by -o FILE`},
		"new to a flag":          {"new -o --list", "that looks like a flag"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Chdir(t.TempDir())
			args := strings.Fields(strings.ReplaceAll(c.args, "PLAN", p))
			r := cli("", args...)
			r.complains(t, statusUnusable, "usage: ", c.says)
			assert.Equal(t, 1, strings.Count(r.err, "\n"), "one line")
			assert.Empty(t, entries(t, "."), "nothing is written")
		})
	}
	cli("", "check", "").complains(t, statusUnusable, "the name of the PLAN is empty")
}

func TestFlagsStandAnywhere(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	put(t, dir, "p", demo(t, "vice-base"))
	put(t, dir, "--json", demo(t, "camera-head"))
	want := cli("", "report", "--json", "--quick", "p")
	want.silent(t)
	for _, args := range [][]string{
		{"report", "p", "--json", "--quick"},
		{"report", "--quick", "p", "--json"},
		{"report", "-json", "-quick", "--", "p"},
		{"report", "-json=true", "--quick=1", "p", "--"},
	} {
		assert.Equal(t, want, cli("", args...), args)
	}
	r := cli("", "report", "--", "--json")
	r.silent(t)
	assert.Contains(t, r.out, "Camera head", "a file may be named like a flag")
}

// failing is a stream that takes some bytes and then no more.
type failing struct {
	room int
	err  error
}

func (f *failing) Write(p []byte) (int, error) {
	if len(p) <= f.room {
		f.room -= len(p)
		return len(p), nil
	}
	n := f.room
	f.room = 0
	return n, f.err
}

func TestOutputThatCannotBeWritten(t *testing.T) {
	for _, args := range [][]string{
		{"new"},
		{"new", "--list"},
		{"check", "-"},
		{"report", "-"},
		{"report", "--json", "-"},
		{"help"},
		{"help", "export"},
	} {
		for _, room := range []int{0, 5} {
			var stderr bytes.Buffer
			out := &failing{room, &os.PathError{Op: "write", Path: "/dev/stdout", Err: syscall.ENOSPC}}
			status := run(args, strings.NewReader(overlapping(t)), out, &stderr)
			assert.Equal(t, statusUnwritten, status, args)
			assert.Equal(t, "stopwright-cli: cannot write standard output: the disk is full\n", stderr.String(), args)
		}
	}
}

// A reader that fails is the plan's fault, not the disk's.
func TestInputThatCannotBeRead(t *testing.T) {
	var out, stderr bytes.Buffer
	status := run([]string{"check", "-"}, brokenReader{}, &out, &stderr)
	newResult(status, out.String(), stderr.String()).complains(t, statusUnusable, "cannot read standard input: ", "the cable is loose")
}

type brokenReader struct{}

func (brokenReader) Read([]byte) (int, error) { return 0, errors.New("the cable is loose") }

type panickingReader struct{}

func (panickingReader) Read([]byte) (int, error) { panic("index 7\nof 3") }

// Nobody who meets a defect of ours shall have to read a stack.
func TestAPanicIsOneSentence(t *testing.T) {
	var out, stderr bytes.Buffer
	status := run([]string{"check", "-"}, panickingReader{}, &out, &stderr)
	assert.Equal(t, 70, status)
	assert.Empty(t, out.String())
	assert.Equal(t, "stopwright-cli: internal fault: index 7 of 3; please report it, with the plan\n", stderr.String())
}

// What a plan says of itself must not steer the terminal it is printed on.
func TestTextsOfAPlanStayOnTheirLine(t *testing.T) {
	file := strings.Replace(demo(t, "vice-base"), `"x": 45, "y": 40, "diameter": 6.6, "label": "vice bolt 2"`,
		`"x": 45, "y": 60, "diameter": 30, "label": "bolt\u001b[2J\u2028\u202enot\nso"`, 1)
	file = strings.Replace(file, `"label": "square"`, `"label": "sq\tuare\r"`, 1)
	for _, verb := range []string{"check", "report"} {
		r := cli(file, verb, "-")
		assert.Equal(t, statusFindings, r.status)
		assert.Contains(t, r.out, "bolt [2J  not so")
		assert.NotContains(t, r.out, "\x1b")
		assert.NotContains(t, r.out, "\r")
	}
	dir := t.TempDir()
	r := cli("", "check", filepath.Join(dir, "two\nlines\x1b"))
	r.complains(t, statusUnusable, `two\nlines\x1b"`)
	require.Equal(t, 1, strings.Count(r.err, "\n"))
}
