package main

import (
	"context"
	"encoding/xml"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// person is a desktop with folders of its own on this machine's disk, and the
// project as it really is.
type person struct {
	fake
	project string
	asked   []string // commands whose output was asked for
}

// newPerson returns a person whose home is a new folder of a name that has to be
// quoted, and where the program built lies.
func newPerson(t *testing.T) *person {
	t.Helper()
	project, err := filepath.Abs(projectRoot)
	require.NoError(t, err)
	home := filepath.Join(t.TempDir(), `a "home" of 100% $ort`)
	require.NoError(t, os.MkdirAll(filepath.Join(home, ".cache", module), 0o755))
	p := &person{fake: fake{os: "linux", complete: true, vars: map[string]string{"HOME": home}}, project: project}
	require.NoError(t, os.WriteFile(filepath.Join(home, ".cache", module, module), []byte("a program"), 0o600))
	return p
}

func (p *person) home(path string) string {
	return filepath.Join(p.vars["HOME"], filepath.FromSlash(path))
}

func (p *person) cacheDir() (string, error) { return p.home(".cache"), nil }

func (p *person) output(ctx context.Context, c command) (string, error) {
	p.asked = append(p.asked, c.String())
	if c.String() == askGo {
		return filepath.Join(p.project, "go.mod") + "\ngo1.26.1\n", nil
	}
	return p.fake.output(ctx, c)
}

func (p *person) readFile(path string) (string, error) {
	if strings.HasPrefix(path, p.project) {
		text, err := os.ReadFile(path)
		return string(text), err
	}
	return p.fake.readFile(path)
}

// files lists every file below the person's home but the cache, with slashes.
func (p *person) files(t *testing.T) []string {
	t.Helper()
	var out []string
	require.NoError(t, filepath.WalkDir(p.vars["HOME"], func(path string, e os.DirEntry, err error) error {
		if err == nil && !e.IsDir() && !strings.Contains(path, ".cache") {
			inside, _ := filepath.Rel(p.vars["HOME"], path)
			out = append(out, filepath.ToSlash(inside))
		}
		return err
	}))
	return out
}

// installed is every file of an installation, below the home.
var installed = []string{
	".local/bin/stopwright",
	".local/share/applications/app.stopwright.desktop.desktop",
	".local/share/icons/hicolor/512x512/apps/app.stopwright.desktop.png",
	".local/share/icons/hicolor/scalable/apps/app.stopwright.desktop.svg",
	".local/share/icons/hicolor/scalable/mimetypes/application-x-stopwright.svg",
	".local/share/mime/packages/stopwright.xml",
}

func TestInstallPutsEverythingInPlaceAndUninstallTakesItAway(t *testing.T) {
	p := newPerson(t)
	other := p.home(".local/share/applications/other.desktop")
	require.NoError(t, os.MkdirAll(filepath.Dir(other), 0o755))
	require.NoError(t, os.WriteFile(other, nil, 0o600))
	for range 2 { // the second time over the first
		code, out, errOut := perform(t, p, "install")
		require.Zero(t, code, errOut)
		assert.Contains(t, out, p.home(".local/bin/stopwright"))
		want := append(slices.Clone(installed), ".local/share/applications/other.desktop")
		assert.ElementsMatch(t, want, p.files(t), "and nothing half written")
	}
	info, err := os.Stat(p.home(".local/bin/stopwright"))
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o755), info.Mode().Perm())
	for _, c := range []string{"update-mime-database", "update-desktop-database"} {
		assert.True(t, slices.ContainsFunc(p.asked, func(a string) bool { return strings.HasPrefix(a, c+" ") }), c)
	}

	code, _, errOut := perform(t, p, "uninstall")
	require.Zero(t, code, errOut)
	assert.Equal(t, []string{".local/share/applications/other.desktop"}, p.files(t), "what is not ours stays")
	code, out, _ := perform(t, p, "uninstall")
	assert.Zero(t, code)
	assert.Contains(t, out, "Nothing was installed.")
}

