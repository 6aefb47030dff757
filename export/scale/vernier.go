package scale

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/geom"
)

// Reading is how finely a vernier reads.
type Reading string

// The readings.
const (
	Plain   Reading = "none" // an index line only
	Tenth   Reading = "0.1"  // a tenth of a degree
	Minutes Reading = "5"    // five minutes of arc
)

// Readings lists them.
var Readings = []Reading{Tenth, Minutes, Plain}

// Count returns what one line of the vernier stands for; 0 without one.
func (r Reading) Count() geom.Angle {
	switch r {
	case Tenth:
		return 1.0 / 10
	case Minutes:
		return 5.0 / 60
	}
	return 0
}

// Steps lists the graduations there are, degrees.
var Steps = []float64{1, 0.5, 0.25}

// Vernier is a short scale beside the index, whose Lines divisions are as long
// as one division less of the main scale.
type Vernier struct {
	Step  geom.Angle // a division of the main scale
	Lines int        // divisions of the vernier; 0: none, an index line only
}

// NewVernier returns the vernier by which a scale is read. A reading that does
// not go into the scale's step a whole number of times has none: a quarter of a
// degree is no multiple of a tenth.
func NewVernier(step float64, r Reading) (Vernier, error) {
	v := Vernier{Step: geom.Angle(step)}
	count := r.Count()
	if count == 0 {
		return v, nil
	}
	n := step / count.Degrees()
	v.Lines = int(math.Round(n))
	if math.Abs(n-float64(v.Lines)) > 1e-9 {
		return Vernier{}, refused("scale.no.vernier", words.Args{"Step": words.Deg(step), "Count": words.Deg(count)})
	}
	return v, nil
}

// Line returns how far line k of the vernier, 0 to Lines, is from its 0, the
// index: k divisions, each short of one of the scale by a reading.
func (v Vernier) Line(k int) geom.Angle {
	if v.Lines == 0 {
		return 0
	}
	return v.Step * geom.Angle(k*(v.Lines-1)) / geom.Angle(v.Lines)
}

// Span returns how long the vernier is.
func (v Vernier) Span() geom.Angle { return v.Line(v.Lines) }

// Value returns what is added to the scale's reading where line k stands
// opposite a graduation.
func (v Vernier) Value(k int) geom.Angle {
	if v.Lines == 0 {
		return 0
	}
	return v.Step * geom.Angle(k) / geom.Angle(v.Lines)
}

// refused returns an error that can be said in any language.
func refused(key string, args words.Args) error {
	return &words.Error{Saying: words.Phrase{Key: key, Args: args}}
}
