package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/stock"
)

// More effort places holes no worse, and no source is claimed for any figure.
func TestMethods(t *testing.T) {
	all := stock.Methods()
	for i, m := range all {
		assert.Equal(t, stock.CommonPractice, m.Spread.Certainty, m.ID)
		assert.Contains(t, m.Spread.Source, "no single source", m.ID)
		if i > 0 {
			assert.Greater(t, m.Effort, all[i-1].Effort, m.ID)
			assert.Less(t, m.Spread.Typical, all[i-1].Spread.Typical, m.ID)
		}
	}
	all[0].ID = "written"
	assert.Equal(t, "hand-drill", stock.Methods()[0].ID, "the caller has a list of his own")
}
