package dxf

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestLineTypesAreNamedApart(t *testing.T) {
	l := newLineTypes()
	chain := l.of([]float64{8, 1.5, 1, 1.5})
	for _, c := range []struct {
		dash      []float64
		want, why string
	}{
		{nil, "Continuous", "no dash"},
		{[]float64{8, 1.5, 1, 1.5}, "CENTER", "the usual name for the first of its kind"},
		{[]float64{4, 1, 1, 1}, "MM-4-1-1-1", "a second one must not change the first"},
		{[]float64{3, 1.5}, "DASHED", "another kind"},
		{[]float64{1, 1, 1, 1, 1, 1, 1, 1}, "MM-1-1-1-1-1-1-1-1", "a kind with no usual name"},
	} {
		assert.Equal(t, c.want, l.of(c.dash).Name(), c.why)
	}
	assert.Same(t, chain, l.of([]float64{8, 1.5, 1, 1.5}), "one line type for all pens of a pattern")
	assert.InDelta(t, 12, chain.TotalLength(), sameMM)
}
