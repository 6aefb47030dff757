package scale

import (
	"cmp"
	"math"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// strip is a scale unrolled, seen from outside the rim: x along the rim with 0
// at the reading 0, y up from the table's lower edge, mm.
type strip struct {
	dial
	drawn    drawing.Drawing // all but its outline
	height   float64
	from, to float64      // its ends
	letters  [][2]float64 // what letters and marks of stops take along it
}

// The height of a strip, mm.
const (
	stripHeight = 20.0 // at usual size
	stripRow    = stripHeight - 1.5 - labelSize/2
	stripMargin = 6.0 // past the last graduation, where it does not go right round
)

// seam is where a strip that goes right round begins, degrees past the first
// graduation: not at a number.
const seam = 5

// newStrip draws a strip: as high as usual, or as the table is thick.
func newStrip(pl *plate.Plate, c *words.Catalogue, o Options) (*strip, error) {
	d, err := newDial(pl, c, o)
	if err != nil {
		return nil, err
	}
	s := &strip{dial: d, height: math.Min(stripHeight*d.size(), pl.Plan.Turntable.Thickness)}
	s.graduate()
	s.mark()
	return s, nil
}

// Strip returns the whole strip as one drawing: as long as the rim's
// circumference where it goes right round.
func Strip(pl *plate.Plate, c *words.Catalogue, o Options) (drawing.Drawing, error) {
	s, err := newStrip(pl, c, o)
	if err != nil {
		return drawing.Drawing{}, err
	}
	s.drawn.Rect(drawing.Outline, geom.Point{X: s.from}, geom.Point{X: s.to, Y: s.height})
	return s.drawn, nil
}

// along returns where a reading stands on the strip. From outside, what lies
// clockwise on the table lies to the left, and so numbers grow to the right when
// a positive turn is clockwise.
func (s *strip) along(reading float64) float64 {
	return s.sense.Degrees() * reading / 360 * math.Pi * 2 * s.radius
}

// scaled returns a height of a strip of usual size on this one.
func (s *strip) scaled(y float64) float64 { return y * s.height / stripHeight }

// first returns the graduation at which the strip begins.
func (s *strip) first() int {
	if s.whole {
		return s.lo + int(seam/s.vernier.Step.Degrees())
	}
	return s.lo
}

// graduate draws the graduations with their numbers, and fixes the ends: halfway
// between two graduations where they go right round, so that they close without a
// gap.
func (s *strip) graduate() {
	first, n := s.first(), s.hi-s.lo+1
	for i := first; i < first+n; i++ {
		r := s.reading(i)
		if i > s.hi {
			r = s.reading(i - n) // over the seam
		}
		x := s.along(s.reading(i))
		line(&s.drawn, drawing.Graduations, x, 0, x, s.scaled(tick(r)))
		if numbered(r) {
			s.letter(s.number(r), x, s.scaled(numberMid), s.scaled(numberSize))
		}
	}
	half := s.vernier.Step.Degrees() / 2
	a, b := s.along(s.reading(first)-half), s.along(s.reading(first+n-1)+half)
	s.from, s.to = min(a, b), max(a, b)
	if !s.whole {
		s.from, s.to = s.from-stripMargin, s.to+stripMargin
	}
}

// mark draws the marks of the stops, with their labels, or else their angles,
// where there is room beside the last one.
func (s *strip) mark() {
	tip, foot, half := s.scaled(stopTip), s.scaled(stopFoot), s.scaled(stopHalf)
	all := s.stops()
	slices.SortStableFunc(all, func(a, b stop) int { return cmp.Compare(a.reading, b.reading) })
	full := drawing.Crowd{}
	for _, st := range all {
		x := s.place(st.reading)
		line(&s.drawn, drawing.Graduations, x, tip, x-half, foot)
		line(&s.drawn, drawing.Graduations, x-half, foot, x+half, foot)
		line(&s.drawn, drawing.Graduations, x+half, foot, x, tip)
		s.letters = append(s.letters, [2]float64{x - half, x + half})
		size := s.scaled(labelSize)
		for _, text := range s.engraved(st, size, labelMost) {
			wide := drawing.StrokeWidth(text, size) / 2
			box := drawing.Bounds{Min: geom.Point{X: x - wide}, Max: geom.Point{X: x + wide, Y: size}}
			if full.Room(box) && box.Min.X > s.from && box.Max.X < s.to {
				full.AddBox(box)
				s.letter(text, x, s.scaled(stripRow), size)
				break
			}
		}
	}
}

// place returns where a stop stands: on a strip that goes right round, on the
// side of the seam where its graduation is.
func (s *strip) place(reading float64) float64 {
	if before := s.reading(s.first()) - s.vernier.Step.Degrees()/2; s.whole && reading < before {
		reading += 360
	}
	return s.along(reading)
}

// letter engraves a text about a place.
func (s *strip) letter(text string, x, y, size float64) {
	wide := drawing.StrokeWidth(text, size) / 2
	s.letters = append(s.letters, [2]float64{x - wide, x + wide})
	s.drawn.Engrave(drawing.Text{At: geom.Point{X: x, Y: y}, Size: size, Align: drawing.Centre, Text: text})
}

func line(out *drawing.Drawing, l drawing.Layer, x1, y1, x2, y2 float64) {
	out.Add(l, drawing.Line{A: geom.Point{X: x1, Y: y1}, B: geom.Point{X: x2, Y: y2}})
}
