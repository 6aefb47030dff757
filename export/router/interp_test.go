package router_test

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// An interpreter of the few words of RS274/NGC that a drilling program needs,
// written from the rules of NISTIR 6556 (sections 3.3, 3.5.16 to 3.5.20 and 3.6)
// and from nothing of the package that it judges. It is strict: what those rules
// leave open, or what a careful maker would not run, is an error.

// vec is a place in mm.
type vec struct{ x, y, z float64 }

// motion is what the tool does between two places.
type motion struct {
	rapid  bool
	arc    bool
	from   vec
	to     vec
	centre vec // of an arc, anticlockwise, whole where it ends over its start
	feed   float64
	tool   int
}

// machine is the state that words change.
type machine struct {
	at                  vec
	scale               float64 // mm a unit; 0: not said yet
	feed                float64 // mm/min; 0: not said yet
	spin                bool
	speed               float64
	absolute, perMin    bool
	plane               bool
	mode                string // of motion: G0, G1, G3, G81, G83 or empty
	toR                 bool   // G99
	clear               float64
	r, bottom, q        float64 // sticky numbers of a cycle
	hasR, hasZ, inCycle bool
	tool, changes       int
	stops               int
	ended               bool
	dwell               float64
	motions             []motion
	comments            []string
	backOff             float64 // of G83, mm
}

// rules that cannot be run.
var (
	errDry   = errors.New("a feed with the spindle off")
	errFeed  = errors.New("a feed with no feed rate")
	errUnits = errors.New("a length before G20 or G21")
	errPlane = errors.New("an arc or cycle outside the XY plane")
)

// interpret runs a program from a place.
func interpret(program string, m *machine) error {
	marks := 0
	for n, line := range strings.Split(program, "\n") {
		if line = strings.TrimRight(line, "\r"); line == "%" {
			marks++
			continue
		}
		if m.ended && line != "" {
			return fmt.Errorf("line %d: after the end: %q", n+1, line)
		}
		if len(line) > 256 {
			return fmt.Errorf("line %d is over 256 characters", n+1)
		}
		if err := m.line(line); err != nil {
			return fmt.Errorf("line %d %q: %w", n+1, line, err)
		}
	}
	if !m.ended {
		return errors.New("no M2 or M30")
	}
	if marks != 0 && marks != 2 {
		return fmt.Errorf("%d percent signs", marks)
	}
	return nil
}

// word is a letter and its number.
type word struct {
	letter byte
	number float64
}

// words takes a line apart, comments aside.
func (m *machine) words(line string) ([]word, error) {
	for _, r := range line {
		if r < ' ' || r > '~' {
			return nil, fmt.Errorf("character %q", r)
		}
	}
	var out []word
	for i := 0; i < len(line); {
		c := line[i]
		switch {
		case c == ' ':
			i++
		case c == '(':
			end := strings.IndexAny(line[i+1:], "()")
			if end < 0 || line[i+1+end] == '(' {
				return nil, errors.New("a comment that does not end, or one in another")
			}
			m.comments = append(m.comments, line[i+1:i+1+end])
			i += end + 2
		case strings.IndexByte("FGIJMPQRSTXYZ", c) >= 0:
			j := i + 1
			for j < len(line) && strings.IndexByte("+-.0123456789", line[j]) >= 0 {
				j++
			}
			x, err := strconv.ParseFloat(line[i+1:j], 64)
			if err != nil {
				return nil, err
			}
			if x == 0 && math.Signbit(x) {
				return nil, errors.New("a negative zero")
			}
			out = append(out, word{c, x})
			i = j
		default:
			return nil, fmt.Errorf("letter %q", c)
		}
	}
	return out, nil
}

// groups are the modal groups of G and M words: two of one group on a line are
// an error.
var groups = map[string]string{
	"G0": "motion", "G1": "motion", "G3": "motion", "G80": "motion", "G81": "motion", "G82": "motion", "G83": "motion",
	"G17": "plane", "G90": "distance", "G94": "feed", "G20": "units", "G21": "units", "G40": "width", "G49": "length",
	"G98": "return", "G99": "return", "G4": "dwell",
	"M0": "stop", "M2": "stop", "M6": "tool", "M3": "spindle", "M5": "spindle",
}

// line does one line, its words in the order of execution of section 3.8.
func (m *machine) line(line string) error {
	list, err := m.words(line)
	if err != nil {
		return err
	}
	used, codes, values := map[string]bool{}, map[string]bool{}, map[byte]float64{}
	for _, w := range list {
		if w.letter == 'G' || w.letter == 'M' {
			code := string(w.letter) + strconv.FormatFloat(w.number, 'f', -1, 64)
			group, known := groups[code]
			if !known || used[group] {
				return fmt.Errorf("%s is unknown, or not alone of its group", code)
			}
			used[group], codes[code] = true, true
			continue
		}
		if _, twice := values[w.letter]; twice {
			return fmt.Errorf("%c twice", w.letter)
		}
		values[w.letter] = w.number
	}
	if f, ok := values['F']; ok {
		if m.scale == 0 || f <= 0 {
			return errFeed
		}
		m.feed = f * m.scale
	}
	if s, ok := values['S']; ok {
		m.speed = s
	}
	if codes["M6"] {
		if m.spin {
			return errors.New("a change of tool with the spindle on")
		}
		m.tool, m.changes = int(values['T']), m.changes+1
	}
	m.spin = m.spin && !codes["M5"] || codes["M3"] && m.speed > 0
	if codes["G4"] {
		m.dwell += values['P']
	}
	m.set(codes)
	if err := m.move(codes, values); err != nil {
		return err
	}
	if codes["M0"] {
		if m.spin {
			return errors.New("a stop for the maker with the spindle on")
		}
		m.stops++
	}
	m.ended = m.ended || codes["M2"]
	return nil
}

