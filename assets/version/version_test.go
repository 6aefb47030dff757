package version

import (
	"os"
	"runtime/debug"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestPackagingNamesTheSameVersion(t *testing.T) {
	text, err := os.ReadFile("../../FyneApp.toml")
	require.NoError(t, err)
	assert.Contains(t, string(text), `Version = "`+Number+`"`)
}

func TestBuilt(t *testing.T) {
	assert.Regexp(t, `^\d+\.\d+\.\d+( \([0-9a-f]{12}\+?\))?, \S+, \w+/\w+$`, Built())
}

func TestRevision(t *testing.T) {
	set := func(pairs ...string) (out []debug.BuildSetting) {
		for i := 0; i < len(pairs); i += 2 {
			out = append(out, debug.BuildSetting{Key: pairs[i], Value: pairs[i+1]})
		}
		return out
	}
	for _, c := range []struct {
		why  string
		in   []debug.BuildSetting
		want string
	}{
		{"nothing recorded", nil, ""},
		{"a revision", set("GOOS", "linux", "vcs.revision", "4f1d2c9a83b0e1", "vcs.modified", "false"), "4f1d2c9a83b0"},
		{"changed since", set("vcs.revision", "4f1d2c9a83b0e1", "vcs.modified", "true"), "4f1d2c9a83b0+"},
		{"of a system with short ones", set("vcs.revision", "12"), "12"},
	} {
		assert.Equal(t, c.want, revision(c.in), c.why)
	}
}
