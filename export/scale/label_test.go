package scale_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/scale"
)

// A label that is too long to be engraved whole is not cut: the stop bears its
// angle, as one without a label does.
func TestALongLabelGivesWayToTheAngle(t *testing.T) {
	draw := func(label string) (flat, strip drawing.Drawing) {
		pl := plate.New(planOf(plan.Clockwise, -60, 60, plan.Stop{Angle: 33.25, Label: label}))
		flat, err := scale.Drawing(pl, words.English(), scale.Options{})
		require.NoError(t, err)
		strip, err = scale.Strip(pl, words.English(), scale.Options{})
		require.NoError(t, err)
		return flat, strip
	}
	flat, strip := draw("")
	longFlat, longStrip := draw(strings.Repeat("bench ", 8))
	assert.True(t, reflect.DeepEqual(flat, longFlat))
	assert.True(t, reflect.DeepEqual(strip, longStrip))
	whole, _ := draw("along the bench")
	assert.Greater(t, len(whole.Entities), len(flat.Entities), "letters of a label that fits")
}

// Only a strip that goes right round is said to close; another says what rim it
// is for.
func TestHowAStripIsWrapped(t *testing.T) {
	for _, c := range []struct {
		from, to    float64
		says, never string
	}{
		{-60, 60, "drawn for 942.5 mm", "closes"}, // 300 mm times pi is 942.48
		{-180, 180, "closes", "drawn for"},
	} {
		p := planOf(plan.Clockwise, c.from, c.to, plan.Stop{})
		p.Turntable.Diameter = 300
		sheets, err := scale.StripSheets(plate.New(p), info(), scale.Options{})
		require.NoError(t, err)
		steps := strings.Join(sheets[0].Steps, "\n")
		assert.Contains(t, steps, c.says)
		assert.NotContains(t, steps, c.never)
	}
}