// set does the words that only change what later ones mean.
func (m *machine) set(codes map[string]bool) {
	for code, do := range map[string]func(){
		"G17": func() { m.plane = true },
		"G90": func() { m.absolute = true },
		"G94": func() { m.perMin = true },
		"G20": func() { m.scale = 25.4 },
		"G21": func() { m.scale = 1 },
		"G98": func() { m.toR = false },
		"G99": func() { m.toR = true },
	} {
		if codes[code] {
			do()
		}
	}
	for _, mode := range []string{"G0", "G1", "G3", "G81", "G82", "G83"} {
		if codes[mode] {
			m.mode = mode
		}
	}
	if codes["G80"] {
		m.mode, m.inCycle, m.hasR, m.hasZ = "", false, false, false
	}
}

// move does what the motion in force makes of the places on a line.
func (m *machine) move(codes map[string]bool, values map[byte]float64) error {
	_, hasX := values['X']
	_, hasY := values['Y']
	_, hasZ := values['Z']
	cycle := m.mode == "G81" || m.mode == "G82" || m.mode == "G83"
	if !hasX && !hasY && !hasZ {
		if cycle && codes[m.mode] {
			return errors.New("a cycle without X, Y or Z")
		}
		return nil
	}
	switch {
	case m.scale == 0:
		return errUnits
	case !m.absolute || !m.perMin:
		return errors.New("G90 and G94 were not said")
	case m.mode == "":
		return errors.New("places with no motion in force")
	}
	to := m.at
	for letter, axis := range map[byte]*float64{'X': &to.x, 'Y': &to.y, 'Z': &to.z} {
		if v, ok := values[letter]; ok {
			*axis = v * m.scale
		}
	}
	if cycle {
		return m.cycle(to, hasZ, values)
	}
	switch m.mode {
	case "G0":
		m.pass(motion{rapid: true, to: to})
		return nil
	case "G3":
		return m.arc(to, values)
	}
	return m.feedTo(to)
}

func (m *machine) pass(s motion) {
	s.from, s.tool = m.at, m.tool
	m.motions = append(m.motions, s)
	m.at = s.to
}

func (m *machine) feedTo(to vec) error {
	switch {
	case !m.spin:
		return errDry
	case m.feed == 0:
		return errFeed
	}
	m.pass(motion{to: to, feed: m.feed})
	return nil
}

// arcTolerance is how far the two radii of an arc may differ: section 3.5.3
// allows 0.0002 inch or 0.002 mm.
const arcTolerance = 0.002

func (m *machine) arc(to vec, values map[byte]float64) error {
	_, hasI := values['I']
	_, hasJ := values['J']
	switch {
	case !m.plane:
		return errPlane
	case !m.spin:
		return errDry
	case m.feed == 0:
		return errFeed
	case !hasI && !hasJ:
		return errors.New("an arc without a centre")
	}
	c := vec{m.at.x + values['I']*m.scale, m.at.y + values['J']*m.scale, 0}
	first, last := math.Hypot(m.at.x-c.x, m.at.y-c.y), math.Hypot(to.x-c.x, to.y-c.y)
	if math.Abs(first-last) > arcTolerance || first == 0 {
		return fmt.Errorf("radii %v and %v", first, last)
	}
	m.pass(motion{arc: true, to: to, centre: c, feed: m.feed})
	return nil
}

// cycle does G81, G82 and G83: sections 3.5.16.1 to 3.5.16.4.
func (m *machine) cycle(to vec, hasZ bool, values map[byte]float64) error {
	if !m.plane {
		return errPlane
	}
	if r, ok := values['R']; ok {
		m.r, m.hasR = r*m.scale, true
	}
	if hasZ {
		m.bottom, m.hasZ = to.z, true
	}
	if q, ok := values['Q']; ok {
		m.q = q * m.scale
	}
	if p, ok := values['P']; ok && p < 0 {
		return errors.New("a negative dwell")
	}
	if l, ok := values['L']; ok && l == 0 {
		return errors.New("no repeats")
	}
	switch {
	case !m.hasR || !m.hasZ:
		return errors.New("a cycle without R or Z")
	case m.r < m.bottom:
		return errors.New("R below Z")
	case m.mode == "G83" && m.q <= 0:
		return errors.New("G83 without Q above 0")
	}
	if !m.inCycle { // Z before the cycle, to which G98 returns if it is above R
		m.clear, m.inCycle = m.at.z, true
	}
	up := m.r
	if !m.toR {
		up = math.Max(m.clear, m.r)
	}
	if m.at.z < m.r {
		m.pass(motion{rapid: true, to: vec{m.at.x, m.at.y, m.r}})
	}
	m.pass(motion{rapid: true, to: vec{to.x, to.y, m.at.z}})
	if m.at.z != m.r {
		m.pass(motion{rapid: true, to: vec{to.x, to.y, m.r}})
	}
	if m.mode == "G83" {
		for k := 1; m.r-float64(k)*m.q > m.bottom+1e-9; k++ {
			z := m.r - float64(k)*m.q
			if err := m.feedTo(vec{to.x, to.y, z}); err != nil {
				return err
			}
			m.pass(motion{rapid: true, to: vec{to.x, to.y, m.r}})
			m.pass(motion{rapid: true, to: vec{to.x, to.y, z + m.backOff}})
		}
	}
	if err := m.feedTo(vec{to.x, to.y, m.bottom}); err != nil {
		return err
	}
	m.pass(motion{rapid: true, to: vec{to.x, to.y, up}})
	return nil
}
