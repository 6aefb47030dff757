package budget

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestToleranceOfAnUncertainty: an uncertainty of so many significant digits is
// c·10^l with c a whole number of so many digits, and its tolerance is half of
// 10^l (JCGM 101 7.9.2, the rule and numbers of its kind).
func TestToleranceOfAnUncertainty(t *testing.T) {
	const rounding = 1e-12 // of a power of ten, as a share
	assert.InEpsilon(t, 0.000005, tolerance(0.00035, 2), rounding, "35·10⁻⁵")
	assert.InEpsilon(t, 0.00005, tolerance(0.0004, 1), rounding, "4·10⁻⁴")
	assert.InEpsilon(t, 0.5, tolerance(2, 1), rounding, "2·10⁰")
	assert.InEpsilon(t, 0.5, tolerance(10, 2), rounding, "10·10⁰, the least of two digits")
	assert.Zero(t, tolerance(0, 2))
}

// TestNoWaveGoesThroughTheCeiling looks ahead from many places over many waves.
func TestNoWaveGoesThroughTheCeiling(t *testing.T) {
	for shape := range shapes {
		highest := 0.0 // of the wave from z on
		for z := 400.0; z > 0.01; z -= 0.01 {
			highest = max(highest, math.Abs(shape.wave(z)))
			require.LessOrEqual(t, highest, shape.ceiling(z), "%s at %g", shape, z)
		}
	}
}
