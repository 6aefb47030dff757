package chart

import (
	"cmp"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/detent/stock"
	"stopwright/export/drawing"
)

// Bill is the parts and cutting list of a plan.
type Bill struct {
	Parts    []Piece
	Hardware []Piece
	Tools    []Piece
}

// Piece is one line of the list: how many of what.
type Piece struct {
	Count int
	Name  string
	Size  string // in the sheets' words
	Note  string // material, or what it is for; may be empty
}

// sawCut is what stock is larger than a part all round, mm: common practice, no
// source.
const sawCut = 10

// BillOf lists what a plan needs: stock with room to saw, catches and balls,
// screws, pins and bolts, those for the maker's own holes among them, and the
// drills.
func BillOf(pl *plate.Plate, c *words.Catalogue) Bill {
	return Bill{Parts: stockOf(pl, c), Hardware: hardwareOf(pl, c), Tools: drillsOf(pl, c)}
}

func stockOf(pl *plate.Plate, c *words.Catalogue) []Piece {
	var out []Piece
	for _, part := range drawing.AllPartsOf(pl.Plan) {
		o, n := plate.OutlineOf(pl.Plan, part), 1
		if part == plan.PartCarrier || part == plan.PartPad {
			n = len(pl.Pockets)
		}
		// Registration pins in the waste have to stand in the stock.
		up := o.Reach(0)
		for _, f := range pl.Features {
			if at, straight := f.Core.(geom.Segment); straight && f.Part == part && f.Fitting == plate.RegistrationPin {
				up = max(up, at.A.Y+f.Half)
			}
		}
		out = append(out, Piece{
			Count: n, Name: drawing.PartName(c, part),
			Size: c.Text("bill.stock", words.Args{
				"Width": words.MM(2 * (o.Reach(90) + sawCut)), "Height": words.MM(2 * (up + sawCut)),
				"Thickness": words.MM(plate.ThicknessOf(pl.Plan, part)),
			}),
			Note: drawing.MaterialName(c, plate.MaterialOf(pl.Plan, part)),
		})
	}
	return out
}

func hardwareOf(pl *plate.Plate, c *words.Catalogue) []Piece {
	p := pl.Plan
	diameter := func(mm float64) string { return "⌀" + c.Length(mm) }
	var out []Piece
	add := func(n int, name, size, note string) {
		if n > 0 {
			out = append(out, Piece{n, c.Text("bill." + name), size, note})
		}
	}
	add(len(p.Catches), "catch", c.Text("bill.catch.size", words.Args{
		"Body": diameter(p.Catch.BodyDiameter), "Length": words.MM(p.Catch.BodyLength),
	}), c.Text("bill.catch.ball", words.Args{"Ball": diameter(p.Catch.BallDiameter)}))
	add(1, "ball", diameter(p.Catch.BallDiameter), c.Text("bill.ball.note"))
	if p.Turntable.PivotBore > 0 {
		add(1, "pivot", diameter(p.Turntable.PivotBore), c.Text("bill.pivot.note"))
	}
	if p.Collar != nil {
		add(p.Collar.Screws.Count, "screw", cmp.Or(p.Making.Screws.Size, c.Text("bill.screw.size", words.Args{
			"Hole": diameter(p.Collar.Screws.Diameter),
		})), screwNote(p, c))
	}
	for _, f := range pl.Features {
		switch f.Fitting {
		case plate.EndStopPin:
			add(1, "end-stop", diameter(2*f.Half), "")
		case plate.ClampBolt:
			add(1, "clamp", c.Text("bill.screw.size", words.Args{"Hole": diameter(2 * f.Half)}), c.Text("bill.clamp.note"))
		}
	}
	if d := p.Making.Registration.Diameter; d > 0 {
		add(2, "registration", diameter(d), c.Text("bill.registration.note"))
	}
	if k := p.Making.Carrier; k.Width > 0 {
		add(2*len(pl.Pockets), "carrier-screw", c.Text("bill.screw.size", words.Args{"Hole": diameter(k.Screw)}), "")
	}
	return append(out, ownFasteners(pl, c)...)
}

// screwNote names the screw that a pilot hole of the plan is for, where the
// collar's hole clears one of a listed gauge or thread.
func screwNote(p plan.Plan, c *words.Catalogue) string {
	hole := p.Collar.Screws.Diameter
	if p.Making.Screws.Pilot > 0 {
		best := ""
		for _, s := range stock.WoodScrews() {
			if s.Shank.Typical <= hole+stock.SameSize {
				best = s.Designation()
			}
		}
		if best != "" {
			return c.Text("bill.screw.wood", words.Args{"Screw": best})
		}
		return ""
	}
	if thread := threadFor(hole); thread != "" {
		return c.Text("bill.screw.machine", words.Args{"Screw": thread})
	}
	return ""
}

// drillsOf lists each tool of the operations once, by diameter, with what it is
// for.
func drillsOf(pl *plate.Plate, c *words.Catalogue) []Piece {
	type use struct {
		tool Tool
		on   []string
	}
	var all []use
	for _, o := range Operations(pl, c) {
		if o.Tool.Diameter == 0 {
			continue
		}
		t := Tool{Diameter: o.Tool.Diameter, Point: o.Tool.Point}
		i := slices.IndexFunc(all, func(u use) bool { return u.tool == t })
		if i < 0 {
			i = len(all)
			all = append(all, use{tool: t})
		}
		if name := o.Name(c); !slices.Contains(all[i].on, name) {
			all[i].on = append(all[i].on, name)
		}
	}
	slices.SortStableFunc(all, func(a, b use) int {
		return cmp.Or(cmp.Compare(a.tool.Diameter, b.tool.Diameter), cmp.Compare(a.tool.Point, b.tool.Point))
	})
	out := make([]Piece, len(all))
	for i, u := range all {
		point := c.Text("bill.flat")
		if u.tool.Point != blunt {
			point = c.Text("bill.point", words.Args{"Point": words.Deg(u.tool.Point)})
		}
		note := ""
		for k, name := range u.on {
			if k > 0 {
				note += ", "
			}
			note += name
		}
		out[i] = Piece{1, c.Text("bill.tool"), "⌀" + c.Length(u.tool.Diameter) + ", " + point, note}
	}
	return out
}

// sections lists the parts of a bill with their headings.
func (b Bill) sections(c *words.Catalogue) []billSection {
	return []billSection{
		{c.Text("bill.parts"), b.Parts},
		{c.Text("bill.hardware"), b.Hardware},
		{c.Text("bill.tools"), b.Tools},
	}
}

// billSection is one part of a bill with its heading.
type billSection struct {
	head   string
	pieces []Piece
}
