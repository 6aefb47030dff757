package drawing

import "stopwright/detent/geom"

// Entity is one shape on one layer. Item says what it stands for, so that a
// view can mark it.
type Entity struct {
	Layer Layer
	Shape Shape
	Item  Item
}

// Item identifies what an entity is the drawing of. The zero Item is nothing
// in particular.
type Item struct {
	Kind  ItemKind
	Index int // into the plate's seats, pockets or features
}

// ItemKind says which list an [Item] counts in.
type ItemKind int

// The kinds of item.
const (
	NoItem ItemKind = iota
	SeatItem
	PocketItem
	FeatureItem
	BallItem // counts in the plan's catches
)

// Drawing is a list of entities in one frame, mm, in drawing order.
type Drawing struct{ Entities []Entity }

// Add appends a shape that stands for nothing in particular.
func (d *Drawing) Add(l Layer, s Shape) { d.AddItem(l, s, Item{}) }

// AddItem appends a shape that stands for item.
func (d *Drawing) AddItem(l Layer, s Shape, item Item) {
	d.Entities = append(d.Entities, Entity{l, s, item})
}

// Place appends every entity of other, transformed.
func (d *Drawing) Place(other Drawing, t Transform) {
	for _, e := range other.Entities {
		e.Shape = e.Shape.transform(t)
		d.Entities = append(d.Entities, e)
	}
}

// Bounds returns the extent of everything drawn.
func (d Drawing) Bounds() Bounds {
	b := NoBounds()
	for _, e := range d.Entities {
		e.Shape.bounds(&b)
	}
	return b
}

// Page is one printed sheet: a drawing whose origin is the lower left corner
// of the paper and whose millimetres are millimetres of paper, unless it is
// stretched.
type Page struct {
	Width, Height float64
	Stretch       Stretch
	Drawing
}

// Stretch makes up for a printer that is not true: what is drawn at x, y is
// printed at x times X, y times Y. The zero Stretch leaves all as it is.
type Stretch struct{ X, Y float64 }

// None reports whether nothing is stretched.
func (s Stretch) None() bool { return s == Stretch{} || s == Stretch{1, 1} }

// Rect appends the four sides of an upright rectangle.
func (d *Drawing) Rect(l Layer, lo, hi geom.Point) {
	a, b := geom.Point{X: hi.X, Y: lo.Y}, geom.Point{X: lo.X, Y: hi.Y}
	for _, s := range [4]Line{{lo, a}, {a, hi}, {hi, b}, {b, lo}} {
		d.Add(l, s)
	}
}
