//go:build !ci

package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestWithoutADisplay(t *testing.T) {
	for _, c := range []struct {
		why  string
		vars []string
		says string
	}{
		{"none is named", nil, "DISPLAY is not set"},
		{"an empty name", []string{"DISPLAY=", "WAYLAND_DISPLAY="}, "DISPLAY is not set"},
		{"none answers to it", []string{"DISPLAY=:4711"}, "display :4711"},
		{"a name of another make", []string{"DISPLAY=nonsense"}, "display nonsense"},
	} {
		code, said := ended(t, c.vars)
		assert.Equal(t, noDisplay, code, c.why)
		oneSentence(t, said)
		assert.Contains(t, said, c.says, c.why)
	}
}

// What cannot be used is told before the display is looked for.
func TestAFileThatIsNoPlanWithoutADisplay(t *testing.T) {
	code, said := ended(t, nil, "/etc/hostname")
	assert.Equal(t, unusable, code)
	oneSentence(t, said)
}

func TestPicturesNeedTheOtherBuild(t *testing.T) {
	code, said := ended(t, []string{"DISPLAY=:4711"}, "-shots", t.TempDir())
	assert.Equal(t, noDisplay, code)
	oneSentence(t, said)
	assert.Contains(t, said, "shots")
}
