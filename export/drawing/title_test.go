package drawing_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/drawing"
)

func TestTitle(t *testing.T) {
	c := words.English()
	p := plan.Default()
	p.Title = "  A plate\n of mine "
	assert.Equal(t, "A plate of mine", drawing.Title(p, c, "else"))
	p.Scale = 0.5
	assert.Equal(t, "TRIAL AT 1:2 A plate of mine", drawing.Title(p, c, "else"))
	p.Title = ""
	assert.Equal(t, "TRIAL AT 1:2 else", drawing.Title(p, c, "else"))
	assert.Equal(t, "TRIAL AT 1:2", drawing.Title(p, c, ""))
	german, err := words.In("de")
	require.NoError(t, err)
	p.Scale = 0.4
	assert.Contains(t, drawing.Title(p, german, ""), "1:2,5")
	for scale, want := range map[float64]string{0.5: "1:2", 0.4: "1:2.5", 1.0 / 3: "1:3", 1: "1:1", 2: "2:1", 1.25: "1.25:1", 0.05: "1:20"} {
		assert.Equal(t, want, drawing.ScaleText(scale))
	}
}
