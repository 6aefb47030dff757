package main

import (
	"bytes"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
)

// Whatever is typed, the program ends with one of its four codes, and what goes
// wrong is told: never a fault of its own, never a code without a word.
func FuzzArguments(f *testing.F) {
	for _, line := range []string{
		"", "help", "help export", "-h", "new", "new --list", "new --demo vice-base -o q", "check p", "check -", "check", "check p p",
		"report p --json", "report --quick p", "report -- p", "export p --csv c --date 2026-11-20", "export p --dxf d --pdf f --paper A3",
		"export p --csv p", "export p --csv", "export p --date yesterday", "chekc p", "report --json=maybe p", "--", "check \x00",
	} {
		f.Add(line, "")
	}
	sample, err := plans.Open("vice-base")
	require.NoError(f, err)
	f.Add("check -", string(sample))
	f.Chdir(f.TempDir())
	f.Fuzz(func(t *testing.T, line, input string) {
		if strings.ContainsAny(line, `/\`) || strings.Contains(line, "..") {
			return // whoever makes the lines up must not leave this folder
		}
		require.NoError(t, os.WriteFile("p", sample, 0o600))
		var out, stderr bytes.Buffer
		status := run(strings.Split(line, " "), strings.NewReader(input), &out, &stderr)
		require.Contains(t, []int{statusGood, statusFindings, statusUnusable, statusUnwritten}, status, stderr.String())
		if status == statusUnusable || status == statusUnwritten {
			require.NotEmpty(t, stderr.String())
		}
		for said := range strings.Lines(stderr.String()) {
			require.True(t, toldAs(said), said)
		}
		left, err := os.ReadDir(".")
		require.NoError(t, err)
		for _, e := range left {
			require.NotContains(t, e.Name(), ".tmp", "nothing half written is left")
			require.NoError(t, os.RemoveAll(e.Name()))
		}
	})
}

// toldAs reports whether a line of stderr is a sentence of the program's own or
// a finding.
func toldAs(line string) bool {
	return strings.HasSuffix(line, "\n") && slices.ContainsFunc([]string{program + ": ", "note ", "warning ", "error "}, func(begin string) bool {
		return strings.HasPrefix(line, begin)
	})
}
