package plate

import (
	"math"

	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// roomTemperature (°C) is taken all year: what moves wood is the moisture, and a
// few degrees change that hardly at all.
const roomTemperature = 20

// Season is what dry and damp air do to a plate.
type Season struct {
	Dry, Wet Air

	// Growth is how much (mm) the turntable's diameter grows from dry to damp,
	// in its direction of largest movement. It is not known where no source
	// gives the material's movement.
	Growth stock.Value

	// HasCollar says that there is a collar and that its movement and the
	// table's are known: clearances mean something.
	HasCollar bool
	Choose    float64 // clearance (mm) to cut, so that the table turns all year
}

// Air is one end of the year.
type Air struct {
	Moisture  float64 // of wood left in it, %
	Clearance float64 // between turntable and collar, mm; 0 or less: it binds
}

// Least returns the smaller of the two clearances.
func (s Season) Least() float64 { return math.Min(s.Dry.Clearance, s.Wet.Clearance) }

// Running clearances. Common practice, no source.
const (
	running     = 0.2 // mm off the diameter that let a table turn freely
	choiceStep  = 0.1 // mm to which a clearance is cut
	tooGenerous = 0.5 // mm more than what is needed that only lets the table wander
)

// Loose reports whether a clearance is needlessly large.
func (s Season) Loose(clearance float64) bool {
	return s.HasCollar && clearance > s.Choose+tooGenerous
}

// NewSeason works out what dry and damp air do to the table and collar of a
// plan. The clearance is as cut at the humidity the plan names. A collar of
// solid wood counts as not moving, since its bore is held along the grain; a
// panel moves over the turntable's diameter like a turntable of it would.
func NewSeason(p plan.Plan) Season {
	air := p.Shop.Humidity
	size := p.Turntable.Diameter
	s := Season{
		Dry: Air{Moisture: stock.EquilibriumMoisture(air.Low, roomTemperature)},
		Wet: Air{Moisture: stock.EquilibriumMoisture(air.High, roomTemperature)},
	}
	table, known := stock.FindMaterial(p.Turntable.Material)
	if known {
		s.Growth = table.Swelling(size, air.Low, air.High, roomTemperature)
	}
	if p.Collar == nil || !s.Growth.Known() {
		return s
	}
	collar, known := stock.FindMaterial(p.Collar.Material)
	closes := func(humidity float64) (float64, bool) {
		t := table.Swelling(size, air.MadeAt, humidity, roomTemperature)
		if collar.Kind == stock.Solid {
			return t.Typical, true
		}
		c := collar.Swelling(size, air.MadeAt, humidity, roomTemperature)
		return t.Typical - c.Typical, c.Known()
	}
	dry, knownDry := closes(air.Low)
	wet, knownWet := closes(air.High)
	if !known || !knownDry || !knownWet {
		return s
	}
	s.HasCollar = true
	s.Dry.Clearance, s.Wet.Clearance = p.Collar.Clearance-dry, p.Collar.Clearance-wet
	s.Choose = math.Ceil((running+max(dry, wet, 0))/choiceStep-1e-9) * choiceStep
	return s
}
