package plan

import (
	"bytes"
	"encoding/json"
	"math"
	"strconv"
)

// writer is the visitor that writes a plan file. Sections are written one key a
// line, items of a list one item a line, so that a change to one stop shows as
// a change to one line.
type writer struct {
	out   bytes.Buffer
	texts *json.Encoder
	open  []bracket
}

// bracket is an object or list that has been begun.
type bracket struct {
	closing byte
	inline  bool // all on one line
	empty   bool // nothing written in it yet
}

func newWriter() *writer {
	w := &writer{}
	w.texts = json.NewEncoder(&w.out)
	w.texts.SetEscapeHTML(false)
	w.begin('{', bracket{closing: '}'})
	return w
}

// finish ends the file and returns it.
func (w *writer) finish() []byte {
	w.leave()
	w.out.WriteByte('\n')
	return w.out.Bytes()
}

func (w *writer) begin(opening byte, b bracket) {
	b.empty = true
	w.out.WriteByte(opening)
	w.open = append(w.open, b)
}

func (w *writer) inner() *bracket { return &w.open[len(w.open)-1] }

// key writes what goes before a value: a comma after the last one, a new line,
// and its name.
func (w *writer) key(k key) {
	in := w.inner()
	if !in.empty {
		w.out.WriteByte(',')
	}
	if !in.inline {
		w.newLine()
	} else if !in.empty {
		w.out.WriteByte(' ')
	}
	in.empty = false
	if !k.isItem {
		w.out.WriteString(`"` + k.name + `": `) // the names of keys need no escapes
	}
}

func (w *writer) newLine() {
	w.out.WriteByte('\n')
	for range w.open {
		w.out.WriteString("  ")
	}
}

func (w *writer) number(k key, x *float64, _ limits) {
	if !k.belongs() || k.terse && *x == k.usual {
		return
	}
	w.key(k)
	// Only numbers so small that they would fill the line with zeros get an
	// exponent; none is too large.
	format := byte('f')
	if a := math.Abs(*x); a != 0 && a < 1e-6 {
		format = 'e'
	}
	w.out.Write(strconv.AppendFloat(w.out.AvailableBuffer(), *x+0, format, -1, 64)) // -0 + 0 is 0
}

func (w *writer) count(k key, n *int, _ limits) {
	w.key(k)
	w.out.WriteString(strconv.Itoa(*n))
}

func (w *writer) flag(k key, b *bool) {
	if k.terse && !*b {
		return
	}
	w.key(k)
	w.out.WriteString(strconv.FormatBool(*b))
}

func (w *writer) text(k key, s *string, _ wording) {
	if k.terse && *s == "" {
		return
	}
	w.key(k)
	// Writing a string to a buffer cannot fail.
	_ = w.texts.Encode(*s)
	w.out.Truncate(w.out.Len() - 1) // the encoder ends every value with a new line
}

func (w *writer) has(_ key, present bool) bool { return present }

func (w *writer) enter(k key) bool {
	w.key(k)
	w.begin('{', bracket{closing: '}', inline: k.isItem})
	return true
}

func (w *writer) enterList(k key, n int, _ limits) (int, bool) {
	if k.terse && n == 0 {
		return 0, false
	}
	inline := w.inner().inline
	w.key(k)
	w.begin('[', bracket{closing: ']', inline: inline})
	return n, true
}

func (w *writer) leave() {
	b := *w.inner()
	w.open = w.open[:len(w.open)-1]
	if !b.inline && !b.empty {
		w.newLine()
	}
	w.out.WriteByte(b.closing)
}
