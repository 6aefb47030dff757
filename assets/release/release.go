// Package release says which version of the program this is.
package release

import (
	"fmt"
	"runtime"
	"runtime/debug"
)

// Version is the version of the program, the same as in FyneApp.toml.
const Version = "0.1.0"

// Built says in one line what the program was built from and with:
//
//	0.1.0 (4f1d2c9a83b0), go1.25.0, linux/amd64
//
// The revision stands there only where the build recorded it.
func Built() string {
	version := Version
	if info, ok := debug.ReadBuildInfo(); ok {
		if r := revision(info.Settings); r != "" {
			version += " (" + r + ")"
		}
	}
	return fmt.Sprintf("%s, %s, %s/%s", version, runtime.Version(), runtime.GOOS, runtime.GOARCH)
}

// revision returns what a build recorded of its sources: the beginning of the
// revision, with a + if they were changed since; "" if nothing.
func revision(settings []debug.BuildSetting) string {
	const length = 12 // hexadecimal digits: enough to be told from any other
	var r, changed string
	for _, s := range settings {
		switch {
		case s.Key == "vcs.revision":
			r = s.Value[:min(length, len(s.Value))]
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = "+"
		}
	}
	if r == "" {
		return ""
	}
	return r + changed
}
