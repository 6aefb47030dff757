package main

import (
	"errors"
	"flag"
	"fmt"
)

const usage = `stopwright-cli works on plans of turning plates with spring-ball stops.

  new                 write a demonstration plan to begin with
  check PLAN          say what is wrong with a plan
  report PLAN         say what follows from it: seats and findings
  trial PLAN          write the plan of the same plate at half size, to try
  export PLAN         write drawings (DXF, SVG), the drilling chart (PDF, CSV),
                      paper templates, scales, a coupon and router programs
  bundle PLAN TO      write all of these into one folder or zip file
  help [VERB]         say more about one of these

PLAN is a plan file (.stopwright); - reads standard input. Flags may stand
before or after it; after -- nothing is a flag.

Exit codes:
   0   done, and no finding is an error
   1   done, and some finding is an error
   2   the plan or the command cannot be used; nothing is written
   3   a file or the output could not be written; the old file is still whole
  70   a fault of this program, which should be reported

Errors go to standard error, one line each. A detent positions, it does not
lock: clamp the table before cutting.
`

// help writes the help of the program or of one verb.
func help(sh *shell, topics []string) error {
	text := usage
	switch len(topics) {
	case 0:
	case 1:
		v, ok := verbNamed(topics[0])
		if !ok {
			return &usageError{says: fmt.Sprintf("there is no verb %q", topics[0])}
		}
		text = v.usage
	default:
		return &usageError{says: "help takes one verb"}
	}
	_, err := sh.out.WriteString(text)
	return err
}

// orHelp writes a verb's help where that is what was asked for.
func (sh *shell) orHelp(err error, usage string) error {
	if !errors.Is(err, flag.ErrHelp) {
		return err
	}
	_, err = sh.out.WriteString(usage)
	return err
}
