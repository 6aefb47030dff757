package main

import "slices"

// manager is a program that installs packages.
type manager int

const (
	apt manager = iota
	dnf
	pacman
	xcode
	msys // the collection from which a C compiler for Windows comes
	pip
)

// commands returns what installs the packages, typed by root or by a person
// who has to ask for root's rights. Only apt's may run unattended, so they
// alone ask nothing.
func (m manager) commands(packages []string, root bool) []command {
	var rights []string
	if !root {
		rights = []string{"sudo"}
	}
	line := func(parts ...[]string) command { return command{words: slices.Concat(parts...)} }
	switch m {
	case apt:
		quiet := []string{"env", "DEBIAN_FRONTEND=noninteractive", "apt-get"}
		return []command{
			line(rights, quiet, []string{"update"}),
			line(rights, quiet, []string{"install", "--no-install-recommends", "-y"}, packages),
		}
	case dnf:
		return []command{line(rights, []string{"dnf", "install"}, packages)}
	case pacman:
		return []command{line(rights, []string{"pacman", "-S", "--needed"}, packages)}
	case xcode:
		return []command{typed("xcode-select", "--install")}
	case msys:
		return []command{
			typed("winget", "install", "MSYS2.MSYS2"),
			line([]string{`C:\msys64\usr\bin\pacman`, "-S", "--needed"}, packages),
			// Quoted so that both of Windows' shells take it; setx would cut a long path off.
			typed("powershell", "-Command", `[Environment]::SetEnvironmentVariable('Path', `+
				`[Environment]::GetEnvironmentVariable('Path', 'User') + ';C:\msys64\ucrt64\bin', 'User')`),
		}
	default: // pip; the variable lets it install beside a system's own Python, into the person's folder
		return []command{
			line(rights, []string{"pacman", "-S", "--needed", "python-pip"}),
			line([]string{"env", "PIP_BREAK_SYSTEM_PACKAGES=1", "python3", "-m", "pip", "install", "--user"}, packages),
		}
	}
}
