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

// Tight reports whether the table turns all year, but with less clearance than it
// turns freely with.
func (s Season) Tight() bool { return s.HasCollar && s.Least() > 0 && s.Least() < running }

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
	if table, known := stock.FindMaterial(p.Turntable.Material); known {
		s.Growth = table.Swelling(size, air.Low, air.High, roomTemperature)
	}
	dry, knownDry := ClearanceAt(p, air.Low)
	wet, knownWet := ClearanceAt(p, air.High)
	if !knownDry || !knownWet {
		return s
	}
	s.HasCollar = true
	s.Dry.Clearance, s.Wet.Clearance = dry, wet
	closes := max(0, p.Collar.Clearance-s.Least())
	s.Choose = math.Ceil((running+closes)/choiceStep-1e-9) * choiceStep
	return s
}

// ClearanceAt returns how much (mm) the turntable is smaller than its collar, 0
// or less where it binds, once both have stood in air of a humidity (per cent).
// It is false without a collar, and where no source gives the movement of either
// material.
func ClearanceAt(p plan.Plan, humidity float64) (float64, bool) {
	if p.Collar == nil {
		return 0, false
	}
	table, knownTable := stock.FindMaterial(p.Turntable.Material)
	collar, knownCollar := stock.FindMaterial(p.Collar.Material)
	if !knownTable || !knownCollar {
		return 0, false
	}
	size, made := p.Turntable.Diameter, p.Shop.Humidity.MadeAt
	t := table.Swelling(size, made, humidity, roomTemperature)
	if collar.Kind == stock.Solid {
		return p.Collar.Clearance - t.Typical, t.Known()
	}
	c := collar.Swelling(size, made, humidity, roomTemperature)
	return p.Collar.Clearance - t.Typical + c.Typical, t.Known() && c.Known()
}
