// Package plainlocale names a language to the window toolkit where the system
// gives only a plain locale such as C.UTF-8, which the toolkit reports as an
// error while it starts, before any of main runs.
//
// It must import nothing but os and strings: Go initialises packages in the
// order of their paths as soon as their imports are ready, so this one comes
// before the toolkit's, which wait for larger ones.
package plainlocale

import (
	"os"
	"strings"
)

func init() {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if v := os.Getenv(name); v != "" {
			if strings.HasPrefix(v, "C.") || strings.HasPrefix(v, "POSIX.") {
				_ = os.Setenv("LANGUAGE", "en") // can only fail for a bad name
			}
			return
		}
	}
}
