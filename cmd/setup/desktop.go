package main

import (
	"fmt"
	"path/filepath"
	"strconv"
	"strings"
)

// appID names the program to the desktop: its entry and its icon bear it.
const appID = "app.stopwright.desktop"

// fileType is the type of a plan's file, of our own making: RFC 6838 keeps the
// prefix x- for those that are not registered.
const fileType = "application/x-stopwright"

// desktopDirs are the folders of one person's desktop, by the XDG Base Directory
// Specification 0.8: programs, and everything else.
type desktopDirs struct{ bin, data string }

// desktopDirsOf finds those folders. Without a home there are none.
func desktopDirsOf(m machine) (desktopDirs, bool) {
	home, data := m.env("HOME"), m.env("XDG_DATA_HOME")
	if !filepath.IsAbs(home) {
		return desktopDirs{}, false
	}
	if !filepath.IsAbs(data) { // "if it is relative, it should be ignored"
		data = filepath.Join(home, ".local", "share")
	}
	return desktopDirs{filepath.Join(home, ".local", "bin"), data}, true
}

// placed is one file of an installation.
type placed struct {
	path string
	from string // the file it is a copy of; empty: it holds text
	text string
	runs bool // it is a program
}

// installation lists every file of the program for one person.
func (d desktopDirs) installation(root, program string, about description) []placed {
	icons := filepath.Join(d.data, "icons", "hicolor")
	drawn := filepath.Join(root, "assets", "icons", "stopwright.svg")
	bin := d.program()
	return []placed{
		{path: bin, from: program, runs: true},
		{path: filepath.Join(icons, "scalable", "apps", appID+".svg"), from: drawn},
		{path: filepath.Join(icons, "scalable", "mimetypes", strings.ReplaceAll(fileType, "/", "-")+".svg"), from: drawn},
		{path: filepath.Join(icons, "512x512", "apps", appID+".png"), from: filepath.Join(root, "assets", "icons", "stopwright.png")},
		{path: filepath.Join(d.data, "mime", "packages", module+".xml"), text: mimePackage},
		{path: filepath.Join(d.data, "applications", appID+".desktop"), text: about.entry(bin)},
	}
}

// program returns where the program goes.
func (d desktopDirs) program() string { return filepath.Join(d.bin, module) }

// renewals are the programs that have a desktop take notice of a change, where
// they are there.
func (d desktopDirs) renewals() []command {
	return []command{
		typed("update-mime-database", filepath.Join(d.data, "mime")),
		typed("update-desktop-database", filepath.Join(d.data, "applications")),
		typed("gtk-update-icon-cache", "-q", "-t", "-f", filepath.Join(d.data, "icons", "hicolor")),
	}
}

// mimePackage describes the file type, by the Shared MIME-info Database
// specification 0.21.
const mimePackage = `<?xml version="1.0" encoding="UTF-8"?>
<mime-info xmlns="http://www.freedesktop.org/standards/shared-mime-info">
  <mime-type type="` + fileType + `">
    <comment>Stopwright plan</comment>
    <comment xml:lang="de">Stopwright-Plan</comment>
    <sub-class-of type="application/json"/>
    <glob pattern="*.stopwright"/>
  </mime-type>
</mime-info>
`

// description is what FyneApp.toml says of the program.
type description map[string]string

// described reads the keys of FyneApp.toml that have a text or a list of texts.
// A list is joined by semicolons, each text followed by one, as a desktop entry
// has it.
func described(toml string) description {
	d := description{}
	for line := range strings.Lines(toml) {
		key, value, found := strings.Cut(line, " = ")
		if !found {
			continue
		}
		value = strings.TrimSpace(value)
		if text, err := strconv.Unquote(value); err == nil {
			d[key] = text
			continue
		}
		inside, isList := strings.CutPrefix(strings.TrimSuffix(value, "]"), "[")
		if !isList {
			continue
		}
		for item := range strings.SplitSeq(inside, ",") {
			if text, err := strconv.Unquote(strings.TrimSpace(item)); err == nil {
				d[key] += text + ";"
			}
		}
	}
	return d
}

// entry returns the desktop entry of the program at a path, by the Desktop Entry
// Specification 1.5. The window's class is the program's name.
func (d description) entry(program string) string {
	return fmt.Sprintf(`[Desktop Entry]
Type=Application
Name=%s
GenericName=%s
GenericName[de]=Planer für Drehteller
Comment=%s
Comment[de]=Raststellungen eines Drehtellers planen, prüfen und fertigen
Exec=%s %s
TryExec=%s
Icon=%s
Terminal=false
Categories=%s
Keywords=%s
MimeType=%s;
StartupWMClass=%s
`, d["Name"], d["GenericName"], d["Comment"], quotedExec(program), d["ExecParams"], escapedValue(program), appID,
		d["Categories"], d["Keywords"], fileType, d["Name"])
}

// quotedExec writes a path as an argument of the key Exec: in quotes, with a
// backslash before what a shell would act on and a percent sign doubled, and
// then as any value.
func quotedExec(path string) string {
	escape := strings.NewReplacer("`", "\\`", `"`, `\"`, `$`, `\$`, `\`, `\\`, `%`, `%%`)
	return escapedValue(`"` + escape.Replace(path) + `"`)
}

// escapedValue writes a text as the value of a key.
func escapedValue(s string) string {
	return strings.NewReplacer(`\`, `\\`, "\n", `\n`, "\t", `\t`, "\r", `\r`).Replace(s)
}
