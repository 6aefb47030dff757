package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestDisplay(t *testing.T) {
	for _, c := range []struct {
		why       string
		os        string
		vars      map[string]string
		listening []string
		complaint string // empty: there is a display
	}{
		{"a desktop", "linux", map[string]string{"DISPLAY": ":0"}, []string{"/tmp/.X11-unix/X0"}, ""},
		{"a screen of it", "linux", map[string]string{"DISPLAY": ":12.1"}, []string{"/tmp/.X11-unix/X12"}, ""},
		{
			"a container that shares the network but not the files", "linux",
			map[string]string{"DISPLAY": ":0"},
			[]string{"@/tmp/.X11-unix/X0"},
			"",
		},
		{"a display far away shows only on use", "linux", map[string]string{"DISPLAY": "localhost:10.0"}, nil, ""},
		{"no desktop", "linux", nil, nil, "DISPLAY is not set"},
		{"a display that has ended", "linux", map[string]string{"DISPLAY": ":99"}, nil, "nothing answers at DISPLAY :99"},
		{"a name that is none", "linux", map[string]string{"DISPLAY": ":"}, nil, "nothing answers at DISPLAY :"},
		{
			"Wayland without X11", "linux",
			map[string]string{"WAYLAND_DISPLAY": "wayland-0"},
			nil, "the desktop's X11 service, Xwayland, is not running",
		},
		{"macOS always has one", "darwin", nil, nil, ""},
		{"Windows always has one", "windows", nil, nil, ""},
	} {
		m := &fake{os: c.os, vars: c.vars, listening: c.listening}
		err := (&setup{machine: m}).display()
		if c.complaint == "" {
			assert.NoError(t, err, c.why)
			continue
		}
		want := "There is no display to open a window on: " + c.complaint + ".\n" + withoutDisplay
		assert.Equal(t, failure{exitNoDisplay, want}, err, c.why)
	}
}

func TestNobodyWaitsForABuildWithoutDisplay(t *testing.T) {
	m := &fake{os: "linux", release: "ID=debian", isRoot: true, programs: []string{"apt-get"}}
	code, out, errOut := perform(t, m, "run")
	assert.Equal(t, exitNoDisplay, code)
	assert.Empty(t, out)
	assert.Contains(t, errOut, "There is no display")
	assert.Empty(t, m.ran, "neither installed nor built")
}
