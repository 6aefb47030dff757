package plate

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"unicode"
	"unicode/utf8"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Coincide is how near two seat centres may lie, mm, and still be one hole.
const Coincide = 1e-6

// Seat is one hole the ball drops into. Where it serves several stops, Angle,
// Label and Catch are those of the one it was placed for: the first by catch and
// then by angle.
type Seat struct {
	Tag     string // the catch's name and a number, counted by angle
	Angle   geom.Angle
	Label   string
	Catch   int // into the plan's catches
	Azimuth geom.Angle
	Radius  float64
	Centre  geom.Point
	Serves  []Service // at least one, by angle

	Nearest int     // index of the nearest other seat; -1 when alone
	Web     float64 // material (mm) to it, negative where they overlap; +Inf when alone
}

// Service is one stop that a seat serves with one catch.
type Service struct {
	Angle geom.Angle
	Catch int // into the plan's catches
	Stop  int // into the plate's stops
}

// seats places the seat of every stop and catch, by catch and then by angle.
func seats(p plan.Plan, sign geom.Angle, stops []Stop) []Seat {
	n := 0
	for _, s := range stops {
		n += len(s.Catches)
	}
	services := make([]Service, 0, n)
	for i, s := range stops {
		for _, c := range s.Catches {
			services = append(services, Service{s.Angle, c, i})
		}
	}
	slices.SortFunc(services, func(a, b Service) int {
		return cmp.Or(a.Catch-b.Catch, cmp.Compare(a.Angle, b.Angle), a.Stop-b.Stop)
	})
	all := make([]Seat, n)
	for k, v := range services {
		place := p.Catches[v.Catch]
		az := (geom.Angle(place.Azimuth) + sign*v.Angle).Wrap()
		all[k] = Seat{
			Angle: v.Angle, Label: stops[v.Stop].Label, Catch: v.Catch,
			Azimuth: az, Radius: place.Radius, Centre: geom.Polar(place.Radius, az),
			Serves: services[k : k+1 : k+1], // not to grow into the next seat's
		}
	}
	return all
}

// merge returns the seats of an index with one seat for each group of those
// that coincide: the first, given what the others serve. Seats a chain of
// coinciding ones apart are one group.
func merge(ix ringIndex) []Seat {
	all := ix.seats
	into := make([]int, len(all)) // the seat each one is merged into, itself if none
	for i := range into {
		into[i] = i
	}
	merged := false
	ix.besideEach(Coincide, func(i, j int) {
		if i != j && all[i].Centre.Distance(all[j].Centre) <= Coincide {
			a, b := root(into, i), root(into, j)
			into[max(a, b)] = min(a, b)
			merged = true
		}
	})
	if !merged {
		return all
	}
	kept := make([]Seat, 0, len(all))
	at := make([]int, len(all))
	for i, s := range all {
		if r := root(into, i); r != i {
			k := at[r]
			kept[k].Serves = append(kept[k].Serves, s.Serves...)
			continue
		}
		at[i] = len(kept)
		kept = append(kept, s)
	}
	for i := range kept {
		slices.SortStableFunc(kept[i].Serves, func(a, b Service) int {
			return cmp.Or(cmp.Compare(a.Angle, b.Angle), cmp.Compare(a.Catch, b.Catch))
		})
	}
	return kept
}

// root follows a chain of merges to the seat that is kept, and halves it on the
// way so that the next walk is short.
func root(into []int, i int) int {
	for into[i] != i {
		into[i] = into[into[i]]
		i = into[i]
	}
	return i
}

// number tags the seats by catch and angle: A1, A2 and so on. A name that ends
// in a digit is kept apart from the number, or seat 1 of catch 11 would be
// called as seat 11 of catch 1.
func number(p plan.Plan, all []Seat) {
	count := make([]int, len(p.Catches))
	var tag []byte
	for i := range all {
		c := all[i].Catch
		count[c]++
		name := p.Catches[c].Name
		tag = append(tag[:0], name...)
		if last, _ := utf8.DecodeLastRuneInString(name); unicode.IsDigit(last) {
			tag = append(tag, '-')
		}
		all[i].Tag = string(strconv.AppendInt(tag, int64(count[c]), 10))
	}
}

// Datum returns the index of the seat from which the others are measured: the
// one that serves the stop nearest 0, the positive one of two. It is -1 when
// there is no seat.
func (pl *Plate) Datum() int {
	best, angle := -1, geom.Angle(math.Inf(1))
	for i, s := range pl.Seats {
		for _, v := range s.Serves {
			if a := v.Angle; a.Abs() < angle.Abs() || a.Abs() == angle.Abs() && a > angle {
				best, angle = i, a
			}
		}
	}
	return best
}
