package plan

import (
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"stopwright/assets/words"
)

// The most a plan may hold.
const (
	MaxSeats     = 10000 // stops counted on both sides and once for every catch
	MaxCatches   = 64
	MaxFeatures  = 10000
	MaxReadings  = 10000 // of readings, of as-drilled positions, and of marks
	MaxTicks     = 50000
	MaxText      = 10000 // characters in one text
	MaxFileBytes = 16 << 20
)

// limits is the range a number may have, end points included.
type limits struct {
	lo, hi float64
	unit   string // empty: a plain number
	orZero bool   // 0 is allowed as well, and means none or automatic
}

var (
	sizes          = limits{lo: 0.1, hi: 10000, unit: "mm"}
	sizesOrZero    = limits{lo: 0.1, hi: 10000, unit: "mm", orZero: true}
	hardware       = limits{lo: 0.1, hi: 100, unit: "mm"}
	hardwareOrZero = limits{lo: 0.1, hi: 100, unit: "mm", orZero: true}
	depths         = limits{lo: 0, hi: 100, unit: "mm"}
	chamfers       = limits{lo: 0, hi: 50, unit: "mm"}
	webs           = limits{lo: 0, hi: 100, unit: "mm"}
	allowances     = limits{lo: -5, hi: 50, unit: "mm"}
	errorRadii     = limits{lo: 0, hi: 50, unit: "mm"}
	positions      = limits{lo: -10000, hi: 10000, unit: "mm"}
	heights        = limits{lo: 0, hi: 10000, unit: "mm"}
	kerfs          = limits{lo: 0, hi: 100, unit: "mm"}
	forces         = limits{lo: 0, hi: 1000, unit: "N"}
	frictions      = limits{lo: 0, hi: 1.5}
	loads          = limits{lo: 0, hi: 1000, unit: "kg"}
	turns          = limits{lo: -360, hi: 360, unit: "degrees"}
	targets        = limits{lo: 0, hi: 360, unit: "degrees"}
	percents       = limits{lo: 0, hi: 100, unit: "per cent"}
	screwCounts    = limits{lo: 0, hi: 360, unit: "screws"}
	scales         = limits{lo: 0.05, hi: 20}
	versions       = limits{lo: Version, hi: Version}
	bridges        = limits{lo: 1, hi: 1000, unit: "mm"} // less would let the middle of a slotted part fall out
	plays          = limits{lo: 0, hi: 10, unit: "mm"}
	overruns       = limits{lo: 0, hi: 45, unit: "degrees"}

	// A drill's point is as sharp as 60 degrees (for plastics) and as blunt as
	// 180 (an end mill, a Forstner bit).
	drillPoints = limits{lo: 60, hi: 180, unit: "degrees"}
	// Countersinks are sold from 60 to 120 degrees; 30 and 150 leave room for
	// ones ground in the shop, short of a cone too steep or too flat to hold.
	countersinks = limits{lo: 30, hi: 150, unit: "degrees"}
)

// allow reports whether x is in the range. NaN and infinities never are.
func (l limits) allow(x float64) bool { return l.span().Holds(x) }

// span returns the range without its unit.
func (l limits) span() Range { return Range{Low: l.lo, High: l.hi, OrZero: l.orZero} }

func (l limits) String() string { return l.In(words.English()) }

// In says the range in the language of a catalogue, with its unit.
func (l limits) In(c *words.Catalogue) string {
	key := "range.span"
	switch {
	case l.orZero:
		key = "range.zero"
	case l.lo == l.hi:
		key = "range.one"
	}
	text := c.Text(key, words.Args{"Low": numeral(l.lo), "High": numeral(l.hi)})
	switch l.unit {
	case "":
		return text
	case "mm", "N", "kg", "mm/min": // the same in every language
		return text + " " + l.unit
	}
	return text + " " + c.Text("range.unit."+l.unit)
}

// numeral writes a number with as many digits as it takes to read it back the
// same, and never as -0.
func numeral(x float64) string { return strconv.FormatFloat(x+0, 'g', -1, 64) }

// wording is what a text may say: one of the words, or where there are none,
// anything that passes the other two.
type wording struct {
	words []string
	named bool // not blank
	date  bool // a calendar date, or nothing
}

// dateLayout is a calendar date as in ISO 8601.
const dateLayout = "2006-01-02"

func (w wording) allow(s string) bool {
	if w.words != nil {
		return slices.Contains(w.words, s)
	}
	if w.named && strings.TrimSpace(s) == "" {
		return false
	}
	if w.date && s != "" {
		if _, err := time.Parse(dateLayout, s); err != nil {
			return false
		}
	}
	// No text has more characters than bytes, so most need no counting.
	return utf8.ValidString(s) && (len(s) <= MaxText || utf8.RuneCountInString(s) <= MaxText)
}

func (w wording) String() string { return w.In(words.English()) }

// In says what the text may be in the language of a catalogue.
func (w wording) In(c *words.Catalogue) string {
	switch {
	case w.words != nil:
		quoted := make([]string, len(w.words))
		for i, s := range w.words {
			quoted[i] = strconv.Quote(s)
		}
		return oneOf(quoted).In(c)
	case w.date:
		return c.Text("want.date")
	case w.named:
		return c.Text("want.name", words.Args{"Most": MaxText})
	}
	return c.Text("want.text", words.Args{"Most": MaxText})
}

// oneOf joins texts as "a, b or c".
func oneOf(texts []string) words.Saying {
	if len(texts) < 2 {
		return words.Verbatim(strings.Join(texts, ""))
	}
	last := len(texts) - 1
	return words.Phrase{Key: "want.or", Args: words.Args{"First": strings.Join(texts[:last], ", "), "Last": texts[last]}}
}
