package stock

import "slices"

// System is a series of sizes in which drills or balls are sold.
type System int

// The systems. Sizes that are equal in several systems (letter E is 1/4 inch)
// are listed in this order.
const (
	Metric   System = iota + 1 // millimetres
	Fraction                   // inch, halves to sixty-fourths
	Number                     // #80, the smallest, to #1
	Letter                     // A to Z
)

// String returns the system's name in lower case.
func (s System) String() string {
	switch s {
	case Metric:
		return "metric"
	case Fraction:
		return "fraction"
	case Number:
		return "number"
	case Letter:
		return "letter"
	}
	return "unknown"
}

// Drill is a standard twist drill.
type Drill struct {
	System      System
	Designation string  // as on the drill: 4.5, 3/16, #12, E
	MM          float64 // diameter, mm; of an inch size exactly 25.4 times Inch
	Inch        float64 // diameter, inch; of a metric size rounded to 6 decimals
	Evidence
}

func (d Drill) size() float64  { return d.MM }
func (d Drill) series() System { return d.System }

// Drills returns the standard drills from 0.2 to 13 mm, the smallest first.
func Drills() []Drill { return slices.Clone(drills()) }

// NearestDrill returns the drill nearest in diameter to mm among the systems
// given, or among all. Of two as near it takes the smaller. It is false where
// mm is not a number or no such system has drills.
func NearestDrill(mm float64, systems ...System) (Drill, bool) {
	return nearest(drills(), mm, systems)
}

// DrillsNear returns the n drills nearest in diameter to mm, the smallest
// first: a ladder of sizes to choose from. It returns fewer where there are
// fewer, and none where mm is not a number.
func DrillsNear(mm float64, n int, systems ...System) []Drill {
	return near(drills(), mm, n, systems)
}
