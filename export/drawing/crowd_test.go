package drawing

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"stopwright/detent/geom"
)

// A hole ten metres wide is kept in one place, not in millions of squares, and
// nothing is written into it all the same.
func TestWhatIsWideTakesNoMoreMemoryThanWhatIsSmall(t *testing.T) {
	c := Crowd{}
	c.AddHole(geom.Point{}, 5000)
	c.AddBox(Bounds{Min: geom.Point{X: 6000, Y: -5000}, Max: geom.Point{X: 7000, Y: 5000}})
	assert.Len(t, c, 1)
	letter := func(x float64) Bounds { return Bounds{Min: geom.Point{X: x}, Max: geom.Point{X: x + 2, Y: 2}} }
	assert.False(t, c.Room(letter(4000)), "in the hole")
	assert.False(t, c.Room(letter(6500)), "in the box")
	assert.True(t, c.Room(letter(5500)), "between them")
}

// However things are kept, there is room where they are all clear.
func TestRoomIsWhereEverythingIsClear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-50, 50)
		size := rapid.SampledFrom([]float64{0.5, 3, 12, 200, 900})
		c := Crowd{}
		var all []taken
		box := func() Bounds {
			min := geom.Point{X: at.Draw(t, "x"), Y: at.Draw(t, "y")}
			return Bounds{Min: min, Max: min.Add(geom.Point{X: size.Draw(t, "width"), Y: size.Draw(t, "height")})}
		}
		for range rapid.IntRange(0, 8).Draw(t, "things") {
			k := taken{box: box()}
			if rapid.Bool().Draw(t, "a hole") {
				k.radius = size.Draw(t, "radius")
				r := geom.Point{X: k.radius, Y: k.radius}
				k.box = Bounds{Min: k.box.Min.Sub(r), Max: k.box.Min.Add(r)}
			}
			c.add(k)
			all = append(all, k)
		}
		want, probe := true, box()
		for _, k := range all {
			want = want && k.clear(probe)
		}
		assert.Equal(t, want, c.Room(probe))
	})
}

// A place that is given up is free again, and only that.
func TestAPlaceCanBeGivenUp(t *testing.T) {
	for _, side := range []float64{2, 5000} { // kept by its squares, and not
		box := func(x float64) Bounds { return Bounds{Min: geom.Point{X: x}, Max: geom.Point{X: x + side, Y: side}} }
		c := Crowd{}
		c.AddBox(box(0))
		c.AddBox(box(2 * side))
		c.RemoveBox(box(0))
		assert.True(t, c.Room(box(0)))
		assert.False(t, c.Room(box(2*side)))
	}
}
