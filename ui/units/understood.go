package units

import (
	"regexp"
	"strings"
)

// LengthUnderstood returns what a text was understood as, "= 4.7625 mm", or ""
// if that would only repeat it. A length the style cannot show exactly stands
// after ≈.
func (s Style) LengthUnderstood(text string) string {
	mm, err := s.ReadLength(text)
	if err != nil {
		return ""
	}
	field := s.LengthField(mm)
	if sameForm(text, field, s.LengthSign(), s.Lengths != Fractions) {
		return ""
	}
	back, err := s.ReadLength(field)
	return equals(err == nil && same(mm, back)) + trueMinus(field) + " " + s.LengthSign()
}

// AngleUnderstood is LengthUnderstood for an angle: "= 31.5°".
func (s Style) AngleUnderstood(text string) string {
	degrees, err := s.ReadAngle(text)
	if err != nil {
		return ""
	}
	field := s.AngleField(degrees)
	if sameForm(text, field, s.AngleSign(), s.Angles != Minutes) {
		return ""
	}
	back, err := s.ReadAngle(field)
	return equals(err == nil && same(degrees, back)) + trueMinus(withSign(field))
}

// LengthKept returns the true length, "4.5 mm", where the field that shows it
// has to round it, and else "".
func (s Style) LengthKept(mm float64) string {
	if back, err := s.ReadLength(s.LengthField(mm)); err == nil && same(mm, back) {
		return ""
	}
	return whole(mm) + " mm"
}

// AngleKept is LengthKept for an angle in degrees: "25.714285714285715°".
func (s Style) AngleKept(degrees float64) string {
	if back, err := s.ReadAngle(s.AngleField(degrees)); err == nil && same(degrees, back) {
		return ""
	}
	return whole(degrees) + "°"
}

func equals(exact bool) string {
	if exact {
		return "= "
	}
	return "≈ "
}

// withSign ends an angle of whole or decimal degrees with their sign.
func withSign(field string) string {
	if strings.ContainsAny(field, "°′″") {
		return field
	}
	return field + "°"
}

// plain matches a number with or without decimals and nothing else.
var plain = regexp.MustCompile(`^[+-]?[0-9]*\.?[0-9]+$`)

// sameForm reports whether a text says what a field would: the same but for
// signs that mean the same, or, where the field shows decimals, decimals in the
// field's own unit.
func sameForm(text, field, sign string, decimals bool) bool {
	text = canonical(text, sign)
	return text == canonical(field, sign) || decimals && plain.MatchString(text)
}

// likeSigns are the signs that are read alike.
var likeSigns = strings.NewReplacer("\u00a0", " ", ",", ".", "′", "'", "’", "'", "″", `"`, "−", "-")

// canonical returns a text with one spelling for each sign, and without the
// unit that stands beside its field.
func canonical(text, sign string) string {
	text = likeSigns.Replace(strings.TrimSpace(text))
	if sign == "in" {
		text = strings.TrimSuffix(text, `"`)
	}
	return strings.TrimSpace(strings.TrimSuffix(strings.TrimSuffix(text, sign), "°"))
}
