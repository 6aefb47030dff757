package dxf

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// fittedPlate is a plate with every fitting, the catches in the part given.
func fittedPlate(t *testing.T, catchIn plan.Part) *plate.Plate {
	t.Helper()
	p := plan.Default()
	p.Arrangement.CatchIn = catchIn
	p.Travel = plan.Span{From: -60, To: 60}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 22.5, BothSides: true}, {Angle: 51}}
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	m := &p.Making
	m.KnockOut, m.Screws = 4, plan.ScrewHoles{Pilot: 2.8, PilotDepth: 12, Head: 9, HeadDepth: 3}
	m.Dust.Width, m.Registration.Diameter, m.Fence.Width, m.WearRing.Width = 6, 6, 6.6, 24
	m.EndStops.Diameter, m.Clamp.Diameter, m.Clamp.Radius = 6, 8, 30
	m.Carrier.Width, m.Carrier.PadThickness = 24, 2
	require.NoError(t, plan.Validate(p))
	return plate.New(p)
}

// seam is how far apart (mm) two pieces of an outline may end in a file: half the
// last digit written, for either, along x and y, and along the arc for its
// angle, whose last digit is at 150 mm two millionths of a micrometre.
const seam = 4e-9

func TestReaderFindsEveryPartWhole(t *testing.T) {
	info := drawing.Info{Words: words.English(), Depths: true}
	for _, catchIn := range []plan.Part{plan.PartTurntable, plan.PartBase} {
		pl := fittedPlate(t, catchIn)
		for _, part := range drawing.AllPartsOf(pl.Plan) {
			s := readBack(t, drawing.PartSheet(pl, part, info))
			assert.Empty(t, s.Errors, part)
			assert.Empty(t, s.Fixes, part)
			table := map[string]bool{}
			for _, l := range s.Layers {
				table[l.Name] = true
			}
			ends := map[string][][2]float64{}
			for _, e := range s.Entities {
				assert.True(t, table[e.Layer], "%s: layer %s stands in the table", part, e.Layer)
				if e.Kind != "LINE" && e.Kind != "ARC" || !drawing.PenOf(drawing.Layer(e.Layer)).Cut {
					continue
				}
				at := e.Points
				if e.Kind == "ARC" {
					at = at[1:]
				}
				ends[e.Layer] = append(ends[e.Layer], at...)
			}
			for layer, all := range ends {
				for i, p := range all {
					nearest := math.Inf(1)
					for k, q := range all {
						if i != k {
							nearest = min(nearest, math.Hypot(p[0]-q[0], p[1]-q[1]))
						}
					}
					assert.LessOrEqual(t, nearest, seam, "%s, %s: an outline is open at %v", part, layer, p)
				}
			}
			if part == pl.SeatsPart {
				assertSeats(t, pl, s)
			}
		}
	}
}

// assertSeats compares the seats that a reader finds with those reckoned.
func assertSeats(t *testing.T, pl *plate.Plate, s seen) {
	t.Helper()
	k := 0
	for _, e := range s.Entities {
		if e.Layer != "SEATS-6_00MM" {
			continue
		}
		at := plate.AtDrill(pl.SeatsPart, pl.Seats[k].Centre)
		assert.InDelta(t, at.X, e.Points[0][0], sameMM)
		assert.InDelta(t, at.Y, e.Points[0][1], sameMM)
		k++
	}
	assert.Len(t, pl.Seats, k)
}

// All parts of the fullest plate lie side by side in one file that nothing is
// wrong with.
func TestReaderFindsAllPartsTogether(t *testing.T) {
	s := readBack(t, drawing.AllParts(fittedPlate(t, plan.PartTurntable), drawing.Info{Words: words.English()}))
	assert.Empty(t, s.Errors)
	assert.Empty(t, s.Fixes)
	names := 0
	for _, e := range s.Entities {
		if strings.Contains(e.Text, ": pivot at ") || strings.Contains(e.Text, ": middle at ") {
			names++
		}
	}
	assert.Equal(t, 6, names, "each part says where its own frame lies")
}
