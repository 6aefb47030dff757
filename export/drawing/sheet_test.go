package drawing

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

var info = Info{Words: words.English(), Date: "2026-11-20"}

// lettered returns every text of a drawing.
func lettered(d Drawing) (out []Text) {
	shapes, _ := on(d, Lettering)
	for _, s := range shapes {
		out = append(out, s.(Text))
	}
	return out
}

func TestSheetSaysWhatItMust(t *testing.T) {
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		for _, part := range Parts(pl.Plan) {
			var all []string
			for _, x := range lettered(PartSheet(pl, part, info)) {
				all = append(all, x.Text)
			}
			text := strings.Join(all, "\n")
			c := info.Words
			for _, want := range []string{
				pl.Plan.Title, info.Date, PartName(c, part), ViewName(c, part), c.Text("sheet.units"),
				c.Text("caution.unplug"), c.Text("caution.clamp"), c.Text("caution.eyes"), c.Text("caution.manual"),
			} {
				assert.Contains(t, text, want, "%s", part)
			}
			assert.NotContains(t, text, "<nil>")
			assert.NotContains(t, text, "[", "no text is missing")
		}
	})
	pl := plate.New(everything(plan.PartTurntable, plan.Clockwise))
	before := len(lettered(PartSheet(pl, plan.PartBase, info)))
	assert.Len(t, lettered(PartSheet(pl, plan.PartBase, Info{Words: info.Words})), before-1, "no date, no line for it")
	untitled := pl.Plan
	untitled.Title = " \n"
	assert.Len(t, lettered(PartSheet(plate.New(untitled), plan.PartBase, info)), before-1, "no title, no line for it")
	untitled.Title = "two\nlines "
	assert.Equal(t, "two lines", lettered(PartSheet(plate.New(untitled), plan.PartBase, info))[3+1].Text)
}

func TestNotesStandBelow(t *testing.T) {
	pl := plate.New(everything(plan.PartTurntable, plan.Clockwise))
	for _, part := range Parts(pl.Plan) {
		sheet := PartSheet(pl, part, info)
		lowest := Part(pl, part, AsAtDrill).Bounds().Min.Y
		last := math.Inf(1)
		for _, x := range lettered(sheet) {
			if x.Size <= tagSize {
				continue // a tag
			}
			assert.Less(t, x.At.Y+x.Size, lowest)
			assert.Less(t, x.At.Y+x.Size, last, "below the line before")
			last = x.At.Y
		}
	}
}

// TestTagsStandByTheirHoles: each on the pivot side of its own hole, in the view
// of the sheet.
func TestTagsStandByTheirHoles(t *testing.T) {
	eachWay(t, func(t *testing.T, pl *plate.Plate) {
		tags := 0
		for _, part := range Parts(pl.Plan) {
			for _, e := range PartSheet(pl, part, info).Entities {
				x, isText := e.Shape.(Text)
				if !isText || e.Item.Kind == NoItem {
					continue
				}
				tags++
				name, at, mouth := "", geom.Point{}, 0.0
				if e.Item.Kind == SeatItem {
					s := pl.Seats[e.Item.Index]
					name, at, mouth = s.Tag, s.Centre, pl.Plan.Seat.Mouth()
				} else {
					p := pl.Pockets[e.Item.Index]
					name, at, mouth = p.Name, p.Centre, p.Widest()
				}
				at = plate.AtDrill(part, at)
				assert.Equal(t, name, x.Text)
				assert.InDelta(t, mouth/2+1.5*tagSize, x.At.Distance(at), same)
				assert.InDelta(t, at.Norm()-x.At.Norm(), x.At.Distance(at), same, "straight towards the pivot")
			}
		}
		assert.Equal(t, len(pl.Seats)+len(pl.Pockets), tags)
	})
}

// TestAllPartsStandApart takes the drawing of all parts to pieces again.
func TestAllPartsStandApart(t *testing.T) {
	small := everything(plan.PartBase, plan.Clockwise)
	small.Features = nil
	small.Turntable.Diameter, small.Base = 20, plan.Base{Shape: plan.Disc, Diameter: 25, Thickness: 18}
	small.Collar.OutsideDiameter, small.Collar.Screws.Count = 30, 0
	small.Catches = []plan.Placement{{Name: "A", Radius: 6}}
	small.Stops = []plan.Stop{{Angle: 0}}
	for _, c := range []struct {
		why  string
		plan plan.Plan
	}{
		{"the usual size", everything(plan.PartTurntable, plan.Clockwise)},
		{"parts smaller than their names", small},
	} {
		t.Run(c.why, func(t *testing.T) {
			pl := plate.New(c.plan)
			all := AllParts(pl, info).Entities
			right := math.Inf(-1)
			for _, part := range Parts(pl.Plan) {
				sheet := PartSheet(pl, part, info)
				n := len(sheet.Entities)
				across, up, name := all[n].Shape.(Line), all[n+1].Shape.(Line), all[n+2].Shape.(Text)
				pivot := geom.Point{X: up.A.X, Y: across.A.Y}
				assert.Zero(t, pivot.Y)
				assert.Equal(t, math.Trunc(pivot.X), pivot.X, "a whole number, for the name to say")
				assert.Equal(t, info.Words.Text("sheet.frame", words.Args{
					"Part": PartName(info.Words, part), "X": words.MM(pivot.X), "Y": words.MM(0),
				}), name.Text)
				var moved Drawing
				moved.Place(sheet, Transform{Scale: 1, Move: pivot})
				assert.Equal(t, moved.Entities, all[:n], "the part's own sheet, moved to its pivot")

				b := Drawing{all[:n+3]}.Bounds()
				assert.Greater(t, b.Min.X, right, "%s stands clear of what is to its left", part)
				right = b.Max.X
				all = all[n+3:]
			}
			assert.Empty(t, all)
		})
	}
}

func TestDrawingIsTheSameEveryTime(t *testing.T) {
	p := everything(plan.PartTurntable, plan.Clockwise)
	want := AllParts(plate.New(p), info)
	for range 5 {
		require.Equal(t, want, AllParts(plate.New(p.Clone()), info))
	}
}
