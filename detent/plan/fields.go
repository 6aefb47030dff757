package plan

// Field is one value of a plan as a form shows it. One of Number, Text and Flag
// holds the value, as Kind says.
type Field struct {
	Path    string // as catches[0].radius
	Generic string // as catches[].radius: the same for every item
	Kind    FieldKind
	Unit    string   // of a number: mm, degrees, N, kg, per cent, or empty
	Choices []string // of a choice, in order
	Range   Range    // of a number
	Number  float64
	Text    string
	Flag    bool
}

// Range is what a number may be, ends included, in its field's unit.
type Range struct {
	Low, High float64
	OrZero    bool // 0 is allowed as well, and means none or automatic
}

// Holds reports whether x is in the range. NaN never is.
func (r Range) Holds(x float64) bool {
	return x >= r.Low && x <= r.High || r.OrZero && x == 0
}

// FieldKind is what a field holds.
type FieldKind int

// The kinds of field.
const (
	NumberField FieldKind = iota // Number
	CountField                   // Number, whole
	FlagField                    // Flag
	TextField                    // Text
	ChoiceField                  // Text, one of Choices
)

// Fields returns every value a plan holds, in the order of the file's keys.
// Sizes that do not belong to the base's shape or a feature's kind are left
// out, as are absent sections.
func Fields(p Plan) []Field {
	d := newDocument(p)
	f := fielder{}
	visit(&f, &d)
	return f.fields
}

// SetField writes a field's value into the plan at the field's path and reports
// whether the plan has such a field. It judges nothing: see [Validate]. It
// writes to p's own slices, so p must not share them.
func SetField(p *Plan, f Field) bool {
	d := newDocument(*p)
	s := fielder{set: &f}
	visit(&s, &d)
	*p = d.Plan
	return s.found
}

// fielder is the visitor that lists the fields, or sets one of them.
type fielder struct {
	trail
	fields []Field
	set    *Field // nil: list
	found  bool
}

// visitField lists a field, or reports that it is the one to be set.
func (v *fielder) visitField(k key, f Field) bool {
	if !k.belongs() || k.unset {
		return false
	}
	f.Path = v.path(k)
	if v.set != nil {
		hit := v.set.Path == f.Path && v.set.Kind == f.Kind
		v.found = v.found || hit
		return hit
	}
	f.Generic = withoutIndexes(f.Path)
	v.fields = append(v.fields, f)
	return false
}

func (v *fielder) number(k key, x *float64, l limits) {
	if v.visitField(k, Field{Kind: NumberField, Unit: l.unit, Range: l.span(), Number: *x}) {
		*x = v.set.Number
	}
}

func (v *fielder) count(k key, n *int, l limits) {
	if v.visitField(k, Field{Kind: CountField, Unit: l.unit, Range: l.span(), Number: float64(*n)}) {
		*n = int(v.set.Number)
	}
}

func (v *fielder) flag(k key, b *bool) {
	if v.visitField(k, Field{Kind: FlagField, Flag: *b}) {
		*b = v.set.Flag
	}
}

func (v *fielder) text(k key, s *string, w wording) {
	f := Field{Kind: TextField, Text: *s}
	if w.words != nil {
		f.Kind, f.Choices = ChoiceField, w.words
	}
	if v.visitField(k, f) {
		*s = v.set.Text
	}
}

// has shows a group that is as usual too: there is nowhere else to change it.
func (v *fielder) has(k key, present bool) bool { return present || k.terse }

func (v *fielder) enter(k key) bool {
	v.push(k)
	return true
}

func (v *fielder) enterList(k key, n int, _ limits) (int, bool) {
	v.push(k)
	return n, true
}

func (v *fielder) leave() { v.pop() }
