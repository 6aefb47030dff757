package chart_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/chart"
)

// bolts are the lines of the list for the maker's own holes.
func bolts(t *testing.T, features ...plan.Feature) []chart.Piece {
	t.Helper()
	p := plan.Default()
	p.Collar = nil
	bare := len(chart.BillOf(plate.New(p), words.English()).Hardware)
	p.Features = features
	require.NoError(t, plan.Validate(p))
	return chart.BillOf(plate.New(p), words.English()).Hardware[bare:]
}

func TestTheBillCountsTheFastenersOfOwnHoles(t *testing.T) {
	hole := func(part plan.Part, x, d float64, label string) plan.Feature {
		return plan.Feature{Part: part, Kind: plan.Hole, X: x, Diameter: d, Label: label}
	}
	const name = "Screw or bolt"
	for why, c := range map[string]struct {
		features []plan.Feature
		want     []chart.Piece
	}{
		"a pattern is one line; ISO 273 gives M6 6.6 mm, medium": {
			[]plan.Feature{hole("turntable", 40, 6.6, "vice bolt 1"), hole("turntable", -40, 6.6, "vice bolt 2")},
			[]chart.Piece{{2, name, "for a hole of ⌀6.6 mm, M6", "vice bolt"}},
		},
		"no listed thread has a hole of 5 mm; the narrowest comes first": {
			[]plan.Feature{hole("base", 40, 9, "bench bolt"), hole("base", -40, 5, "foot screw 1"), hole("base", -60, 5, "cover 1")},
			[]chart.Piece{{2, name, "for a hole of ⌀5 mm", "foot screw, cover"}, {1, name, "for a hole of ⌀9 mm, M8", "bench bolt"}},
		},
		"a screw through base and collar is one, but none passes from the base into what turns": {
			[]plan.Feature{hole("base", 140, 5, "a"), hole("collar", 140, 5, "a"), hole("turntable", 40, 5, "b"), hole("base", 40, 5, "b")},
			[]chart.Piece{{3, name, "for a hole of ⌀5 mm", "a, b"}},
		},
		"M16 passes 18.5 mm, coarse, and is the largest listed": {
			[]plan.Feature{hole("base", 40, 18.5, "1"), hole("base", -40, 18.6, "hose")},
			[]chart.Piece{{1, name, "for a hole of ⌀18.5 mm, M16", "1"}},
		},
		"a slot is no hole, whatever its width": {
			[]plan.Feature{
				{Part: "base", Kind: plan.Slot, X: 40, Y: 40, X2: 60, Y2: 40, Width: 6.6},
				{Part: "base", Kind: plan.ArcSlot, Radius: 60, From: -30, To: 30, Width: 6.6},
			}, nil,
		},
	} {
		t.Run(why, func(t *testing.T) {
			got := bolts(t, c.features...)
			if len(c.want) == 0 {
				assert.Empty(t, got)
				return
			}
			assert.Equal(t, c.want, got)
		})
	}
}
