package plan

// visitMaking visits what the parts have besides the plate. Each group is left
// out of a file while it is as [Default] has it.
func visitMaking(v visitor, m *Making) {
	usual := defaultMaking()
	choice(v, at("clearance_from"), &m.ClearanceFrom, clearanceParts)
	v.number(at("knock_out"), &m.KnockOut, hardwareOrZero)
	usualGroup(v, at("pivot"), &m.Pivot, usual.Pivot, visitPivotFit)
	usualGroup(v, at("screws"), &m.Screws, usual.Screws, visitScrewHoles)
	usualGroup(v, at("dust"), &m.Dust, usual.Dust, visitDustSlots)
	usualGroup(v, at("end_stops"), &m.EndStops, usual.EndStops, visitSlider)
	usualGroup(v, at("clamp"), &m.Clamp, usual.Clamp, visitSlider)
	usualGroup(v, at("fence"), &m.Fence, usual.Fence, visitFenceSlots)
	usualGroup(v, at("registration"), &m.Registration, usual.Registration, visitRegistration)
	usualGroup(v, at("wear_ring"), &m.WearRing, usual.WearRing, visitWearRing)
	usualGroup(v, at("carrier"), &m.Carrier, usual.Carrier, visitCarrier)
}

func visitPivotFit(v visitor, f *PivotFit) {
	v.number(at("turntable"), &f.Turntable, allowances)
	v.number(at("base"), &f.Base, allowances)
}

func visitScrewHoles(v visitor, s *ScrewHoles) {
	v.text(at("size"), &s.Size, wording{})
	v.number(at("pilot"), &s.Pilot, hardwareOrZero)
	v.number(at("pilot_depth"), &s.PilotDepth, depths)
	v.number(at("head"), &s.Head, hardwareOrZero)
	v.number(at("head_depth"), &s.HeadDepth, hardware)
}

func visitDustSlots(v visitor, d *DustSlots) {
	v.number(at("width"), &d.Width, hardwareOrZero)
	choice(v, at("side"), &d.Side, sides)
	v.number(at("bridge"), &d.Bridge, bridges)
}

func visitSlider(v visitor, s *Slider) {
	v.number(at("diameter"), &s.Diameter, hardwareOrZero)
	v.number(at("radius"), &s.Radius, sizesOrZero)
	v.number(at("azimuth"), &s.Azimuth, turns)
	v.number(at("play"), &s.Play, plays)
	v.number(at("beyond"), &s.Beyond, overruns)
}

func visitFenceSlots(v visitor, f *FenceSlots) {
	v.number(at("width"), &f.Width, hardwareOrZero)
	v.number(at("length"), &f.Length, sizes)
	v.number(at("spacing"), &f.Spacing, sizes)
	v.number(at("y"), &f.Y, positions)
}

func visitRegistration(v visitor, r *Registration) {
	v.number(at("diameter"), &r.Diameter, hardwareOrZero)
	v.number(at("distance"), &r.Distance, sizesOrZero)
}

func visitWearRing(v visitor, r *WearRing) {
	v.number(at("width"), &r.Width, sizesOrZero)
	v.number(at("thickness"), &r.Thickness, hardware)
	v.text(at("material"), &r.Material, wording{})
}

func visitCarrier(v visitor, c *Carrier) {
	v.number(at("width"), &c.Width, sizesOrZero)
	v.number(at("length"), &c.Length, sizes)
	v.number(at("thickness"), &c.Thickness, hardware)
	v.number(at("pad_thickness"), &c.PadThickness, hardwareOrZero)
	v.number(at("screw"), &c.Screw, hardware)
	v.number(at("pilot"), &c.Pilot, hardware)
	v.number(at("spacing"), &c.Spacing, sizes)
	v.text(at("material"), &c.Material, wording{})
}
