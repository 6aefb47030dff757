package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

func boundsOf(shapes ...Shape) Bounds {
	var d Drawing
	for _, s := range shapes {
		d.Add(Outline, s)
	}
	return d.Bounds()
}

func TestBoundsOfNothing(t *testing.T) {
	b := boundsOf()
	assert.True(t, b.Empty())
	assert.Zero(t, b.Width())
	assert.Zero(t, b.Height())
	b.Add(geom.Point{X: 3, Y: -4})
	assert.False(t, b.Empty(), "a point is something")
	assert.Zero(t, b.Width())
}

func TestBounds(t *testing.T) {
	box := func(x0, y0, x1, y1 float64) Bounds {
		return Bounds{geom.Point{X: x0, Y: y0}, geom.Point{X: x1, Y: y1}}
	}
	for _, c := range []struct {
		shape Shape
		want  Bounds
		why   string
	}{
		{Line{geom.Point{X: 5, Y: -1}, geom.Point{X: -2, Y: 3}}, box(-2, -1, 5, 3), "whichever end comes first"},
		{Circle{geom.Point{X: 1, Y: 2}, 3}, box(-2, -1, 4, 5), ""},
		{Polygon{[]geom.Point{{X: 1}, {Y: 2}, {X: -3, Y: -4}}}, box(-3, -4, 1, 2), ""},
		{Arc{Radius: 10, Start: 0, Sweep: 90}, box(0, 0, 10, 10), "from axis to axis"},
		{Arc{Radius: 10, Start: 90, Sweep: 180}, box(-10, -10, 0, 10), "bulges beyond both ends"},
		{Arc{Radius: 10, Start: 270, Sweep: 180}, box(0, -10, 10, 10), "past a full turn"},
		{Arc{Radius: 10, Start: 30, Sweep: 359}, box(-10, -10, 10, 10), "nearly round"},
		{Arc{Centre: geom.Point{X: 5}, Radius: 2, Start: 240, Sweep: 60}, box(4, -2, 6, -1.7320508075688772), "cos 60 = 1/2, sin 60 = √3/2"},
	} {
		got := boundsOf(c.shape)
		samePlace(t, c.want.Min, got.Min, c.why)
		samePlace(t, c.want.Max, got.Max, c.why)
	}
}

func TestBoundsOfLettering(t *testing.T) {
	const size = 3.5
	w := TextWidth("36", size)
	at := geom.Point{X: 10, Y: 20}
	for _, c := range []struct {
		align          Align
		angle          float64
		x0, y0, x1, y1 float64 // from the place of the text
		why            string
	}{
		{Left, 0, 0, 0, w, size, "stands on its place, to the right"},
		{Right, 0, -w, 0, 0, size, "to the left"},
		{Centre, 0, -w / 2, -size / 2, w / 2, size / 2, ""},
		{Top, 0, -w / 2, -size, w / 2, 0, "hangs from its place"},
		{Bottom, 0, -w / 2, 0, w / 2, size, ""},
		{Left, 90, -size, 0, 0, w, "reads upwards, its capitals to the left"},
		{Left, -90, 0, -w, size, 0, "reads downwards"},
		{Top, 180, -w / 2, 0, w / 2, size, "upside down, so it stands"},
	} {
		b := boundsOf(Text{At: at, Size: size, Angle: c.angle, Align: c.align, Text: "36"})
		samePlace(t, at.Add(geom.Point{X: c.x0, Y: c.y0}), b.Min, c.why)
		samePlace(t, at.Add(geom.Point{X: c.x1, Y: c.y1}), b.Max, c.why)
	}
}

// steps at which an arc is sampled; between two of them it leaves the chord by
// at most R(1 - cos(180°/steps)) when it goes all the way round.
const steps = 720

func TestBoundsOfAnArcFitIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := anyArc(t)
		b, sampled := boundsOf(a), NoBounds()
		for i := range steps + 1 {
			sampled.Add(a.at(a.Start + a.Sweep*float64(i)/steps))
		}
		_, cos := (geom.FullTurn / steps / 2).SinCos()
		loose := a.Radius*(1-cos) + planeSlack
		for _, gap := range []float64{
			sampled.Min.X - b.Min.X, sampled.Min.Y - b.Min.Y,
			b.Max.X - sampled.Max.X, b.Max.Y - sampled.Max.Y,
		} {
			require.GreaterOrEqual(t, gap, -planeSlack, "no point of the arc is outside")
			require.LessOrEqual(t, gap, loose, "and it touches every side")
		}
	})
}

func TestBoundsFollowATransform(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tr := anyTransform(t)
		for _, s := range []Shape{
			anyArc(t),
			Line{anyPoint(t, "a"), anyPoint(t, "b")},
			Circle{anyPoint(t, "c"), rapid.Float64Range(0.1, 100).Draw(t, "r")},
			Polygon{[]geom.Point{anyPoint(t, "p"), anyPoint(t, "q"), anyPoint(t, "s")}},
		} {
			var plain, placed Drawing
			plain.Add(Outline, s)
			placed.Place(plain, tr)
			want := NoBounds()
			want.Add(tr.Point(plain.Bounds().Min))
			want.Add(tr.Point(plain.Bounds().Max))
			got := placed.Bounds()
			require.InDelta(t, 0, want.Min.Distance(got.Min), farSlack, "%T", s)
			require.InDelta(t, 0, want.Max.Distance(got.Max), farSlack, "%T", s)
		}
	})
}
