package router_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// setUp makes the lines of a test a program that can be run.
func setUp(lines string) string { return "G17 G21 G90 G94\nS1000 M3 F100\n" + lines + "\nM2\n" }

// run interprets lines from a place and returns where the tool went.
func run(t *testing.T, from vec, lines string) []motion {
	t.Helper()
	m := &machine{at: from, backOff: 0.254}
	require.NoError(t, interpret(setUp(lines), m))
	return m.motions
}

// The interpreter of the tests must itself follow the rules: the worked example
// of NISTIR 6556 section 3.5.16.2, from (1,2,3).
func TestInterpreterOnTheHandbooksExample(t *testing.T) {
	var went []vec
	for _, s := range run(t, vec{1, 2, 3}, "G90 G81 G98 X4 Y5 Z1.5 R2.8") {
		went = append(went, s.to)
		assert.Equal(t, s.to != vec{4, 5, 1.5}, s.rapid, "only the way down is fed")
	}
	assert.Equal(t, []vec{{4, 5, 3}, {4, 5, 2.8}, {4, 5, 1.5}, {4, 5, 3}}, went)
}

func TestInterpreterOfReturns(t *testing.T) {
	last := func(lines string) vec {
		went := run(t, vec{0, 0, 3}, lines)
		return went[len(went)-1].to
	}
	assert.Equal(t, 2.8, last("G81 G99 X4 Y5 Z1.5 R2.8").z, "G99 returns to R")
	assert.Equal(t, 3.0, last("G81 G98 X4 Y5 Z1.5 R2.8\nX7").z, "R and Z stay in force, and so does the height returned to")
	assert.Equal(t, vec{7, 5, 3}, last("G81 G98 X4 Y5 Z1.5 R2.8\nX7"))
	assert.Equal(t, 3.5, last("G81 G98 X4 Y5 Z1.5 R3.5").z, "begun below R: up to R first, and back to it")
}

// R 0.2, Z -1.1, Q 0.21: exact arithmetic.
func TestInterpreterOfPecks(t *testing.T) {
	const rounding = 1e-12
	var ends []float64
	for _, s := range run(t, vec{0, 0, 1}, "G83 G98 X1 Y1 Z-1.1 R0.2 Q0.21") {
		if !s.rapid {
			ends = append(ends, s.to.z)
		}
	}
	assert.InDeltaSlice(t, []float64{-0.01, -0.22, -0.43, -0.64, -0.85, -1.06, -1.1}, ends, rounding)
}

func TestInterpreterRefuses(t *testing.T) {
	for why, lines := range map[string]string{
		"R below Z":                     "G81 X4 Y5 Z1.5 R1",
		"no X, Y or Z":                  "G81 R1",
		"Q of 0":                        "G83 X1 Y1 Z-1 R1 Q0",
		"no Q":                          "G83 X1 Y1 Z-1 R1",
		"a negative dwell":              "G82 X1 Y1 Z-1 R1 P-1",
		"two motions on a line":         "G0 G1 X1",
		"a letter twice":                "G0 X1 X2",
		"radii that differ":             "G3 X1 Y0 I-2",
		"a word it does not know":       "G33 X1",
		"a comment in a comment":        "(a (b))",
		"a comment without an end":      "(a",
		"a letter that is not ASCII":    "(ä)",
		"a negative zero":               "G0 X-0.0000",
		"a feed with a still spindle":   "M5\nG1 X1",
		"a tool changed while it turns": "T1 M6",
		"lines after the end":           "M2\nG0 X1",
	} {
		assert.Error(t, interpret(setUp(lines), &machine{at: vec{0, 0, 3}}), why)
	}
	assert.Error(t, interpret("G17 G90 G94\nG0 X1\nM2\n", &machine{}), "no units")
	assert.Error(t, interpret("G17 G21 G90 G94\nS1000 M3\nG1 X1\nM2\n", &machine{}), "no feed")
	assert.Error(t, interpret("G17 G21 G90 G94\nG0 X1\n", &machine{}), "no end")
}
