package main

import "strings"

// platform is a family of systems that name and install packages alike.
type platform string

const (
	debian  platform = "Debian or Ubuntu"
	fedora  platform = "Fedora"
	arch    platform = "Arch"
	macOS   platform = "macOS"
	windows platform = "Windows"
	unknown platform = "an unknown system"
)

// families maps the names in os-release to the family they belong to. Systems
// derived from these name their parent in ID_LIKE.
var families = map[string]platform{
	"debian": debian,
	"ubuntu": debian,
	"fedora": fedora,
	"rhel":   fedora,
	"arch":   arch,
}

// osReleases are the places of that file, the first one found being the right
// one: os-release(5).
var osReleases = []string{"/etc/os-release", "/usr/lib/os-release"}

// platformOf tells which family a machine is of.
func platformOf(m machine) platform {
	switch m.system() {
	case "darwin":
		return macOS
	case "windows":
		return windows
	case "linux":
		for _, path := range osReleases {
			if text, err := m.readFile(path); err == nil {
				return familyOf(text)
			}
		}
	}
	return unknown
}

// familyOf reads the text of an os-release file. ID counts before ID_LIKE, and
// there the nearest relation stands first.
func familyOf(osRelease string) platform {
	values := map[string]string{}
	for line := range strings.Lines(osRelease) {
		key, value, _ := strings.Cut(strings.TrimSpace(line), "=")
		values[key] = strings.Trim(value, `"'`)
	}
	names := append([]string{values["ID"]}, strings.Fields(values["ID_LIKE"])...)
	for _, name := range names {
		if family, ok := families[strings.ToLower(name)]; ok {
			return family
		}
	}
	return unknown
}

// drawsByX11 reports whether windows on this family come up through X11, so
// that its headers and a DISPLAY are needed.
func (p platform) drawsByX11() bool { return p != macOS && p != windows }
