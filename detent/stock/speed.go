package stock

import "math"

// Speed is how fast a drill may turn: guidance, behind what its maker says.
type Speed struct {
	RPM float64 // at most, to the nearest 50
	Evidence
}

// cuttingSpeeds are speeds of a drill's rim in metres a minute, for drills of
// high-speed steel, by material; of solid woods and panels there is one for each
// kind.
var (
	cuttingSpeeds = map[string]float64{
		"aluminium": 60, "mild-steel": 25, "acrylic": 30, "acetal": 60, "hdpe": 60,
	}
	kindSpeeds = map[Kind]float64{Solid: 60, Panel: 60, Other: 25}
)

// mostRPM is what a pillar drill is run at in wood: common practice, no source.
const mostRPM = 3000

// rpmStep is how finely guidance is given.
const rpmStep = 50

// speedPractice is where the figures come from.
var speedPractice = Evidence{"common practice, no source: the tool maker's figures come first", CommonPractice}

// DrillSpeed returns how fast a drill or cutter of a diameter (mm, above 0) may
// turn in a material as plans write it, by its rim's speed: v/(πd). An unknown
// material is taken for the slowest of its like, a metal.
func DrillSpeed(mm float64, material string) Speed {
	kind := Other
	m, known := FindMaterial(material)
	if known {
		kind = m.Kind
	}
	v := kindSpeeds[kind]
	if own, listed := cuttingSpeeds[m.ID]; listed {
		v = own
	}
	rpm := math.Min(mostRPM, v*1000/(math.Pi*mm))
	return Speed{math.Max(rpmStep, math.Round(rpm/rpmStep)*rpmStep), speedPractice}
}
