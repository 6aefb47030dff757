package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestLettered(t *testing.T) {
	for _, c := range []struct{ text, want, why string }{
		{"Größe ⌀4.5 ±0.1°", "Größe ⌀4.5 ±0.1°", "what the font has stays"},
		{" a\t\r\n b ", "a b", "white space becomes single spaces"},
		{"a\x00\x1bb", "ab", "control characters go"},
		{"漢 \U0001F600", "? ?", "what the font lacks is seen to be missing"},
		{"a\xff", "a?", "so is what is no letter at all"},
	} {
		assert.Equal(t, c.want, Lettered(c.text), c.why)
	}
}
