package plate_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
)

// matrix turns points about the pivot.
type matrix [2][2]float64

// turned returns the matrix of the table turned by an angle in a sense, seen
// from above: the matrix of the textbooks turns counterclockwise.
func turned(angle float64, sense plan.Sense) matrix {
	if sense == plan.Clockwise {
		angle = -angle
	}
	s, c := math.Sincos(angle * math.Pi / 180)
	return matrix{{c, -s}, {s, c}}
}

func (m matrix) times(p geom.Point) geom.Point {
	return geom.Point{X: m[0][0]*p.X + m[0][1]*p.Y, Y: m[1][0]*p.X + m[1][1]*p.Y}
}

// inverse of a turn is its transpose.
func (m matrix) inverse() matrix { return matrix{{m[0][0], m[1][0]}, {m[0][1], m[1][1]}} }

// inSeatsPart follows a ball through a turn of the table, and says where it is
// in the part that holds the seats, in that part's own frame.
func inSeatsPart(ball geom.Point, a plan.Arrangement, turn float64) geom.Point {
	m := turned(turn, a.PositiveTurn)
	if a.CatchIn == plan.PartTurntable {
		return m.times(ball) // the ball goes round with the table; the base stays
	}
	return m.inverse().times(ball) // the ball stays; the table's own frame goes round
}

// lopsided is a plan without any symmetry that could hide a wrong sign.
func lopsided(a plan.Arrangement) plan.Plan {
	p := plan.Default()
	p.Arrangement = a
	p.Catches = []plan.Placement{
		{Name: "A", Azimuth: 17, Radius: 105},
		{Name: "B", Azimuth: -133.5, Radius: 88.25},
		{Name: "C", Azimuth: 300, Radius: 40},
	}
	p.Travel = plan.Span{From: -25, To: 110}
	p.Stops = []plan.Stop{
		{Angle: 0, Catches: []string{"A", "B"}},
		{Angle: 36, BothSides: true},
		{Angle: 101.25, Catches: []string{"C"}},
		{Angle: -11, Catches: []string{"B", "C"}},
		{Angle: 359, Catches: []string{"A"}},
	}
	return p
}

func TestSeatsAreWhereTheBallRests(t *testing.T) {
	for _, a := range plantest.Arrangements {
		t.Run(nameOf(a), func(t *testing.T) {
			p := lopsided(a)
			pl := plate.New(p)
			require.Len(t, pl.Seats, 8)
			for _, s := range pl.Seats {
				c := p.Catches[s.Catch]
				want := inSeatsPart(place(c.Radius, c.Azimuth), a, s.Angle.Degrees())
				assert.InDelta(t, 0, apart(want, s.Centre), same, "%s at %v", s.Tag, s.Angle)
				assert.InDelta(t, 0, apart(want, geom.Polar(s.Radius, s.Azimuth)), same, "%s by azimuth", s.Tag)
				assert.Less(t, geom.Angle(-180), s.Azimuth)
				assert.LessOrEqual(t, s.Azimuth, geom.Angle(180))
			}
			assert.Equal(t, a.CatchIn, pl.CatchPart)
			assert.NotEqual(t, pl.CatchPart, pl.SeatsPart)
		})
	}
}

func TestTracksAreWhereTheBallRuns(t *testing.T) {
	for _, a := range plantest.Arrangements {
		t.Run(nameOf(a), func(t *testing.T) {
			p := lopsided(a)
			pl := plate.New(p)
			require.Len(t, pl.Tracks, 3)
			for _, track := range pl.Tracks {
				c := p.Catches[track.Catch]
				assert.Equal(t, c.Name, track.Name)
				at := func(turn float64) geom.Point {
					return inSeatsPart(place(c.Radius, c.Azimuth), a, turn)
				}
				for turn := p.Travel.From; turn <= p.Travel.To; turn += 0.5 {
					assert.InDelta(t, 0, track.Path.DistanceToPoint(at(turn)), same, "turned %v", turn)
				}
				// A tenth of a degree past either end is that much of an arc away.
				past := 0.1 * math.Pi / 180 * c.Radius
				for _, turn := range []float64{p.Travel.From - 0.1, p.Travel.To + 0.1} {
					assert.InDelta(t, past, track.Path.DistanceToPoint(at(turn)), past/1000, "turned %v", turn)
				}
			}
		})
	}
}

func TestDrillView(t *testing.T) {
	// Turning a part over about its y axis takes (x, y, z) to (-x, y, -z).
	p := geom.Point{X: 3, Y: 4}
	assert.Equal(t, geom.Point{X: -3, Y: 4}, plate.AtDrill(plan.PartTurntable, p), "lies underside up")
	assert.Equal(t, p, plate.AtDrill(plan.PartBase, p), "lies top up")
	assert.Equal(t, p, plate.AtDrill(plan.PartCollar, p), "lies top up")
	assert.Equal(t, plate.Underside, plate.FaceOf(plan.PartTurntable))
	assert.Equal(t, plate.Top, plate.FaceOf(plan.PartBase))
	assert.Equal(t, plate.Top, plate.FaceOf(plan.PartCollar))
}

// handbook is half a unit of the last of seven printed decimals.
const handbook = 0.5e-7

// Machinery's Handbook hole-circle constants, from memory; exact mathematics:
// x and y of each hole over the radius, anticlockwise from +x.
var holeCircles = map[int][]geom.Point{
	5: {
		{X: 1, Y: 0},
		{X: 0.3090170, Y: 0.9510565},
		{X: -0.8090170, Y: 0.5877853},
		{X: -0.8090170, Y: -0.5877853},
		{X: 0.3090170, Y: -0.9510565},
	},
	7: {
		{X: 1, Y: 0},
		{X: 0.6234898, Y: 0.7818315},
		{X: -0.2225209, Y: 0.9749279},
		{X: -0.9009689, Y: 0.4338837},
		{X: -0.9009689, Y: -0.4338837},
		{X: -0.2225209, Y: -0.9749279},
		{X: 0.6234898, Y: -0.7818315},
	},
}

func TestHoleCircles(t *testing.T) {
	const radius = 60
	for n, holes := range holeCircles {
		p := plan.Default()
		p.Arrangement.PositiveTurn = plan.Counterclockwise                     // anticlockwise as the handbook
		p.Catches = []plan.Placement{{Name: "A", Azimuth: 90, Radius: radius}} // the first hole on +x
		for k := range n {
			p.Stops = append(p.Stops, plan.Stop{Angle: 360 * float64(k) / float64(n)})
		}
		pl := plate.New(p)
		require.Len(t, pl.Seats, n)
		for k, s := range pl.Seats {
			assert.InDelta(t, radius*holes[k].X, s.Centre.X, radius*handbook, "%d of %d", k, n)
			assert.InDelta(t, radius*holes[k].Y, s.Centre.Y, radius*handbook, "%d of %d", k, n)
		}
		assert.Equal(t, geom.Point{X: radius}, pl.Seats[0].Centre, "on the axis to the last bit")
	}
}
