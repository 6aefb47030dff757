// Package version says which version of the program this is.
package version

import (
	"fmt"
	"runtime"
	"runtime/debug"
)

// Number is the version of the program, the same as in FyneApp.toml.
const Number = "0.1.0"

// Built says in one line what the program was built from and with:
//
//	0.1.0 (4f1d2c9a83b0), go1.25.0, linux/amd64
//
// The revision stands there only where the build recorded it.
func Built() string {
	built := Number
	if info, ok := debug.ReadBuildInfo(); ok {
		if r := revision(info.Settings); r != "" {
			built += " (" + r + ")"
		}
	}
	return fmt.Sprintf("%s, %s, %s/%s", built, runtime.Version(), runtime.GOOS, runtime.GOARCH)
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
