package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestPlatformOf(t *testing.T) {
	for _, c := range []struct {
		os, release string
		want        platform
		why         string
	}{
		{"linux", "ID=debian\n", debian, "named itself"},
		{"linux", "NAME=\"Ubuntu\"\nID=ubuntu\nID_LIKE=debian\n", debian, "shares Debian's packages"},
		{"linux", "ID=\"linuxmint\"\nID_LIKE=\"ubuntu debian\"\n", debian, "values may be quoted, parents several"},
		{"linux", "ID=fedora\n", fedora, "named itself"},
		{"linux", "ID=\"rocky\"\nID_LIKE=\"rhel centos fedora\"\n", fedora, "the nearest known relation counts"},
		{"linux", "ID=arch\n", arch, "named itself"},
		{"linux", "ID=manjaro\nID_LIKE=arch\n", arch, "derived"},
		{"linux", "ID='Debian'\n", debian, "single quotes and capitals do no harm"},
		{"linux", "ID=alpine\n", unknown, "no relation named"},
		{"linux", "not a list of values\n", unknown, "a file of something else"},
		{"linux", "", unknown, "no such file"},
		{"darwin", "ID=debian\n", macOS, "the file means nothing there"},
		{"windows", "", windows, "named by Go"},
		{"freebsd", "ID=freebsd\n", unknown, "X11, but packages of its own"},
	} {
		assert.Equal(t, c.want, platformOf(&fake{os: c.os, release: c.release}), "%q: %s", c.release, c.why)
	}
}

func TestOsReleaseInItsSecondPlace(t *testing.T) {
	m := &elsewhere{fake{os: "linux"}}
	assert.Equal(t, arch, platformOf(m))
}

// elsewhere keeps os-release where /etc does not hold one.
type elsewhere struct{ fake }

func (e *elsewhere) readFile(path string) (string, error) {
	if path == "/usr/lib/os-release" {
		return "ID=arch\n", nil
	}
	return e.fake.readFile(path)
}
