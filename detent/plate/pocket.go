package plate

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Pocket is the stepped hole that one catch is fitted in, bored from the face
// that meets the seats.
type Pocket struct {
	Catch     int // into the plan's catches
	Name      string
	Azimuth   geom.Angle
	Radius    float64
	Centre    geom.Point
	Body      float64 // bore diameter: the body's and its allowance
	BodyDepth float64 // from the face to the floor of the bore
	Rim       float64 // recess diameter for the flange; 0: none
	RimDepth  float64 // the flange's thickness and its allowance
	KnockOut  float64 // diameter of the hole on through its floor; 0: none
}

// Widest returns the larger of the pocket's two diameters, mm.
func (p Pocket) Widest() float64 { return max(p.Body, p.Rim) }

// pockets places the pocket of every catch.
func pockets(p plan.Plan) []Pocket {
	out := make([]Pocket, len(p.Catches))
	c := p.Catch
	for i, at := range p.Catches {
		az := geom.Angle(at.Azimuth).Wrap()
		k := Pocket{
			Catch: i, Name: at.Name, Azimuth: az, Radius: at.Radius, Centre: geom.Polar(at.Radius, az),
			Body: c.BodyDiameter + c.BodyAllowance, BodyDepth: c.BodyLength,
			KnockOut: p.Making.KnockOut,
		}
		// A flange that the allowance lifts off the face needs no recess.
		if depth := c.FlangeThickness + c.RecessAllowance; c.FlangeDiameter > 0 && depth > 0 {
			k.Rim, k.RimDepth = c.FlangeDiameter, depth
			k.BodyDepth += c.RecessAllowance // the whole catch sits that much deeper
		}
		out[i] = k
	}
	return out
}

// PocketRoom returns how deep (mm) a pocket can be: the part that holds the
// catches, with pad and carrier behind it.
func PocketRoom(p plan.Plan) float64 {
	return ThicknessOf(p, p.Arrangement.CatchIn) + ThicknessOf(p, plan.PartPad) + ThicknessOf(p, plan.PartCarrier)
}

// Track is the path of one catch's ball over the face that holds the seats, as
// the table turns through its travel.
type Track struct {
	Catch int // into the plan's catches
	Name  string
	Path  geom.Arc
}

// tracks returns the track of every catch: from the catch's azimuth, by the one
// sign times the travel.
func tracks(p plan.Plan, sign geom.Angle) []Track {
	out := make([]Track, len(p.Catches))
	for i, c := range p.Catches {
		az := geom.Angle(c.Azimuth)
		out[i] = Track{i, c.Name, geom.ArcBetween(c.Radius,
			az+sign*geom.Angle(p.Travel.From), az+sign*geom.Angle(p.Travel.To))}
	}
	return out
}
