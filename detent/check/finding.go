package check

import (
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Finding is one thing a check found: a fact with its numbers. [Sentence] puts
// it into words, [FixOf] says what would mend it.
type Finding struct {
	ID       string
	Severity Severity
	Angles   []geom.Angle // of the stops concerned; the one it is about first
	Value    float64
	Limit    float64
	Unit     string     // mm, deg, or empty for a count
	Case     string     // which of its sentences, for a check that must be told
	Turn     geom.Angle // where the table stands, for what happens at one turn only

	// What it concerns, as indices into the plate's lists.
	Seats    []int // the one it is about first
	Features []int
	Pockets  []int
	Tracks   []int
}

// Wrong reports whether the finding is something to mend, and not only a note.
func (f Finding) Wrong() bool { return f.Severity != Note }

// The units of values and limits.
const (
	mm     = "mm"
	deg    = "deg"
	nm     = "N·m"
	newton = "N"
)

// FeatureName returns the maker's label of a feature, or what it is and its
// number when it has none.
func FeatureName(c *words.Catalogue, f plate.Feature) string {
	switch {
	case f.Screw:
		return c.Text("feature.screw", words.Args{"N": f.Index + 1})
	case f.Label != "":
		return f.Label
	case f.Fitting != "":
		return c.Text("feature."+string(f.Fitting), words.Args{"N": f.Index + 1})
	}
	return c.Text("feature."+string(f.Kind), words.Args{"N": f.Index + 1})
}

// anglesOf returns the angles of every stop that one seat or two serve, each
// once, in the order of the seats. A seat's services are by angle, so none needs
// more than a look at the one before it and a search in the other seat's.
func anglesOf(pl *plate.Plate, seats ...int) []geom.Angle {
	out := make([]geom.Angle, 0, len(seats))
	for _, i := range seats {
		told := out
		for k, s := range pl.Seats[i].Serves {
			if k > 0 && s.Angle == pl.Seats[i].Serves[k-1].Angle {
				continue
			}
			if _, known := slices.BinarySearch(told, s.Angle); !known {
				out = append(out, s.Angle)
			}
		}
	}
	return out
}
