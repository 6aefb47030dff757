package chart

import (
	"fmt"

	"stopwright/export/drawing"
)

// Scale is a drawing scale: Paper mm stand for Part mm.
type Scale struct{ Paper, Part int }

// scales are those of ISO 5455, from the largest.
var scales = []Scale{
	{50, 1},
	{20, 1},
	{10, 1},
	{5, 1},
	{2, 1},
	{1, 1},
	{1, 2},
	{1, 5},
	{1, 10},
	{1, 20},
	{1, 50},
	{1, 100},
	{1, 200},
	{1, 500},
	{1, 1000},
	{1, 2000},
	{1, 5000},
	{1, 10000},
}

// Factor returns how long 1 mm of the part is on paper.
func (s Scale) Factor() float64 { return float64(s.Paper) / float64(s.Part) }

func (s Scale) String() string { return fmt.Sprintf("%d:%d", s.Paper, s.Part) }

// fitScale returns the largest standard scale at which b fits a space on paper,
// mm; the smallest there is when none does.
func fitScale(b drawing.Bounds, width, height float64) Scale {
	for _, s := range scales {
		if b.Width()*s.Factor() <= width && b.Height()*s.Factor() <= height {
			return s
		}
	}
	return scales[len(scales)-1]
}