func TestTheEntryStartsTheProgramAndOpensPlans(t *testing.T) {
	p := newPerson(t)
	code, _, errOut := perform(t, p, "install")
	require.Zero(t, code, errOut)
	text, err := os.ReadFile(p.home(installed[1]))
	require.NoError(t, err)
	keys := map[string]string{}
	for line := range strings.Lines(string(text)) {
		if key, value, ok := strings.Cut(strings.TrimSpace(line), "="); ok {
			keys[key] = value
		}
	}
	// The Desktop Entry Specification 1.5: the escapes of a quoted argument, and
	// over them those of any value.
	home := strings.NewReplacer(`"`, `\\"`, `$`, `\\$`, `%`, `%%`).Replace(p.vars["HOME"])
	assert.Equal(t, `"`+home+`/.local/bin/stopwright" %f`, keys["Exec"])
	assert.Equal(t, p.home(".local/bin/stopwright"), keys["TryExec"])
	for key, want := range map[string]string{
		"Type": "Application", "Name": "Stopwright", "Icon": "app.stopwright.desktop", "Terminal": "false",
		"Categories": "Graphics;Engineering;", "MimeType": "application/x-stopwright;",
	} {
		assert.Equal(t, want, keys[key], key)
	}
	for key, value := range keys {
		assert.NotEmpty(t, value, key)
	}
}

func TestTheFileTypeIsSound(t *testing.T) {
	var info struct {
		Type struct {
			Name string `xml:"type,attr"`
			Glob struct {
				Pattern string `xml:"pattern,attr"`
			} `xml:"glob"`
		} `xml:"mime-type"`
	}
	require.NoError(t, xml.Unmarshal([]byte(mimePackage), &info))
	assert.Equal(t, fileType, info.Type.Name)
	assert.Equal(t, "*.stopwright", info.Type.Glob.Pattern)
}

func TestTheFoldersOfADesktop(t *testing.T) {
	for _, c := range []struct {
		why        string
		home, data string
		want       desktopDirs
		found      bool
	}{
		{"the usual ones", "/home/m", "", desktopDirs{"/home/m/.local/bin", "/home/m/.local/share"}, true},
		{"data elsewhere", "/home/m", "/data", desktopDirs{"/home/m/.local/bin", "/data"}, true},
		{"a relative folder is ignored", "/home/m", "data", desktopDirs{"/home/m/.local/bin", "/home/m/.local/share"}, true},
		{"no home", "", "/data", desktopDirs{}, false},
	} {
		got, found := desktopDirsOf(&fake{vars: map[string]string{"HOME": c.home, "XDG_DATA_HOME": c.data}})
		assert.Equal(t, c.found, found, c.why)
		assert.Equal(t, c.want, got, c.why)
	}
}

func TestInstallSaysWhyNot(t *testing.T) {
	noHome := newPerson(t)
	delete(noHome.vars, "HOME")
	inTheWay := newPerson(t)
	require.NoError(t, os.WriteFile(inTheWay.home(".local"), nil, 0o600))
	broken := newPerson(t)
	broken.statuses = map[string]int{"go build": 1}
	for _, c := range []struct {
		why  string
		m    machine
		args []string
		code int
		says string
	}{
		{"more words", ready(), []string{"install", "here"}, exitUsage, "no more words"},
		{"no home", noHome, []string{"install"}, exitFailed, "HOME is not set"},
		{"a file where a folder should be", inTheWay, []string{"install"}, exitFailed, "could not be put in place"},
		{"the build failed", broken, []string{"install"}, exitFailed, "could not be built"},
		{"macOS", &fake{os: "darwin"}, []string{"install"}, exitFailed, "On macOS the program is packaged by hand"},
		{"Windows", &fake{os: "windows"}, []string{"uninstall"}, exitFailed, "On Windows the program is packaged by hand"},
	} {
		code, _, errOut := perform(t, c.m, c.args...)
		assert.Equal(t, c.code, code, c.why)
		assert.Contains(t, errOut, c.says, c.why)
	}
	assert.Empty(t, broken.files(t), "nothing is put in place of a program that could not be built")
}
