package units

// LengthLimit returns an end of a range of lengths, in mm, for a message: all
// its digits where it is shown in mm, rounded to a millionth of an inch
// otherwise.
func (s Style) LengthLimit(mm float64) string {
	return trueMinus(s.LengthField(mm)) + " " + s.LengthSign()
}

// AngleLimit is LengthLimit for an angle in degrees.
func (s Style) AngleLimit(degrees float64) string { return trueMinus(withSign(s.AngleField(degrees))) }
