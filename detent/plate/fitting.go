package plate

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Fitting is a kind of feature that the plan's making adds.
type Fitting string

// The fittings.
const (
	EndStopPin      Fitting = "end-stop-pin"     // in the turntable
	EndStopSlot     Fitting = "end-stop-slot"    // in the base
	ClampBolt       Fitting = "clamp-bolt"       // in the turntable
	ClampSlot       Fitting = "clamp-slot"       // in the base
	DustSlot        Fitting = "dust-slot"        // in the seats' part
	FenceSlot       Fitting = "fence-slot"       // in the base
	RegistrationPin Fitting = "registration-pin" // in turntable, base and collar
	CarrierScrew    Fitting = "carrier-screw"    // in the catches' part
)

// fittings lists what the plan's making adds to the parts, in a fixed order.
func fittings(pl *Plate) []Feature {
	m := pl.Plan.Making
	var out []Feature
	out = append(out, slider(pl, m.EndStops, EndStopPin, EndStopSlot)...)
	out = append(out, slider(pl, m.Clamp, ClampBolt, ClampSlot)...)
	out = append(out, dustSlots(pl)...)
	out = append(out, fenceSlots(m.Fence)...)
	out = append(out, registrationPins(pl.Plan)...)
	return append(out, carrierScrews(pl)...)
}

// roundHole is a fitting that is a hole.
func roundHole(part plan.Part, kind Fitting, index int, at geom.Point, diameter float64) Feature {
	return Feature{
		Part: part, Kind: plan.Hole, Index: index, Fitting: kind,
		Core: geom.Segment{A: at, B: at}, Half: diameter / 2,
	}
}

// fenceSlots lists the slots that a fence is moved along.
func fenceSlots(f plan.FenceSlots) []Feature {
	if f.Width == 0 {
		return nil
	}
	var out []Feature
	for i, x := range [2]float64{-f.Spacing / 2, f.Spacing / 2} {
		out = append(out, Feature{
			Part: plan.PartBase, Kind: plan.Slot, Index: i, Fitting: FenceSlot,
			Core: geom.Segment{A: geom.Point{X: x, Y: f.Y - f.Length/2}, B: geom.Point{X: x, Y: f.Y + f.Length/2}},
			Half: f.Width / 2,
		})
	}
	return out
}

// inWaste is the material (mm) between a part's edge and a registration pin
// outside it: room for a cutter of 6 mm to pass. Common practice, no source.
const inWaste = 8

// registrationPins lists the two pins of each part on its y axis. Where the
// distance asked for is not within the part they stand outside its edge.
func registrationPins(p plan.Plan) []Feature {
	r := p.Making.Registration
	if r.Diameter == 0 {
		return nil
	}
	var out []Feature
	for _, part := range [...]plan.Part{plan.PartTurntable, plan.PartBase, plan.PartCollar} {
		edge := OutlineOf(p, part).Reach(0)
		if edge == 0 {
			continue // no collar
		}
		y := r.Distance
		if y+r.Diameter/2 > edge || y-r.Diameter/2 < BoreOf(p, part)/2 {
			y = edge + inWaste + r.Diameter/2
		}
		for i, at := range [2]geom.Point{{Y: y}, {Y: -y}} {
			out = append(out, roundHole(part, RegistrationPin, i, at, r.Diameter))
		}
	}
	return out
}

// carrierScrews lists the pilot holes for the screws of every catch's carrier,
// either side of it across the radius.
func carrierScrews(pl *Plate) []Feature {
	c := pl.Plan.Making.Carrier
	if c.Width == 0 {
		return nil
	}
	var out []Feature
	for i, k := range pl.Pockets {
		across := geom.Polar(c.Spacing/2, k.Azimuth+90)
		out = append(out,
			roundHole(pl.CatchPart, CarrierScrew, 2*i, k.Centre.Sub(across), c.Pilot),
			roundHole(pl.CatchPart, CarrierScrew, 2*i+1, k.Centre.Add(across), c.Pilot),
		)
	}
	return out
}
