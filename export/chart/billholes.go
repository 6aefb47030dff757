package chart

import (
	"maps"
	"math"
	"slices"
	"strings"
	"unicode"

	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
)

// boltHoles are the maker's own round holes of one diameter.
type boltHoles struct {
	diameter float64 // mm
	at       map[boltPlace]bool
	names    []string // what they are for, each once
	named    map[string]bool
}

// boltPlace is where a screw or bolt goes through, in steps of [stock.SameSize],
// and whether what it goes through turns with the table.
type boltPlace struct {
	turns bool
	x, y  float64
}

// widestBolt is the widest hole (mm) that is taken for that of a screw or bolt:
// the freest hole of the largest listed thread. A wider one is for a pipe, a
// cable or the tool itself.
func widestBolt() float64 {
	all := stock.Clearances()
	return all[len(all)-1].Hole(stock.Coarse)
}

// ownFasteners counts a screw or bolt for each round hole of the maker's own,
// by the hole's diameter, the narrowest first, with the listed thread that has
// such a hole. The plan does not say what a hole is for, so the line gives the
// holes' labels for the maker to judge by. A hole through base and collar at one
// place takes one screw.
func ownFasteners(pl *plate.Plate, c *words.Catalogue) []Piece {
	same := func(mm float64) float64 { return math.Round(mm / stock.SameSize) }
	all := map[float64]*boltHoles{}
	for _, f := range pl.Features {
		at, straight := f.Core.(geom.Segment)
		diameter := 2 * f.Half
		if !f.Own() || !straight || at.A != at.B || diameter > widestBolt()+stock.SameSize {
			continue
		}
		b, ok := all[same(diameter)]
		if !ok {
			b = &boltHoles{diameter: diameter, at: map[boltPlace]bool{}, named: map[string]bool{}}
			all[same(diameter)] = b
		}
		b.at[boltPlace{f.Part == plan.PartTurntable, same(at.A.X), same(at.A.Y)}] = true
		if name := unnumbered(check.FeatureName(c, f)); !b.named[name] {
			b.named[name] = true
			b.names = append(b.names, name)
		}
	}
	var out []Piece
	for _, k := range slices.Sorted(maps.Keys(all)) {
		b := all[k]
		size := c.Text("bill.screw.size", words.Args{"Hole": "⌀" + c.Length(b.diameter)})
		if thread := threadFor(b.diameter); thread != "" {
			size += ", " + thread
		}
		out = append(out, Piece{len(b.at), c.Text("bill.own"), size, strings.Join(b.names, ", ")})
	}
	return out
}

// unnumbered returns a name without the number at its end, so that "foot screw
// 1" and "foot screw 2" are named once.
func unnumbered(name string) string {
	stem := strings.TrimRightFunc(name, unicode.IsDigit)
	if stem = strings.TrimRightFunc(stem, unicode.IsSpace); stem == "" {
		return name
	}
	return stem
}

// threadFor names the machine screw that a hole (mm) clears by one of the
// standard fits; empty where there is none.
func threadFor(hole float64) string {
	for _, s := range stock.Clearances() {
		for _, fit := range [...]stock.Fit{stock.Fine, stock.Medium, stock.Coarse} {
			if math.Abs(s.Hole(fit)-hole) <= stock.SameSize {
				return s.Thread
			}
		}
	}
	return ""
}
