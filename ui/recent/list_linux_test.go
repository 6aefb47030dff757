package recent_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/ui/recent"
)

// In /proc nobody, an administrator included, can make a folder, and a file
// that is not there can never be made.
func TestAListWhoseFolderCannotBeMade(t *testing.T) {
	l := recent.Open("/proc/stopwright/recent.json")
	require.Error(t, l.Add("/a"))
	require.Error(t, l.Add("/b"))
	assert.Equal(t, []string{"/b", "/a"}, l.Files())
}
