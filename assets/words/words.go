// Package words holds every sentence the program says, by key and language, so
// that findings, sheets and the window speak with one voice and a translation
// is one folder. It needs no window toolkit.
//
// A language is a folder of JSON files, one a subject, of key to text;
// {{.Name}} in a text stands for an argument. The form is the window toolkit's
// own, so the same files can serve both.
package words

import (
	"embed"
	"encoding/json"
	"fmt"
	"path"
	"sort"
	"strconv"
	"strings"
	"sync"
)

//go:embed */*.json
var files embed.FS

// MM is a length in millimetres that a [Catalogue] writes in its own unit.
type MM float64

// Deg is an angle in degrees that a [Catalogue] writes in its own style.
type Deg float64

// N is a force in newtons, NM a torque in newton metres.
type (
	N  float64
	NM float64
)

// Args are the named values of a text: strings, numbers, [MM], [Deg], lists of
// [Deg], [N], [NM], a [Saying], and errors, which are [Catalogue.Told].
type Args map[string]any

// Catalogue is one language with a way to write numbers.
type Catalogue struct {
	Language string
	Length   func(mm float64) string  // with its unit
	Angle    func(deg float64) string // with its sign of degrees
	texts    map[string]string
}

// English returns the English catalogue: millimetres to two decimals, degrees
// to three, trailing zeros dropped.
func English() *Catalogue {
	c, err := In("en")
	if err != nil {
		panic(err) // cannot happen: the file is compiled in and a test reads it
	}
	return c
}

// In returns the catalogue of a language ("en"), which writes numbers as
// [English] does but for the decimal mark, or an error naming those there are.
func In(language string) (*Catalogue, error) {
	c := &Catalogue{Language: language}
	c.Length = func(mm float64) string { return c.Decimal(trim(mm, 2)) + " mm" }
	c.Angle = func(deg float64) string { return c.Decimal(trim(deg, 3)) + "°" }
	if known, ok := textsOf.Load(language); ok {
		c.texts = known.(map[string]string)
		return c, nil
	}
	subjects, err := files.ReadDir(language)
	if err != nil || language == "." {
		return nil, fmt.Errorf("no language %q; there are %s", language, strings.Join(Languages(), ", "))
	}
	c.texts = map[string]string{}
	for _, s := range subjects {
		name := path.Join(language, s.Name())
		if err := c.read(name); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
	}
	textsOf.Store(language, c.texts)
	return c, nil
}

// textsOf holds the texts of each language once read, which no catalogue
// changes: an error asks for them anew each time it is told.
var textsOf sync.Map

// read adds the texts of one file. A key may stand in one file only.
func (c *Catalogue) read(name string) error {
	data, err := files.ReadFile(name)
	if err != nil {
		return err
	}
	var texts map[string]string
	if err := json.Unmarshal(data, &texts); err != nil {
		return err
	}
	for key, text := range texts {
		if c.Has(key) {
			return fmt.Errorf("%s stands in another file too", key)
		}
		c.texts[key] = text
	}
	return nil
}

// Languages returns the languages there are, sorted.
func Languages() []string {
	entries, _ := files.ReadDir(".")
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	sort.Strings(out)
	return out
}

// Keys returns every key of the catalogue, sorted.
func (c *Catalogue) Keys() []string {
	out := make([]string, 0, len(c.texts))
	for k := range c.texts {
		out = append(out, k)
	}
	sort.Strings(out)
	return out
}

// Has reports whether the catalogue knows key.
func (c *Catalogue) Has(key string) bool { _, ok := c.texts[key]; return ok }

// Text returns the text of key with its arguments filled in. An unknown key
// returns itself in brackets, so that a gap is seen and not silent.
func (c *Catalogue) Text(key string, args ...Args) string {
	text, ok := c.texts[key]
	if !ok {
		return "[" + key + "]"
	}
	if len(args) == 0 || !strings.Contains(text, "{{") {
		return text
	}
	var b strings.Builder
	for {
		before, rest, found := strings.Cut(text, "{{.")
		b.WriteString(before)
		if !found {
			return b.String()
		}
		name, after, _ := strings.Cut(rest, "}}")
		b.WriteString(c.value(args[0][name]))
		text = after
	}
}

// value writes one argument.
func (c *Catalogue) value(v any) string {
	switch v := v.(type) {
	case MM:
		return c.Length(float64(v))
	case Deg:
		return c.Angle(float64(v))
	case N:
		return c.Decimal(trim(float64(v), 1)) + " N"
	case NM:
		return c.Decimal(trim(float64(v), 2)) + " N·m"
	case []Deg:
		all := make([]string, len(v))
		for i, d := range v {
			all[i] = c.value(d)
		}
		return strings.Join(all, ", ")
	case Saying:
		return v.In(c)
	case error:
		return c.Told(v)
	case string:
		return v
	case int:
		return strconv.Itoa(v)
	case float64:
		return c.Decimal(strconv.FormatFloat(v, 'g', -1, 64))
	}
	return fmt.Sprint(v)
}

// Decimal writes a number that has a decimal point with the decimal mark of the
// catalogue's language: a comma in German.
func (c *Catalogue) Decimal(number string) string {
	if c.Language == "de" {
		return strings.Replace(number, ".", ",", 1)
	}
	return number
}

// trim writes x with at most n decimals and without trailing zeros or -0.
func trim(x float64, n int) string {
	s := strconv.FormatFloat(x, 'f', n, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}
