package measure

import "math/big"

// The places of an angle, in the order in which they are written.
const (
	degreePlace = iota
	minutePlace
	secondPlace
	afterSeconds
)

// places holds what may follow a number of an angle, and the place it marks.
var places = map[string]int{
	"°": degreePlace, "d": degreePlace, "deg": degreePlace, "degree": degreePlace, "degrees": degreePlace,
	"'": minutePlace, "m": minutePlace, "min": minutePlace,
	`"`: secondPlace, "s": secondPlace, "sec": secondPlace,
}

// perDegree is how many units of each place make a degree.
var perDegree = [afterSeconds]int64{1, 60, 3600}

// outOfRange is the reason against 60 or more of a place.
var outOfRange = [afterSeconds]Reason{minutePlace: MinutesRange, secondPlace: SecondsRange}

// part is one number of an angle and the place it stands in.
type part struct {
	value
	place int
}

// sexagesimal reads an angle of one part or more, without its sign, as degrees.
func sexagesimal(c *cursor) (*big.Rat, Reason) {
	parts, reason := angleParts(c)
	if reason != 0 {
		return nil, reason
	}
	limit := big.NewRat(60, 1)
	total := new(big.Rat)
	for i, p := range parts {
		last := i == len(parts)-1
		switch {
		case p.fraction && len(parts) > 1:
			return nil, NotUnderstood
		case !p.whole && !last:
			return nil, DecimalPlace
		case p.place > degreePlace && p.Cmp(limit) >= 0:
			return nil, outOfRange[p.place]
		}
		total.Add(total, p.Quo(p.Rat, big.NewRat(perDegree[p.place], 1)))
	}
	return total, 0
}

// angleParts reads the numbers of an angle to the end of the text. Their places
// go strictly down, from degrees.
func angleParts(c *cursor) ([]part, Reason) {
	var parts []part
	marked, colons := 0, 0
	next := degreePlace
	for first := true; first || !c.done(); first = false {
		v, reason := c.value()
		if reason != 0 {
			return nil, reason
		}
		place := next
		if given, ok := places[c.peek(0).text]; ok {
			place = given
			marked++
			c.at++
		}
		switch {
		case first && place != degreePlace:
			return nil, DegreesFirst
		case place < next || place == afterSeconds:
			return nil, NotUnderstood
		}
		parts = append(parts, part{v, place})
		next = place + 1
		if c.accept(":") {
			colons++
		}
	}
	// Colons stand between all the numbers, and in place of marks, or not at all.
	if colons > 0 && (marked > 0 || colons != len(parts)-1) {
		return nil, NotUnderstood
	}
	return parts, 0
}
