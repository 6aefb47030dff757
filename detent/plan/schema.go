package plan

// document is a whole plan file: the plan and the two keys that say what the
// file is.
type document struct {
	format  string
	version int
	Plan
}

func newDocument(p Plan) document {
	return document{format: formatName, version: Version, Plan: p}
}

// visit takes v through every key of a plan file, in the order a file has them.
// This is the only place that lists them: reading, writing, checking and the
// reference all come here, so they cannot drift apart.
func visit(v visitor, d *document) {
	v.text(at("format").needed(), &d.format, wording{words: []string{formatName}})
	v.count(at("version").needed(), &d.version, versions)
	v.text(at("title"), &d.Title, wording{})
	v.text(at("notes"), &d.Notes, wording{})
	v.number(at("scale").unless(1), &d.Scale, scales)
	group(v, at("arrangement").needed(), &d.Arrangement, visitArrangement)
	group(v, at("turntable").needed(), &d.Turntable, visitTurntable)
	group(v, at("base").needed(), &d.Base, visitBase)
	section(v, at("collar"), &d.Collar, defaultCollar, visitCollar)
	v.number(at("face_gap"), &d.FaceGap, allowances)
	group(v, at("catch").needed(), &d.Catch, visitCatch)
	list(v, at("catches").needed(), &d.Catches, limits{lo: 1, hi: MaxCatches, unit: "catches"}, visitPlacement)
	group(v, at("seat").needed(), &d.Seat, visitSeat)
	group(v, at("travel"), &d.Travel, visitSpan)
	list(v, at("stops").needed(), &d.Stops, limits{hi: MaxSeats, unit: "stops"}, visitStop)
	list(v, at("features"), &d.Features, limits{hi: MaxFeatures, unit: "features"}, visitFeature)
	group(v, at("rules"), &d.Rules, visitRules)
	usualGroup(v, at("making"), &d.Making, defaultMaking(), visitMaking)
	group(v, at("shop"), &d.Shop, visitShop)
	section(v, at("router"), &d.Router, DefaultRouter, visitRouter)
	section(v, at("tool"), &d.Tool, NewTool, visitTool)
	list(v, at("readings").brief(), &d.Readings, limits{hi: MaxReadings, unit: "readings"}, visitReading)
	v.text(at("readings_since").brief(), &d.ReadingsSince, wording{date: true})
	list(v, at("as_drilled").brief(), &d.AsDrilled, limits{hi: MaxReadings, unit: "seats"}, visitAsDrilled)
	names(v, at("ticks").brief(), &d.Ticks, limits{hi: MaxTicks, unit: "ticks"})
}

func visitArrangement(v visitor, a *Arrangement) {
	choice(v, at("catch_in"), &a.CatchIn, catchParts)
	choice(v, at("positive_turn"), &a.PositiveTurn, senses)
}

func visitTurntable(v visitor, t *Turntable) {
	v.number(at("diameter"), &t.Diameter, sizes)
	v.number(at("thickness"), &t.Thickness, sizes)
	v.text(at("material"), &t.Material, wording{})
	v.number(at("pivot_bore"), &t.PivotBore, sizesOrZero)
	choice(v, at("guided_by"), &t.GuidedBy, guides)
	v.number(at("radial_play"), &t.RadialPlay, errorRadii)
	v.number(at("bearing_radius"), &t.BearingRadius, sizesOrZero)
}

func visitBase(v visitor, b *Base) {
	choice(v, at("shape"), &b.Shape, shapes)
	of := func(name string, owner Shape) key {
		return at(name).of(string(b.Shape), shapes, string(owner))
	}
	v.number(of("width", Rectangle), &b.Width, sizes)
	v.number(of("depth", Rectangle), &b.Depth, sizes)
	v.number(of("diameter", Disc), &b.Diameter, sizes)
	v.number(at("thickness"), &b.Thickness, sizes)
	v.text(at("material"), &b.Material, wording{})
}

func visitCollar(v visitor, c *Collar) {
	v.number(at("clearance"), &c.Clearance, allowances)
	v.number(at("outside_diameter"), &c.OutsideDiameter, sizes)
	v.number(at("thickness"), &c.Thickness, sizes)
	v.text(at("material"), &c.Material, wording{})
	if !group(v, at("screws"), &c.Screws, visitScrews) {
		c.Screws.Count = 0
	}
}

func visitScrews(v visitor, s *Screws) {
	v.count(at("count"), &s.Count, screwCounts)
	v.number(at("circle"), &s.Circle, sizes)
	v.number(at("diameter"), &s.Diameter, hardware)
	v.number(at("start"), &s.Start, turns)
}

func visitCatch(v visitor, c *Catch) {
	v.number(at("ball_diameter"), &c.BallDiameter, hardware)
	v.number(at("protrusion"), &c.Protrusion, hardware)
	v.number(at("free_force"), &c.FreeForce, forces)
	v.number(at("flush_force"), &c.FlushForce, forces)
	v.number(at("body_diameter"), &c.BodyDiameter, hardware)
	v.number(at("body_length"), &c.BodyLength, hardware)
	v.number(at("flange_diameter"), &c.FlangeDiameter, hardwareOrZero)
	v.number(at("flange_thickness"), &c.FlangeThickness, hardware)
	v.number(at("body_allowance"), &c.BodyAllowance, allowances)
	v.number(at("recess_allowance"), &c.RecessAllowance, allowances)
}

