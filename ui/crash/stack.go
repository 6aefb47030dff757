package crash

import (
	"path"
	"strings"
)

// places returns the places of the program that a stack trace names, innermost
// first, each with its function, its file without the folders above its own,
// and its line. Values of arguments and addresses are left out.
func places(stack string) []string {
	var out []string
	function := ""
	for line := range strings.Lines(stack) {
		line = strings.TrimRight(line, "\r\n")
		where, indented := strings.CutPrefix(line, "\t")
		switch {
		case !indented:
			function = withoutArguments(line)
		case function != "":
			where, _, _ = strings.Cut(where, " +0x")
			out = append(out, function+" ("+nearest(where)+")")
			function = ""
		}
	}
	return out
}

// withoutArguments returns the name of the function in a line such as
//
//	stopwright/ui.(*Window).changed(0xc000123, 0x3)
//	created by stopwright/ui.newFiling.func3 in goroutine 1
func withoutArguments(line string) string {
	if !strings.HasSuffix(line, ")") {
		return line
	}
	return line[:strings.LastIndexByte(line, '(')]
}

// nearest returns a file with the one folder it lies in.
func nearest(file string) string {
	file = strings.ReplaceAll(file, `\`, "/")
	folder, name := path.Split(file)
	if folder == "" {
		return name
	}
	return path.Base(folder) + "/" + name
}
