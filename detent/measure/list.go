package measure

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"stopwright/detent/geom"
)

// MaxListed is the most stops read from one text: the most a plan may hold.
const MaxListed = 10_000

// ListItem is one stop of a list.
type ListItem struct {
	Angle geom.Angle
	Label string // empty: none
	Line  int    // of the text, from 1
}

// LineProblem is a line of a list that was not understood, or the part of one.
type LineProblem struct {
	Line int // of the text, from 1
	SyntaxError
}

// Error says where, what was written and what would be understood.
func (p *LineProblem) Error() string {
	return fmt.Sprintf("line %d: %s", p.Line, p.SyntaxError.Error())
}

// ParseStops reads a list of stops as it comes from a spreadsheet or a text. All
// that is not understood is told at once; what is understood is read all the
// same. Each angle is written as [ParseAngle] has it. The rules:
//
//   - Lines. One stop a line. Blank lines are passed over, and so is a first
//     line without any digit: headings.
//   - Columns. A tab, or where there is none a semicolon, parts a line. A line
//     of angles only is a row of stops. An angle and a text that is none are a
//     stop and its label; where one line is so, or the headings have columns,
//     the second is labels throughout, so that 5 may be one. Two columns of
//     nothing but angles over several lines are refused: the second may be
//     stops or labels. Empty cells are passed over.
//   - Commas, on a line that is not in columns. A comma between two digits is a
//     decimal comma if it is the only comma of its line (22,5); all of them part
//     stops if there is a decimal point on the line as well (0,20,36.5). Any
//     other comma parts stops (0, 20, 36.5). Where both kinds are on a line, or
//     several between digits without a point (10,20,30), or the line is an angle
//     as it stands (22°30',45), it is refused.
//   - Spaces. Bare numbers with only space between (31 37 8) are refused: they
//     may be three stops, or degrees, minutes and seconds.
//
// A line is named once for each part of it that is not understood. After 10,000
// stops, or as many problems, reading ends with the problem [TooMany].
func ParseStops(text string) (items []ListItem, problems []LineProblem) {
	rows := listRows(text)
	labels := false // in the second column
	if len(rows) > 1 && rows[0].heading() && slices.ContainsFunc(rows[1:], row.begins) {
		labels = len(rows[0].fields) > 1
		rows = rows[1:]
	}
	labels = labels || slices.ContainsFunc(rows, row.labelled)
	wide := slices.ContainsFunc(rows, func(r row) bool { return len(r.fields) > 2 })
	for _, r := range rows {
		refuse := func(text string, why Reason) {
			problems = append(problems, LineProblem{r.line, SyntaxError{Angle, text, why}})
		}
		parts, label, why := r.fields, "", Reason(0)
		switch {
		case len(r.fields) == 1:
			parts, why = splitAtCommas(r.fields[0])
		case labels && len(r.fields) > 2:
			why = ManyColumns
		case labels:
			parts, label = r.fields[:1], r.fields[1]
		case len(r.fields) == 2 && !wide && len(rows) > 1:
			if why = ColumnsUnclear; !r.begins() {
				why = NotUnderstood
			}
		}
		read := listedAngle
		if why != 0 { // the whole line is at fault
			parts, read = []string{r.text}, func(string) (geom.Angle, Reason) { return 0, why }
		}
		for _, part := range parts {
			if len(items) >= MaxListed || len(problems) >= MaxListed {
				refuse(r.text, TooMany)
				return items, problems
			}
			if angle, why := read(part); why != 0 {
				refuse(part, why)
			} else {
				items = append(items, ListItem{angle, label, r.line})
			}
		}
	}
	return items, problems
}

