package main

// toBuild is needed to build the window and to open it. The X11 libraries are
// those that the window toolkit's own C code includes.
var toBuild = []need{
	{"a C compiler", compiler, map[platform]parcel{
		debian: {apt, "gcc"}, fedora: {dnf, "gcc"}, arch: {pacman, "gcc"},
		macOS: {xcode, ""}, windows: {msys, "mingw-w64-ucrt-x86_64-gcc"},
	}},
	{"the C library's headers", header("stdio.h", ""), map[platform]parcel{
		debian: {apt, "libc6-dev"}, fedora: {dnf, "glibc-devel"}, arch: {pacman, "glibc"},
	}},
	{"pkg-config", onPath("pkg-config"), map[platform]parcel{
		debian: {apt, "pkg-config"}, fedora: {dnf, "pkgconf-pkg-config"}, arch: {pacman, "pkgconf"},
	}},
	{"OpenGL headers", header("GL/gl.h", "gl"), map[platform]parcel{
		debian: {apt, "libgl-dev"}, fedora: {dnf, "mesa-libGL-devel"}, arch: {pacman, "libglvnd"},
	}},
	{"X11 cursor headers", header("X11/Xcursor/Xcursor.h", "xcursor"), map[platform]parcel{
		debian: {apt, "libxcursor-dev"}, fedora: {dnf, "libXcursor-devel"}, arch: {pacman, "libxcursor"},
	}},
	{"X11 screen size headers", header("X11/extensions/Xrandr.h", "xrandr"), map[platform]parcel{
		debian: {apt, "libxrandr-dev"}, fedora: {dnf, "libXrandr-devel"}, arch: {pacman, "libxrandr"},
	}},
	{"X11 several-screens headers", header("X11/extensions/Xinerama.h", "xinerama"), map[platform]parcel{
		debian: {apt, "libxinerama-dev"}, fedora: {dnf, "libXinerama-devel"}, arch: {pacman, "libxinerama"},
	}},
	{"X11 input headers", header("X11/extensions/XInput2.h", "xi"), map[platform]parcel{
		debian: {apt, "libxi-dev"}, fedora: {dnf, "libXi-devel"}, arch: {pacman, "libxi"},
	}},
	{"X11 video mode headers", header("X11/extensions/xf86vmode.h", "xxf86vm"), map[platform]parcel{
		debian: {apt, "libxxf86vm-dev"}, fedora: {dnf, "libXxf86vm-devel"}, arch: {pacman, "libxxf86vm"},
	}},
}

// toTest is needed on top of that to run every test: a display that nobody
// sees, hands for the real window, and independent readers of our files. Without
// X11 the tests that ask for these stay out.
var toTest = append(toBuild[:len(toBuild):len(toBuild)], []need{
	{"a virtual display (Xvfb)", onPath("Xvfb"), map[platform]parcel{
		debian: {apt, "xvfb"}, fedora: {dnf, "xorg-x11-server-Xvfb"}, arch: {pacman, "xorg-server-xvfb"},
	}},
	{"xdotool, which works the real window", onPath("xdotool"), map[platform]parcel{
		debian: {apt, "xdotool"}, fedora: {dnf, "xdotool"}, arch: {pacman, "xdotool"},
	}},
	{"ezdxf, which reads our DXF files again", pythonModule("ezdxf"), map[platform]parcel{
		debian: {apt, "python3-ezdxf"}, fedora: {dnf, "python3-ezdxf"}, arch: {pip, "ezdxf"},
	}},
	{"poppler, which reads our PDF files again", onPath("pdftotext"), map[platform]parcel{
		debian: {apt, "poppler-utils"}, fedora: {dnf, "poppler-utils"}, arch: {pacman, "poppler"},
	}},
	{"rsvg-convert, which reads our SVG files again", onPath("rsvg-convert"), map[platform]parcel{
		debian: {apt, "librsvg2-bin"}, fedora: {dnf, "librsvg2-tools"}, arch: {pacman, "librsvg"},
	}},
}...)
