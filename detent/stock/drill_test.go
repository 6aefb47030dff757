package stock_test

import (
	"math"
	"math/big"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/measure"
	"stopwright/detent/stock"
)

// drill returns the drill of a designation, which must be there once.
func drill(t *testing.T, designation string) stock.Drill {
	t.Helper()
	var found []stock.Drill
	for _, d := range stock.Drills() {
		if d.Designation == designation {
			found = append(found, d)
		}
	}
	require.Len(t, found, 1, designation)
	return found[0]
}

func TestDrillsOfEachSystem(t *testing.T) {
	count := map[stock.System]int{}
	for _, d := range stock.Drills() {
		count[d.System]++
	}
	assert.Equal(t, map[stock.System]int{
		stock.Number: 80, stock.Letter: 26, stock.Fraction: 32, stock.Metric: 129,
	}, count)
}

func TestDrillSizes(t *testing.T) {
	for _, k := range []struct {
		designation string
		inch, mm    float64
	}{
		{"#80", 0.0135, 0.3429},
		{"#60", 0.040, 1.016},
		{"#30", 0.1285, 3.2639},
		{"#12", 0.189, 4.8006},
		{"#7", 0.201, 5.1054},
		{"#1", 0.228, 5.7912},
		{"A", 0.234, 5.9436},
		{"E", 0.250, 6.35},
		{"Z", 0.413, 10.4902},
		{"3/16", 0.1875, 4.7625},
		{"1/2", 0.5, 12.7},
		{"13.0", 0.511811, 13},
	} {
		t.Run(k.designation, func(t *testing.T) {
			d := drill(t, k.designation)
			assert.Equal(t, k.inch, d.Inch)
			assert.Equal(t, k.mm, d.MM)
		})
	}
}

// TestInchDrillsAreExact multiplies as fractions, so that not the last digit of
// a float64 is left to chance.
func TestInchDrillsAreExact(t *testing.T) {
	for _, d := range stock.Drills() {
		if d.System == stock.Metric {
			const half = 0.5e-6 // inch: the last of six printed decimals
			assert.InDelta(t, d.MM/measure.MillimetresPerInch, d.Inch, half, d.Designation)
			continue
		}
		inch, ok := new(big.Rat).SetString(strconv.FormatFloat(d.Inch, 'f', -1, 64))
		require.True(t, ok)
		want, _ := inch.Mul(inch, big.NewRat(254, 10)).Float64()
		assert.Equal(t, want, d.MM, d.Designation)
	}
}

// TestDrillsAreWhatTheyAreCalled: a fraction or a metric size is its own name.
func TestDrillsAreWhatTheyAreCalled(t *testing.T) {
	for _, d := range stock.Drills() {
		unit := measure.Millimetre
		switch d.System {
		case stock.Fraction:
			unit = measure.Inch
		case stock.Metric:
		default:
			continue
		}
		mm, err := measure.ParseLength(d.Designation, unit)
		require.NoError(t, err)
		assert.Equal(t, mm, d.MM, d.Designation)
	}
}

// TestDrillsGrow: along the whole list, and within each system in the order of
// its names, except that numbers run the other way.
func TestDrillsGrow(t *testing.T) {
	drills := stock.Drills()
	assert.True(t, slices.IsSortedFunc(drills, func(a, b stock.Drill) int {
		if a.MM != b.MM {
			return int(math.Copysign(1, a.MM-b.MM))
		}
		return int(a.System - b.System)
	}))
	last := map[stock.System]stock.Drill{}
	for _, d := range drills {
		if before, ok := last[d.System]; ok {
			assert.Greater(t, d.MM, before.MM, "no system names a size twice: %s", d.Designation)
			switch d.System {
			case stock.Letter:
				assert.Equal(t, before.Designation[0]+1, d.Designation[0])
			case stock.Number:
				assert.Equal(t, number(t, before)-1, number(t, d))
			}
		}
		last[d.System] = d
	}
}

func number(t *testing.T, d stock.Drill) int {
	t.Helper()
	n, err := strconv.Atoi(d.Designation[1:])
	require.NoError(t, err)
	return n
}

func TestSystemNames(t *testing.T) {
	for system, name := range map[stock.System]string{
		stock.Metric: "metric", stock.Fraction: "fraction", stock.Number: "number", stock.Letter: "letter", 0: "unknown",
	} {
		assert.Equal(t, name, system.String())
	}
}
