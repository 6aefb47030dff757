package stock

import "slices"

// Surface is the state of two surfaces that rub.
type Surface int

// The states of surfaces.
const (
	Dry Surface = iota + 1
	Waxed
	Oiled
	Wet // with water
)

// String returns the state in lower case.
func (s Surface) String() string {
	switch s {
	case Dry:
		return "dry"
	case Waxed:
		return "waxed"
	case Oiled:
		return "oiled"
	case Wet:
		return "wet"
	}
	return "unknown"
}

// Friction is the friction of two materials on each other. Take it as a range:
// finish, speed and dust change it by half either way.
type Friction struct {
	A, B    string // wood, steel, hard-steel, mild-steel, metal, hard-surface, hdpe, polyethylene
	Surface Surface
	Static  Value // to start
	Sliding Value // to keep moving
}

var (
	woodOnSteel  = Evidence{"Wood Science and Technology 2 (1968), doi:10.1007/bf00394962, abstract", Seen}
	handbookWood = Evidence{"USDA Wood Handbook FPL-GTR-190 chapter 5", Memory}
	engineers    = Evidence{"Marks' Standard Handbook for Mechanical Engineers", Memory}
	rubEstimate  = Evidence{"common practice, estimate without a source", CommonPractice}
)

// frictions lists pairs that meet on a plate: table on base, ball on face.
// Sliding of wood on steel was measured at 4 m/s. No handbook was found for
// waxed wood or for HDPE on wood.
var frictions = []Friction{
	{"wood", "wood", Dry, between(0.54, 0.62, engineers), between(0.32, 0.48, engineers)},
	{"wood", "wood", Waxed, between(0.15, 0.35, rubEstimate), between(0.10, 0.30, rubEstimate)},
	{"wood", "hard-surface", Dry, Value{}, between(0.3, 0.5, handbookWood)},
	{"wood", "steel", Dry, figure(0.65, woodOnSteel), figure(0.4, woodOnSteel)},
	{"wood", "steel", Wet, figure(0.7, woodOnSteel), figure(0.15, woodOnSteel)},
	{"wood", "metal", Dry, between(0.50, 0.65, generalTable), between(0.20, 0.50, generalTable)},
	{"wood", "metal", Waxed, between(0.10, 0.25, rubEstimate), between(0.05, 0.20, rubEstimate)},
	{"wood", "metal", Oiled, figure(0.10, generalTable), between(0.02, 0.10, generalTable)},
	{"wood", "hdpe", Dry, between(0.15, 0.35, rubEstimate), between(0.10, 0.30, rubEstimate)},
	{"polyethylene", "steel", Dry, figure(0.20, generalTable), Value{}},
	{"hard-steel", "hard-steel", Dry, figure(0.78, engineers), figure(0.42, engineers)},
	{"mild-steel", "mild-steel", Dry, figure(0.74, engineers), figure(0.57, engineers)},
	{"steel", "steel", Oiled, figure(0.10, generalTable), figure(0.10, generalTable)},
}

// Frictions returns the pairs in a fixed order.
func Frictions() []Friction { return slices.Clone(frictions) }