func visitPlacement(v visitor, p *Placement) {
	v.text(at("name").needed(), &p.Name, wording{named: true})
	v.number(at("azimuth"), &p.Azimuth, turns)
	v.number(at("radius").needed(), &p.Radius, sizes)
}

func visitSeat(v visitor, s *Seat) {
	choice(v, at("form"), &s.Form, forms)
	v.number(at("diameter"), &s.Diameter, hardware)
	v.number(at("depth"), &s.Depth, depths)
	v.number(at("drill_point"), &s.DrillPoint, drillPoints)
	v.number(at("countersink_angle"), &s.CountersinkAngle, countersinks)
	v.number(at("relief_diameter"), &s.ReliefDiameter, hardwareOrZero)
	v.number(at("chamfer"), &s.Chamfer, chamfers)
}

func visitSpan(v visitor, s *Span) {
	v.number(at("from"), &s.From, turns)
	v.number(at("to"), &s.To, turns)
}

func visitStop(v visitor, s *Stop) {
	v.number(at("angle").needed(), &s.Angle, turns)
	v.flag(at("both_sides").brief(), &s.BothSides)
	v.text(at("label").brief(), &s.Label, wording{})
	names(v, at("catches").brief(), &s.Catches, limits{hi: MaxCatches, unit: "catches"})
}

func visitFeature(v visitor, f *Feature) {
	choice(v, at("part").needed(), &f.Part, parts)
	choice(v, at("kind").needed(), &f.Kind, kinds)
	of := func(name string, owners ...string) key {
		return at(name).needed().of(string(f.Kind), kinds, owners...)
	}
	const hole, slot, arcSlot = string(Hole), string(Slot), string(ArcSlot)
	v.number(of("x", hole, slot), &f.X, positions)
	v.number(of("y", hole, slot), &f.Y, positions)
	v.number(of("x2", slot), &f.X2, positions)
	v.number(of("y2", slot), &f.Y2, positions)
	v.number(of("diameter", hole), &f.Diameter, sizes)
	v.number(of("radius", arcSlot), &f.Radius, sizes)
	v.number(of("from", arcSlot), &f.From, turns)
	v.number(of("to", arcSlot), &f.To, turns)
	v.number(of("width", slot, arcSlot), &f.Width, sizes)
	v.text(at("label").brief(), &f.Label, wording{})
}

func visitRules(v visitor, r *Rules) {
	v.number(at("web"), &r.Web, webs)
	v.number(at("edge"), &r.Edge, webs)
}

func visitShop(v visitor, s *Shop) {
	v.text(at("method"), &s.Method, wording{words: methods})
	v.number(at("seat_error"), &s.SeatError, errorRadii)
	v.number(at("catch_error"), &s.CatchError, errorRadii)
	v.number(at("friction"), &s.Friction, frictions)
	v.number(at("table_friction"), &s.TableFriction, frictions)
	v.number(at("load"), &s.Load, loads)
	v.number(at("stock_width"), &s.StockWidth, sizes)
	v.number(at("target"), &s.Target, targets)
	optional(v, at("reference"), &s.Reference, turns)
	group(v, at("humidity"), &s.Humidity, visitHumidity)
}

func visitHumidity(v visitor, h *Humidity) {
	v.number(at("made_at"), &h.MadeAt, percents)
	v.number(at("low"), &h.Low, percents)
	v.number(at("high"), &h.High, percents)
}

func visitTool(v visitor, t *Tool) {
	v.number(at("offset"), &t.Offset, positions)
	v.number(at("fence"), &t.Fence, positions)
	choice(v, at("turning"), &t.Turning, turnings)
	v.number(at("kerf"), &t.Kerf, kerfs)
	v.number(at("reach"), &t.Reach, sizesOrZero)
	v.number(at("fence_length"), &t.FenceLength, sizes)
	v.number(at("fence_thickness"), &t.FenceThickness, sizes)
	v.number(at("fence_opening"), &t.FenceOpening, sizesOrZero)
	v.number(at("fence_screw"), &t.FenceScrew, hardware)
	v.number(at("fence_inset"), &t.FenceInset, sizes)
	optional(v, at("fence_underside"), &t.FenceUnderside, heights)
	list(v, at("marks").brief(), &t.Marks, limits{hi: MaxReadings, unit: "marks"}, visitMark)
}

func visitMark(v visitor, m *Mark) {
	v.number(at("angle").needed(), &m.Angle, turns)
	v.number(at("x").needed(), &m.X, positions)
}

func visitReading(v visitor, r *Reading) {
	v.number(at("angle").needed(), &r.Angle, turns)
	v.number(at("measured").needed(), &r.Measured, turns)
	v.text(at("approach").brief(), &r.Approach, wording{words: approaches})
	v.text(at("method").brief(), &r.Method, wording{})
	v.text(at("date").brief(), &r.Date, wording{date: true})
}

func visitAsDrilled(v visitor, a *AsDrilled) {
	v.number(at("angle").needed(), &a.Angle, turns)
	v.text(at("catch").brief(), &a.Catch, wording{})
	v.number(at("x").needed(), &a.X, positions)
	v.number(at("y").needed(), &a.Y, positions)
}
