package export

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A file that cannot be made must be found out before any is written.
func TestNothingIsWrittenUnlessAllIsMade(t *testing.T) {
	dir := t.TempDir()
	old := filepath.Join(dir, "old")
	require.NoError(t, os.WriteFile(old, []byte("old"), 0o600))
	cannot := errors.New("a radius that is no number")
	written, err := writeAll(realDisk{}, []output{
		{old, func(w io.Writer) error { _, err := io.WriteString(w, "new"); return err }},
		{filepath.Join(dir, "bad"), func(io.Writer) error { return cannot }},
	})
	require.ErrorIs(t, err, cannot)
	assert.ErrorContains(t, err, "bad")
	assert.Empty(t, written)
	content, err := os.ReadFile(old)
	require.NoError(t, err)
	assert.Equal(t, "old", string(content))
	list, err := os.ReadDir(dir)
	require.NoError(t, err)
	assert.Len(t, list, 1)
}
