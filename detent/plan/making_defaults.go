package plan

// defaultMaking returns a plate without fittings, and the sizes each fitting
// begins with. Values are common practice, no source, unless the line says
// otherwise.
func defaultMaking() Making {
	return Making{
		ClearanceFrom: FromCollar, // the turntable keeps the size it is called by
		Screws:        ScrewHoles{HeadDepth: 3},
		Dust:          DustSlots{Side: Inside, Bridge: 20},
		// Opposite the first catch; the pin ends the travel a degree past the
		// last stop, so that the ball and not the pin decides where it rests.
		EndStops: Slider{Azimuth: 180, Play: 0.5, Beyond: 1},
		// The clamp's slot must never be what ends the travel.
		Clamp:        Slider{Azimuth: 90, Play: 1, Beyond: 3},
		Fence:        FenceSlots{Length: 60, Spacing: 200, Y: 110},
		Registration: Registration{},
		WearRing:     WearRing{Thickness: 1.5, Material: "aluminium"},
		Carrier: Carrier{
			Length: 50, Thickness: 12, Screw: 4.5, Pilot: 3, Spacing: 34, // #8 wood screws
			Material: "birch-plywood",
		},
	}
}

// TableDiameter returns the diameter (mm) the turntable is cut to: its own, less
// what of the collar's clearance is cut from it.
func (p Plan) TableDiameter() float64 { return p.Turntable.Diameter - p.ofClearance(FromTurntable) }

// CollarBore returns the diameter (mm) of the collar's bore; 0 without a collar.
func (p Plan) CollarBore() float64 {
	if p.Collar == nil {
		return 0
	}
	return p.Turntable.Diameter + p.ofClearance(FromCollar)
}

// ofClearance returns how much of the clearance is cut from a part.
func (p Plan) ofClearance(part ClearanceFrom) float64 {
	switch {
	case p.Collar == nil:
		return 0
	case p.Making.ClearanceFrom == part:
		return p.Collar.Clearance
	case p.Making.ClearanceFrom == FromBoth:
		return p.Collar.Clearance / 2
	}
	return 0
}
