//go:build !ci

package main

import (
	"errors"
	"os"
	"runtime"
)

// ready says why no window can be shown, before the toolkit finds out by
// failing.
func ready(shots bool) error {
	if shots {
		return errors.New("pictures are made without a display by: go run ./cmd/setup shots DIR")
	}
	switch runtime.GOOS {
	case "darwin", "windows":
		return nil
	}
	if os.Getenv("DISPLAY") == "" && os.Getenv("WAYLAND_DISPLAY") == "" {
		return errors.New("there is no display to show the window on (DISPLAY is not set); " +
			"stopwright-cli does the same work from a shell")
	}
	return nil
}
