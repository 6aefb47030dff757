package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

const (
	aptBuild = "gcc libc6-dev pkg-config libgl-dev libxcursor-dev libxrandr-dev libxinerama-dev libxi-dev libxxf86vm-dev"
	aptTest  = aptBuild + " xvfb xdotool python3-ezdxf poppler-utils librsvg2-bin"
	update   = "env DEBIAN_FRONTEND=noninteractive apt-get update"
	install  = "env DEBIAN_FRONTEND=noninteractive apt-get install --no-install-recommends -y "
)

// bare is a machine on which nothing was installed but Go.
func bare(os, release string, change func(*fake)) *fake {
	f := &fake{os: os, release: release}
	if change != nil {
		change(f)
	}
	return f
}

func TestInstallsWhereItMay(t *testing.T) {
	for _, c := range []struct {
		why     string
		machine *fake
		want    []string
	}{
		{
			"root needs no rights from anyone",
			bare("linux", "ID=debian", func(f *fake) { f.isRoot, f.programs = true, []string{"apt-get"} }),
			[]string{update, install + aptBuild},
		},
		{
			"sudo that wants no password, on a system like Debian",
			bare("linux", "ID=ubuntu\nID_LIKE=debian", func(f *fake) {
				f.programs, f.succeeds = []string{"apt-get", "sudo"}, []string{"sudo -n true"}
			}),
			[]string{"sudo " + update, "sudo " + install + aptBuild},
		},
		{
			"sudo asks, and somebody is there to answer",
			bare("linux", "ID=debian", func(f *fake) { f.programs, f.hasPerson = []string{"apt-get", "sudo"}, true }),
			[]string{"sudo " + update, "sudo " + install + aptBuild},
		},
		{
			"only what is missing is installed",
			bare("linux", "ID=debian", func(f *fake) {
				f.isRoot, f.programs = true, []string{"apt-get", "gcc", "pkg-config"}
				f.files = []string{"/usr/include/stdio.h", "/usr/local/include/X11/extensions/XInput2.h"}
				f.succeeds = []string{"pkg-config --exists gl", "pkg-config --exists xcursor", "pkg-config --exists xrandr"}
			}),
			[]string{update, install + "libxinerama-dev libxxf86vm-dev"},
		},
		{
			"a compiler of one's own serves",
			bare("linux", "ID=debian", func(f *fake) {
				f.isRoot, f.programs = true, []string{"apt-get", "clang-19"}
				f.vars = map[string]string{"CC": "clang-19 -m64"}
			}),
			[]string{update, install + aptBuild[len("gcc "):]},
		},
		{
			"a compiler named but absent does not",
			bare("linux", "ID=debian", func(f *fake) {
				f.isRoot, f.programs = true, []string{"apt-get", "gcc"}
				f.vars = map[string]string{"CC": "clang-19"}
			}),
			[]string{update, install + aptBuild},
		},
		{
			"a list of packages that cannot be renewed does not stop the installation",
			bare("linux", "ID=debian", func(f *fake) {
				f.isRoot, f.programs, f.statuses = true, []string{"apt-get"}, map[string]int{"update": 100}
			}),
			[]string{update, install + aptBuild},
		},
		{"nothing is missing", &fake{os: "linux", release: "ID=debian", isRoot: true, complete: true}, nil},
		{"nothing is missing on a system that is not known", &fake{os: "linux", complete: true}, nil},
	} {
		s := &setup{c.machine, t.Output()}
		assert.NoError(t, s.provide(t.Context(), "To build", toBuild), c.why)
		assert.Equal(t, c.want, c.machine.typed(), c.why)
	}
}

