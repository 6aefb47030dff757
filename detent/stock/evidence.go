package stock

// Certainty says how sure a record is. The zero Certainty marks a value that is
// not known at all.
type Certainty int

// How sure a record is, the surest first.
const (
	// Exact follows by definition or mathematics. It says nothing of what a
	// shop has on the shelf.
	Exact Certainty = iota + 1
	// Seen was read in the source named.
	Seen
	// Transcribed was read in a copy or quotation of the source named;
	// the printed original was not opened.
	Transcribed
	// Memory was recalled, not looked up: confirm before relying on it.
	Memory
	// CommonPractice is what workshops reckon with; no standard or handbook was
	// found for it, and it may be a bare estimate.
	CommonPractice
)

// String returns the certainty as one lower-case word or two joined by a
// hyphen, fit for a key.
func (c Certainty) String() string {
	switch c {
	case Exact:
		return "exact"
	case Seen:
		return "seen"
	case Transcribed:
		return "transcribed"
	case Memory:
		return "memory"
	case CommonPractice:
		return "common-practice"
	}
	return "unknown"
}

// Evidence is where a record comes from and how sure it is.
type Evidence struct {
	Source    string // a standard, a handbook, a rule, or "common practice" with its reason
	Certainty Certainty
}

// Value is a published figure with the range it may have; the field that holds
// it gives its unit. The zero Value is one that no source gives.
type Value struct {
	Typical   float64 // the middle of the range where the source gives a range only
	Low, High float64 // both Typical where the source gives one figure
	Evidence
}

// Known reports whether a source gives the value.
func (v Value) Known() bool { return v.Certainty != 0 }

// Times returns the value k times as large, range and evidence kept.
func (v Value) Times(k float64) Value {
	v.Typical *= k
	v.Low, v.High = min(v.Low*k, v.High*k), max(v.Low*k, v.High*k)
	return v
}

// figure is a Value that a source gives as one number.
func figure(x float64, e Evidence) Value { return Value{x, x, x, e} }

// between is a Value that a source gives as a range.
func between(low, high float64, e Evidence) Value { return Value{(low + high) / 2, low, high, e} }
