package main

import (
	"context"
	"strings"
)

// provide sees to it that the needs are met, installing what it may. Where it
// may not, the failure says what to type. The purpose reads like "To build the
// window".
func (s *setup) provide(ctx context.Context, purpose string, needs []need) error {
	lacking := missing(ctx, s.machine, needs)
	if len(lacking) == 0 {
		return nil
	}
	s.say("%s this computer still lacks:", purpose)
	for _, n := range lacking {
		s.say("  %s", n.name)
	}
	commands := installing(lacking, platformOf(s.machine), s.machine.root())
	if !s.mayInstall(ctx) {
		return advice(lacking, platformOf(s.machine), commands)
	}
	s.say("Installing it with:")
	for _, c := range commands {
		s.say("  %s", c)
	}
	for _, c := range commands {
		// Where the list of packages cannot be renewed the old one may still
		// serve: only what is missing at the end counts.
		if status, err := s.machine.run(ctx, c); err != nil || status != 0 {
			s.say("This failed: %s", c)
		}
	}
	if still := missing(ctx, s.machine, lacking); len(still) > 0 {
		return failed("Not installed: %s. The lines above say why.", names(still))
	}
	return nil
}

// mayInstall reports whether packages can be installed without a person typing
// the commands: on Debian and its kin as root, or through sudo when that wants
// no password or somebody is there to give it.
func (s *setup) mayInstall(ctx context.Context) bool {
	switch {
	case platformOf(s.machine) != debian || !s.machine.finds("apt-get"):
		return false
	case s.machine.root():
		return true
	case !s.machine.finds("sudo"):
		return false
	case s.machine.terminal():
		return true
	}
	_, err := s.machine.output(ctx, typed("sudo", "-n", "true"))
	return err == nil
}

// installing returns the commands that bring what the needs ask for, those of
// each manager together, in the order in which the managers first come up.
func installing(needs []need, p platform, root bool) []command {
	var order []manager
	wanted := map[manager][]string{}
	for _, n := range needs {
		from, ok := n.packages[p]
		if !ok {
			continue
		}
		if _, seen := wanted[from.manager]; !seen {
			order = append(order, from.manager)
		}
		wanted[from.manager] = append(wanted[from.manager], from.name)
	}
	var all []command
	for _, m := range order {
		all = append(all, m.commands(wanted[m], root)...)
	}
	return all
}

// advice is the failure that tells a person what to type.
func advice(lacking []need, p platform, commands []command) error {
	if len(commands) == 0 {
		guide := make([]string, len(lacking))
		for i, n := range lacking {
			guide[i] = n.packages[debian].name
		}
		return failed("Install these with the system's own package program, then give the same command again."+
			" Debian calls the packages: %s", strings.Join(guide, " "))
	}
	lines := make([]string, len(commands))
	for i, c := range commands {
		lines[i] = "\n  " + c.String()
	}
	return failed("On %s type this, then give the same command again in a new window:%s", p, strings.Join(lines, ""))
}

func names(needs []need) string {
	all := make([]string, len(needs))
	for i, n := range needs {
		all[i] = n.name
	}
	return strings.Join(all, ", ")
}
