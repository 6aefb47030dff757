package plan

// Default returns a plan with every key at the value it has when a file leaves
// it out. It is valid. The sections a file must give (arrangement, turntable,
// base, catch, catches and seat) are filled with one plate that works, so that
// the keys inside them have defaults too; stops and features are empty.
//
// Values are common practice, no source, unless the line says otherwise.
func Default() Plan {
	return Plan{
		Scale: 1, // the plate itself, and no trial of it
		Arrangement: Arrangement{
			CatchIn:      PartTurntable, // the base is the easier part to drill
			PositiveTurn: Clockwise,     // as azimuths grow
		},
		Turntable: Turntable{
			Diameter:      260,
			Thickness:     18,
			Material:      "birch-plywood",
			PivotBore:     8, // for an M8 bolt
			GuidedBy:      GuidePivot,
			RadialPlay:    0.05, // a bolt in a reamed bore or bush
			BearingRadius: 0,    // two thirds of the turntable's own: the mean of an even pressure
		},
		Base: Base{
			Shape:     Rectangle,
			Width:     340,
			Depth:     320,
			Diameter:  340, // where the shape is a disc
			Thickness: 18,
			Material:  "birch-plywood",
		},
		Collar:  nil, // the pivot guides the table
		FaceGap: 0.2, // a washer or a coat of wax between the faces
		Catch: Catch{ // a press-in ball catch for a 6 mm ball
			BallDiameter:    6,
			Protrusion:      2,
			FreeForce:       8,
			FlushForce:      20,
			BodyDiameter:    8,
			BodyLength:      13,
			FlangeDiameter:  9.5,
			FlangeThickness: 1,
			BodyAllowance:   0.1, // a push fit in wood
			RecessAllowance: 0.5, // the flange sits below the face
		},
		// The keys of a catch: azimuth 0; name and radius must be given.
		Catches: []Placement{{Name: "A", Azimuth: 0, Radius: 105}},
		Seat: Seat{
			Form:             Drilled,
			Diameter:         4.5,
			Depth:            6,
			DrillPoint:       118, // a common twist drill
			CountersinkAngle: 90,  // a metric countersink
			ReliefDiameter:   0,   // none
			Chamfer:          0,   // the rim is left sharp
		},
		Travel: Span{From: -360, To: 360}, // no end stops: every accepted angle is inside
		// The keys of a stop: both_sides false, label empty, catches none (the
		// plan's first catch); angle must be given.
		Stops: nil,
		// The keys of a feature: label empty; all others of its kind must be given.
		Features: nil,
		Rules: Rules{
			Web:  2,
			Edge: 4,
		},
		Making: defaultMaking(),
		Shop: Shop{
			Method:        MethodPillarDrill,
			SeatError:     0.5, // spotted by hand to a marked cross
			CatchError:    0.5,
			Friction:      0.2, // a waxed or lightly greased ball track
			TableFriction: 0.2,
			Load:          6,
			StockWidth:    60,
			Target:        0.1,
			Reference:     nil, // zeroed at the stop nearest 0
			Humidity:      Humidity{MadeAt: 50, Low: 35, High: 70},
		},
		Router:        nil, // as DefaultRouter
		Tool:          nil, // not given; the keys of a given one: see NewTool
		Readings:      nil, // the keys of a reading: approach, method and date empty
		ReadingsSince: "",  // all count
		Ticks:         nil,
		AsDrilled:     nil, // the keys of one: catch empty (the plan's first catch)
	}
}

// defaultCollar returns the collar of a file that has the section but leaves
// out its keys. A collar whose screws section is left out has none (count 0);
// the keys of a given screws section have the values here.
func defaultCollar() Collar {
	return Collar{
		Clearance:       0.5,
		OutsideDiameter: 310,
		Thickness:       18,
		Material:        "birch-plywood",
		Screws: Screws{
			Count:    8,
			Circle:   285, // midway between the bore and the outside
			Diameter: 4.5, // clears a 4 mm wood screw
			Start:    22.5,
		},
	}
}
