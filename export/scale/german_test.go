package scale_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/scale"
)

// What is engraved is read by who reads the sheets: a German scale has decimal
// commas, as if the maker had labelled the stop so.
func TestGermanScalesAreEngravedWithCommas(t *testing.T) {
	german, err := words.In("de")
	require.NoError(t, err)
	draw := func(c *words.Catalogue, label string) (all []drawing.Drawing) {
		pl := plate.New(planOf(plan.Clockwise, -60, 60, plan.Stop{Angle: 33.25, Label: label}))
		flat, err := scale.Drawing(pl, c, scale.Options{})
		require.NoError(t, err)
		strip, err := scale.Strip(pl, c, scale.Options{})
		require.NoError(t, err)
		return []drawing.Drawing{flat, strip}
	}
	assert.Equal(t, draw(words.English(), "33,25"), draw(german, ""))
	assert.Equal(t, draw(german, "33.25"), draw(words.English(), ""))
	assert.NotEqual(t, draw(german, ""), draw(words.English(), ""))
}
