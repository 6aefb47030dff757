package stock

import (
	"slices"
	"strings"
)

// Kind is what a material is, as far as its movement goes.
type Kind int

// The kinds of material.
const (
	Solid Kind = iota + 1 // wood as grown: moves across the grain, not along
	Panel                 // plywood and boards: move little, alike both ways
	Other                 // metal and plastics
)

// Material is what a part can be made of. Values of wood are at 12 % moisture
// content. The hardness of metals and plastics is the mean pressure under the
// ball of their own test on the 100 mm² of the test for wood: an estimate, fit
// to compare dents and nothing else.
type Material struct {
	ID          string // as plans write it: birch-plywood
	Kind        Kind
	Gravity     Value // specific gravity
	Compression Value // across the grain, at the proportional limit, kPa
	Hardness    Value // side (Janka) hardness, N
	Radial      Value // growth per per cent of moisture content, as a share of the size
	Tangential  Value // the same along the growth rings
	PerHumidity Value // growth in the plane per per cent of relative humidity, as a share
	PerKelvin   Value // growth with warmth, millionths per kelvin
}

// aliases are other names that plans may give a material.
var aliases = map[string]string{
	"aluminum":           "aluminium",
	"american-beech":     "beech",
	"chipboard":          "particleboard",
	"film-faced-plywood": "phenolic-plywood",
	"hard-maple":         "sugar-maple",
	"northern-red-oak":   "red-oak",
	"pmma":               "acrylic",
	"pom":                "acetal",
	"steel":              "mild-steel",
}

// Materials returns all materials: solid woods, panels, others, in a fixed
// order.
func Materials() []Material { return slices.Concat(woods, panels, others) }

// FindMaterial returns the material of a name as plans write it. Capitals,
// spaces for hyphens, and some other names (aluminum) are understood. It is
// false for a material of which nothing is known.
func FindMaterial(name string) (Material, bool) {
	id := strings.Join(strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return r == ' ' || r == '-' || r == '_'
	}), "-")
	if other, ok := aliases[id]; ok {
		id = other
	}
	for _, list := range [][]Material{woods, panels, others} {
		for _, m := range list {
			if m.ID == id {
				return m, true
			}
		}
	}
	return Material{}, false
}

// WordKey is the key of the material's name in the catalogue of words.
func (m Material) WordKey() string { return "material." + m.ID }
