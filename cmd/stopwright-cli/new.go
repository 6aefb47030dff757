package main

import (
	"bytes"
	"fmt"
	"io"
	"strings"

	"stopwright/assets/plans"
	"stopwright/detent/plan"
	"stopwright/export"
)

const newUsage = `stopwright-cli new [--demo NAME] [-o FILE]
stopwright-cli new --list

Writes a demonstration plan to begin with.

  --demo NAME   which one; the first of the list if not given
  -o FILE       write it to FILE, in place of what is there; to standard output
                if not given
  --list        list the names and titles there are, and write nothing
`

func runNew(sh *shell, args []string) error {
	flags := newFlags("new")
	name := flags.String("demo", plans.List()[0].Name, "")
	list := flags.Bool("list", false, "")
	var path string
	flags.Var(pathFlag{&path}, "o", "")
	others, err := parse(flags, args)
	switch {
	case err != nil:
		return sh.orHelp(err, newUsage)
	case len(others) > 0:
		return &usageError{"new", fmt.Sprintf("new takes no %q; a file is named by -o FILE, a demonstration by --demo NAME", others[0])}
	case *list:
		return listDemos(sh.out)
	}
	file, err := plans.Open(*name)
	if err != nil {
		return &usageError{"new", err.Error()}
	}
	write := func(w io.Writer) error {
		_, err := w.Write(file)
		return err
	}
	if path == "" {
		return write(sh.out)
	}
	return export.WriteFile(path, write)
}

// listDemos writes one line a demonstration: its name and its title.
func listDemos(w io.Writer) error {
	for _, d := range plans.List() {
		file, err := plans.Open(d.Name)
		if err != nil {
			return err
		}
		p, err := plan.Decode(bytes.NewReader(file))
		if err != nil {
			return fmt.Errorf("demonstration %s: %w", d.Name, err)
		}
		fmt.Fprintf(w, "%-16s%s\n", d.Name, strings.TrimSpace(p.Title))
	}
	return nil
}