// listedAngle reads one angle of a list.
func listedAngle(text string) (geom.Angle, Reason) {
	words := strings.FieldsFunc(text, blank)
	numbers := 0
	for _, w := range words {
		if strings.Trim(w, "+-−.,0123456789") != "" { // has a mark of its own
			numbers = 0
			break
		}
		if strings.ContainsFunc(w, isDigit) {
			numbers++
		}
	}
	if numbers > 1 {
		return 0, SpaceUnclear
	}
	degrees, why := parse(text, sexagesimal)
	return geom.Angle(degrees), why
}

// row is a line of a list that is not blank.
type row struct {
	line   int
	text   string
	fields []string // its columns, at least one; neither first nor last is empty
}

// begins reports whether the row begins with an angle.
func (r row) begins() bool {
	parts, why := splitAtCommas(r.fields[0])
	if why != 0 {
		return true // of angles: they cannot be told apart
	}
	_, why = listedAngle(parts[0])
	return why == 0
}

// heading reports whether the row can be that of headings.
func (r row) heading() bool {
	return !strings.ContainsFunc(r.text, unicode.IsNumber)
}

// labelled reports whether the row is an angle and a label.
func (r row) labelled() bool {
	if len(r.fields) != 2 {
		return false
	}
	_, first := listedAngle(r.fields[0])
	_, second := listedAngle(r.fields[1])
	return first == 0 && second != 0
}

// listRows splits a text into rows and columns.
func listRows(text string) []row {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.ToValidUTF8(text, "\uFFFD"))
	var rows []row
	for i, line := range strings.Split(text, "\n") {
		mark, cells := ";", false
		if strings.Contains(line, "\t") {
			mark, cells = "\t", true
		}
		if fields := splitAt(line, mark, cells); len(fields) > 0 {
			rows = append(rows, row{line: i + 1, text: strings.TrimFunc(line, blank), fields: fields})
		}
	}
	return rows
}

// splitAt splits a line at a mark. Empty parts at its ends are left out; those
// within it as well if they are cells of a table.
func splitAt(line, mark string, cells bool) []string {
	var parts []string
	empty := 0
	for _, part := range strings.Split(line, mark) {
		part = unquote(strings.TrimFunc(part, blank))
		if part == "" {
			empty++
			continue
		}
		if len(parts) > 0 && !cells {
			parts = append(parts, make([]string, empty)...)
		}
		parts, empty = append(parts, part), 0
	}
	return parts
}

// unquote takes off the quotation marks that a spreadsheet puts about a cell.
func unquote(field string) string {
	const mark = `"`
	if len(field) < 2 || !strings.HasPrefix(field, mark) || !strings.HasSuffix(field, mark) {
		return field
	}
	return strings.TrimFunc(strings.ReplaceAll(field[1:len(field)-1], mark+mark, mark), blank)
}

// splitAtCommas splits a line that is not in columns, by the rules of
// [ParseStops]. There is at least one part.
func splitAtCommas(line string) ([]string, Reason) {
	runes := []rune(line)
	inside, outside := 0, 0 // between two digits, and any other
	for i, r := range runes {
		if r != ',' {
			continue
		}
		before := i > 0 && isDigit(runes[i-1])
		after := i+1 < len(runes) && isDigit(runes[i+1])
		switch {
		case before && after:
			inside++
		case after && (i == 0 || !ends(runes[i-1])):
			return nil, CommaUnclear // ,5
		default:
			outside++
		}
	}
	switch {
	case inside > 0 && outside > 0, inside > 1 && !strings.Contains(line, "."):
		return nil, CommaUnclear
	case inside == 1, outside == 0 && inside == 0:
		return []string{line}, 0
	}
	if _, why := listedAngle(line); why == 0 {
		return nil, CommaUnclear // 22°30',45 is one angle as well
	}
	parts := splitAt(line, ",", false)
	if len(parts) == 0 {
		return nil, NotUnderstood
	}
	return parts, 0
}

// ends reports whether an angle can end with a rune that is no digit.
func ends(r rune) bool {
	mark := marks[r]
	return mark == "°" || mark == "'" || mark == `"` || unicode.IsLetter(r) || vulgar[r] != [2]string{}
}
