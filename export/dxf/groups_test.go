package dxf

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// group is one record of a file.
type group struct {
	code  int
	value string
}

// groups reads a file the plainest way there is, as pairs of lines, and fails
// where the first of a pair is no whole number.
func groups(t testing.TB, file []byte) []group {
	t.Helper()
	text, ended := strings.CutSuffix(string(file), "\n")
	require.True(t, ended, "the last line is ended")
	lines := strings.Split(text, "\n")
	require.Zero(t, len(lines)%2, "every group code has its value")
	var out []group
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(lines[i])
		require.NoError(t, err, "line %d", i+1)
		out = append(out, group{code, lines[i+1]})
	}
	return out
}

// entityGroups returns the records of each entity of the file.
func entityGroups(t testing.TB, file []byte) [][]group {
	t.Helper()
	var out [][]group
	inside := false
	for i, g := range groups(t, file) {
		switch {
		case g == group{2, "ENTITIES"}:
			inside = true
		case g == group{0, "ENDSEC"}:
			inside = false
		case inside && g.code == 0:
			out = append(out, []group{g})
		case inside:
			require.NotEmpty(t, out, "record %d stands before any entity", i)
			out[len(out)-1] = append(out[len(out)-1], g)
		}
	}
	return out
}

// value returns the first value of a code.
func value(t testing.TB, gs []group, code int) string {
	t.Helper()
	for _, g := range gs {
		if g.code == code {
			return g.value
		}
	}
	require.Fail(t, "no such code", "%d in %v", code, gs)
	return ""
}
