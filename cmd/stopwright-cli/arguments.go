package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"strings"
)

// parse reads the flags of a verb, which may stand before, between and after
// its other arguments, and returns those. After -- nothing is a flag.
func parse(flags *flag.FlagSet, args []string) (others []string, err error) {
	flags.SetOutput(io.Discard) // what it would say is said our way
	for {
		if err := flags.Parse(args); err != nil {
			if errors.Is(err, flag.ErrHelp) {
				return nil, err
			}
			return nil, &usageError{flags.Name(), err.Error()}
		}
		rest := flags.Args()
		if len(rest) == 0 {
			return others, nil
		}
		if read := len(args) - len(rest); read > 0 && args[read-1] == "--" {
			return append(others, rest...), nil
		}
		others, args = append(others, rest[0]), rest[1:]
	}
}

// newFlags returns an empty set of flags for a verb.
func newFlags(verb string) *flag.FlagSet { return flag.NewFlagSet(verb, flag.ContinueOnError) }

// onlyPlan returns the one argument of a verb that takes a plan.
func onlyPlan(flags *flag.FlagSet, args []string) (string, error) {
	others, err := parse(flags, args)
	switch {
	case err != nil:
		return "", err
	case len(others) == 0:
		return "", &usageError{flags.Name(), flags.Name() + " needs a PLAN"}
	case len(others) > 1:
		return "", &usageError{flags.Name(), fmt.Sprintf("%s takes one PLAN, not also %q", flags.Name(), others[1])}
	case others[0] == "":
		return "", &usageError{flags.Name(), "the name of the PLAN is empty"}
	}
	return others[0], nil
}

// pathFlag is a flag that names a file to write.
type pathFlag struct{ path *string }

func (f pathFlag) String() string {
	if f.path == nil {
		return ""
	}
	return *f.path
}

func (f pathFlag) Set(s string) error {
	switch {
	case s == "":
		return errors.New("the name of a file is needed")
	case strings.HasPrefix(s, "-"):
		return fmt.Errorf("that looks like a flag; a file of that name is ./%s", s)
	}
	*f.path = s
	return nil
}
