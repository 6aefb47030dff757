package stock_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent/stock"
)

// rounding is what a sum in float64 may be off by, in mm or in shares: far
// below the last digit of any table here.
const rounding = 1e-12

// material returns a material that must be there.
func material(t *testing.T, name string) stock.Material {
	t.Helper()
	m, ok := stock.FindMaterial(name)
	require.True(t, ok, name)
	return m
}