func TestTellsWhatToTypeWhereItMayNotInstall(t *testing.T) {
	for _, c := range []struct {
		why     string
		machine *fake
		needs   []need
		want    string
	}{
		{
			"a person without sudo has to become root in their own way",
			bare("linux", "ID=debian", func(f *fake) { f.programs = []string{"apt-get"} }), toBuild,
			"On Debian or Ubuntu type this, then give the same command again in a new window:" +
				"\n  sudo " + update + "\n  sudo " + install + aptBuild,
		},
		{
			"sudo wants a password and nobody is there",
			bare("linux", "ID=debian", func(f *fake) { f.programs = []string{"apt-get", "sudo"} }), toTest,
			"On Debian or Ubuntu type this, then give the same command again in a new window:" +
				"\n  sudo " + update + "\n  sudo " + install + aptTest,
		},
		{
			"Fedora installs nothing unasked, not even as root",
			bare("linux", "ID=fedora", func(f *fake) { f.isRoot = true }), toTest,
			"On Fedora type this, then give the same command again in a new window:" +
				"\n  dnf install gcc glibc-devel pkgconf-pkg-config mesa-libGL-devel libXcursor-devel libXrandr-devel" +
				" libXinerama-devel libXi-devel libXxf86vm-devel xorg-x11-server-Xvfb xdotool python3-ezdxf poppler-utils librsvg2-tools",
		},
		{
			"Arch does not package every reader",
			bare("linux", "ID=arch", func(f *fake) { f.hasPerson, f.programs = true, []string{"sudo"} }), toTest,
			"On Arch type this, then give the same command again in a new window:" +
				"\n  sudo pacman -S --needed gcc glibc pkgconf libglvnd libxcursor libxrandr libxinerama libxi libxxf86vm" +
				" xorg-server-xvfb xdotool poppler librsvg" +
				"\n  sudo pacman -S --needed python-pip" +
				"\n  env PIP_BREAK_SYSTEM_PACKAGES=1 python3 -m pip install --user ezdxf",
		},
		{
			"macOS needs a compiler and draws without X11, even where a program is called gcc",
			bare("darwin", "", func(f *fake) { f.programs = []string{"gcc"} }), toTest,
			"On macOS type this, then give the same command again in a new window:\n  xcode-select --install",
		},
		{
			"Windows needs a compiler only",
			bare("windows", "", nil), toTest,
			"On Windows type this, then give the same command again in a new window:" +
				"\n  winget install MSYS2.MSYS2" +
				"\n  C:\\msys64\\usr\\bin\\pacman -S --needed mingw-w64-ucrt-x86_64-gcc" +
				"\n  powershell -Command \"[Environment]::SetEnvironmentVariable('Path', " +
				"[Environment]::GetEnvironmentVariable('Path', 'User') + ';C:\\msys64\\ucrt64\\bin', 'User')\"",
		},
		{
			"an unknown system gets Debian's names as a guide",
			bare("linux", "ID=alpine", func(f *fake) { f.isRoot, f.programs = true, []string{"apt-get", "gcc"} }), toBuild,
			"Install these with the system's own package program, then give the same command again." +
				" Debian calls the packages: " + aptBuild[len("gcc "):],
		},
	} {
		s := &setup{c.machine, t.Output()}
		assert.EqualError(t, s.provide(t.Context(), "To build", c.needs), c.want, c.why)
		assert.Empty(t, c.machine.ran, c.why)
	}
}

func TestSaysBeforehandWhatItInstalls(t *testing.T) {
	m := &fake{os: "linux", release: "ID=debian", isRoot: true, programs: []string{"apt-get", "gcc", "pkg-config"}, stubborn: true}
	m.vars = map[string]string{"DISPLAY": "elsewhere:0"}
	code, out, errOut := perform(t, m, "run")
	assert.Equal(t, exitFailed, code)
	assert.Contains(t, out, "To build the window and open it this computer still lacks:\n  the C library's headers\n  OpenGL headers\n")
	assert.Contains(t, out, "Installing it with:\n  "+update+"\n  "+install+"libc6-dev libgl-dev ")
	assert.Contains(t, errOut, "Not installed: the C library's headers, OpenGL headers, ",
		"an installation that brought nothing is not taken for one that did")
	assert.Len(t, m.ran, 2, "nothing is built without what it needs")
}
