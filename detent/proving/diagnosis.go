package proving

// Value is something the readings tell, with how well they tell it.
type Value struct {
	Is     float64
	Std    float64 // standard error
	Known  bool    // Is means something
	Judged bool    // Std does
}

// Diagnosis is what the readings of a plate tell.
type Diagnosis struct {
	Common Value // degrees, by which every stop is off alike
	// Where the ring's centre lies off the pivot, mm; known only where it is so
	// far that noise does not explain it. What is not known is in Common.
	EccentricX, EccentricY Value
	Play                   Value // degrees, to either side of a stop
	Noise                  Value // degrees, of one stop's mean about the law
	Seats                  []Seat
	Next                   []Advice
}

// Seat is what the readings of one stop tell of it.
type Seat struct {
	Stop       int
	Readings   int
	Difference float64 // mean of measured less wanted, play taken out, degrees
	Own        float64 // what the law does not explain, degrees
	Move       float64 // mm along the ring, clockwise +, that would mend it: see [Plate.Move]
	Out        bool    // so far from the others that it was left out of the law
	Strange    float64 // by how many standard errors, where Judged
	Judged     bool
}

// How far from the rest a seat must be to be left out, and an eccentricity from
// nothing to be told, in standard errors. From few readings a standard error is
// itself uncertain, and among many stops the strangest is strange by chance:
// where it asks for more, an eccentricity must pass the 95 % point of Student's
// distribution, and a stop the point that a plate with nothing wrong passes one
// time in twenty (Bonferroni's, as Cook and Weisberg, section 2.2).
const (
	strangeLimit = 3.5
	eccentricity = 2.0
)

// leastOff is the least eccentricity (mm) that is told: below it lies rounding.
const leastOff = 1e-6

// Diagnose tells what readings of a plate say. It is false where there are
// none. Readings of a stop the plate has not are left out.
func Diagnose(p Plate, readings []Reading) (Diagnosis, bool) {
	all := means(p, readings)
	if len(all.stops) == 0 {
		return Diagnosis{}, false
	}
	d := Diagnosis{Play: all.play}
	l := findLaw(p, all.stops)
	d.Common, d.EccentricX, d.EccentricY, d.Noise = l.common, l.x, l.y, l.noise
	for i, m := range all.stops {
		s := Seat{Stop: m.stop, Readings: m.count, Difference: m.mean, Out: l.out[i]}
		s.Own = m.mean - l.says(p.row(m.stop)) + 0
		s.Move = p.Move(m.stop, s.Own)
		s.Strange, s.Judged = l.strange[i], l.judged[i]
		d.Seats = append(d.Seats, s)
	}
	d.Next = advise(p, all, d)
	return d, true
}
