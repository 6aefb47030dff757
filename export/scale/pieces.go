package scale

import (
	"math"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// How a strip is laid on paper, mm.
const (
	pieceLength = 160.0 // of one piece: fits the narrowest paper, however it is stretched
	tab         = 8.0   // to glue the next piece on
	pieceGap    = 6.0
	mostHeight  = 150.0 // of all that stands on one sheet, with room for the words below
)

// StripSheets returns the strip in pieces for paper, below each other, with tabs
// to glue them together by, and the index with its vernier. The error is one of
// [Options.Check].
func StripSheets(pl *plate.Plate, info drawing.Info, o Options) ([]tile.Sheet, error) {
	s, err := newStrip(pl, info.Words, o)
	if err != nil {
		return nil, err
	}
	cuts := s.cuts()
	perSheet := max(1, int((mostHeight-vernierWidth-pieceGap)/(s.height+pieceGap)))
	var all []tile.Sheet
	for first := 0; first+1 < len(cuts); first += perSheet {
		one := s.sheet(info, "scale.what.strip", s.wrap(info.Words))
		y := 0.0
		for i := first; i < min(first+perSheet, len(cuts)-1); i++ {
			y -= s.height + pieceGap
			piece := s.piece(cuts[i], cuts[i+1], s.whole || i+2 < len(cuts))
			one.Drawing.Place(piece, drawing.Transform{Scale: 1, Move: geom.Point{X: -cuts[i], Y: y}})
		}
		if first == 0 {
			s.below(&one.Drawing, y-pieceGap)
		}
		all = append(all, one)
	}
	return all, nil
}

// cuts returns where the strip is cut into pieces, its ends among them: halfway
// between graduations and, if it can be, between letters.
func (s *strip) cuts() []float64 {
	step := math.Abs(s.along(s.vernier.Step.Degrees()))
	begin := s.along(s.reading(s.first())) + step/2 // a place halfway, from which steps are counted
	out := []float64{s.from}
	for x := s.from; s.to-x > pieceLength; out = append(out, x) {
		most := begin + math.Floor((x+pieceLength-begin)/step)*step
		cut := most
		for cut > x+pieceLength/2 && !s.clear(cut) {
			cut -= step
		}
		if !s.clear(cut) {
			cut = most
		}
		x = math.Max(cut, x+pieceLength/2) // graduations that lie farther apart than a piece is long are cut anywhere
	}
	return append(out, s.to)
}

// clear reports whether a cut goes through no letters.
func (s *strip) clear(x float64) bool {
	for _, l := range s.letters {
		if x > l[0]-drawing.CrowdApart && x < l[1]+drawing.CrowdApart {
			return false
		}
	}
	return true
}

// piece draws one piece of the strip, with a tab at its right end where another
// follows.
func (s *strip) piece(from, to float64, tabbed bool) drawing.Drawing {
	out := s.drawn.Clip(drawing.Bounds{Min: geom.Point{X: from}, Max: geom.Point{X: to, Y: s.height}})
	out.Rect(drawing.Outline, geom.Point{X: from}, geom.Point{X: to, Y: s.height})
	if tabbed {
		line(&out, drawing.Outline, to, 0, to+tab, s.height/6)
		line(&out, drawing.Outline, to+tab, s.height/6, to+tab, s.height*5/6)
		line(&out, drawing.Outline, to+tab, s.height*5/6, to, s.height)
	}
	return out
}

// below draws the index, whose plate lies flat on the part below, under the
// pieces: its upper edge at y.
func (s *strip) below(out *drawing.Drawing, y float64) {
	var index, turned drawing.Drawing
	s.index0(&index)
	turned.Place(index, drawing.Transform{Scale: 1, Turn: 180 - s.index})
	b := turned.Bounds()
	out.Place(turned, drawing.Transform{Scale: 1, Move: geom.Point{X: -b.Min.X, Y: y - b.Max.Y}})
}
