package angles

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
)

func TestMitre(t *testing.T) {
	for n, want := range map[int]geom.Angle{3: 60, 4: 45, 5: 36, 6: 30, 8: 22.5, 12: 15} { // halves of the corners' turns
		assert.Equal(t, want, Mitre(n), "%d sides", n)
	}
	seventh, err := measure.ParseAngle("180/7")
	require.NoError(t, err)
	assert.Equal(t, seventh, Mitre(7), "the same as when typed")
	for n := MinSides; n <= MaxSides; n++ {
		corner := 180 - 360/float64(n) // of the polygon
		assert.InDelta(t, corner/2, 90-Mitre(n).Degrees(), rounding, "the mitre halves the corner of %d sides", n)
	}
}

func TestParseSides(t *testing.T) {
	for _, c := range []struct {
		text string
		want []int
		why  string
	}{
		{"8", []int{8}, "one"},
		{"3-6", []int{3, 4, 5, 6}, "a range"},
		{"3 to 6", []int{3, 4, 5, 6}, "in words"},
		{"3 – 6", []int{3, 4, 5, 6}, "with a dash"},
		{"6-3", []int{3, 4, 5, 6}, "from high to low"},
		{"5, 6; 8 12", []int{5, 6, 8, 12}, "a list, parted as anyone likes"},
		{"12, 4-6, 5", []int{4, 5, 6, 12}, "in order, each once"},
		{"24", []int{24}, "the most"},
	} {
		got, err := ParseSides(c.text)
		require.NoError(t, err, c.text)
		assert.Equal(t, c.want, got, c.why)
	}
}

func TestParseSidesRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"":       "no number of sides: write numbers from 3 to 24, as 3-8, 12",
		" , ":    "no number of sides: write numbers from 3 to 24, as 3-8, 12",
		"2":      "“2” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"4, 25":  "“25” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"3-":     "“3-” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"-5":     "“-5” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"5.5":    "“5.5” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"3-4-5":  "“3-4-5” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
		"3-9999": "“3-9999” is not a number of sides: write numbers from 3 to 24, as 3-8, 12",
	} {
		_, err := ParseSides(text)
		assert.EqualError(t, err, want)
	}
}
