package router_test

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/export/router"
)

// reported is what a report, as other programs read it, says of the seats.
type reported struct {
	Seats []struct {
		Part   string
		DrillX float64 `json:"drill_x"`
		DrillY float64 `json:"drill_y"`
	}
}

func reportOf(t require.TestingT, p plan.Plan) reported {
	var b bytes.Buffer
	require.NoError(t, detent.Solve(p).Encode(&b, words.English()))
	var r reported
	require.NoError(t, json.Unmarshal(b.Bytes(), &r))
	return r
}

// point returns how long a drill's point is, mm: (D/2)/tan(angle/2).
func point(diameter, angle float64) float64 {
	if angle == 180 {
		return 0
	}
	return diameter / 2 / math.Tan(angle/2*math.Pi/180)
}

// drillTip returns how long the point is of the shop's drill for a plain hole,
// mm; 0 where such a hole is milled.
func drillTip(p plan.Plan, diameter float64) float64 {
	switch {
	case diameter > p.RouterSettings().DrillTo:
		return 0
	case p.Seat.Form == plan.Drilled && p.Seat.DrillPoint < 180:
		return point(diameter, p.Seat.DrillPoint)
	}
	return point(diameter, 118)
}

// wantedIn works out from the plan and its report what must be cut in a part.
func wantedIn(t require.TestingT, p plan.Plan, part plan.Part) []want {
	set := p.RouterSettings()
	thickness := map[plan.Part]float64{plan.PartBase: p.Base.Thickness, plan.PartTurntable: p.Turntable.Thickness}[part]
	mirror := 1.0
	if part == plan.PartTurntable {
		mirror = -1
	}
	if part == plan.PartCollar {
		thickness = p.Collar.Thickness
	}
	through := func(x, y, d float64) want {
		deep := thickness + set.Breakthrough
		return want{mirror * x, y, d, deep + drillTip(p, d)}
	}
	var all []want
	if part != plan.PartCollar {
		all = append(all, through(0, 0, p.Turntable.PivotBore))
	}
	for _, s := range reportOf(t, p).Seats {
		if s.Part != string(part) {
			continue
		}
		d, deep := p.Seat.Diameter, p.Seat.Depth+point(p.Seat.Diameter, p.Seat.DrillPoint)
		if p.Seat.Form == plan.Countersunk {
			deep = point(d, p.Seat.CountersinkAngle)
		}
		all = append(all, want{s.DrillX, s.DrillY, d, deep})
		if p.Seat.ReliefDiameter > 0 {
			w := through(0, 0, p.Seat.ReliefDiameter)
			all = append(all, want{s.DrillX, s.DrillY, w.diameter, w.depth})
		}
	}
	if part == p.Arrangement.CatchIn {
		for _, c := range p.Catches {
			sin, cos := math.Sincos(c.Azimuth * math.Pi / 180)
			x, y := mirror*c.Radius*sin, c.Radius*cos
			all = append(
				all,
				want{x, y, p.Catch.FlangeDiameter, p.Catch.FlangeThickness + p.Catch.RecessAllowance},
				want{x, y, p.Catch.BodyDiameter + p.Catch.BodyAllowance, p.Catch.BodyLength + p.Catch.RecessAllowance},
			)
			if d := p.Making.KnockOut; d > 0 {
				w := through(0, 0, d)
				all = append(all, want{x, y, d, w.depth})
			}
		}
	}
	for _, f := range p.Features {
		if f.Part == part && f.Kind == plan.Hole {
			all = append(all, through(f.X, f.Y, f.Diameter))
		}
	}
	if r := p.Making.Registration; r.Diameter > 0 && part != plan.PartCollar {
		all = append(all, through(0, r.Distance, r.Diameter), through(0, -r.Distance, r.Diameter))
	}
	if p.Collar != nil && part != plan.PartTurntable {
		s := p.Collar.Screws
		for i := range s.Count {
			sin, cos := math.Sincos((s.Start + 360*float64(i)/float64(s.Count)) * math.Pi / 180)
			w := through(s.Circle/2*sin, s.Circle/2*cos, s.Diameter)
			switch holes := p.Making.Screws; {
			case part == plan.PartBase && holes.Pilot > 0:
				w.diameter, w.depth = holes.Pilot, holes.PilotDepth+drillTip(p, holes.Pilot)
			case part == plan.PartCollar && holes.Head > 0:
				all = append(all, want{w.x, w.y, holes.Head, holes.HeadDepth})
			}
			all = append(all, w)
		}
	}
	return all
}

func diameters(p router.Program) []float64 {
	var all []float64
	for _, tool := range p.Tools {
		all = append(all, tool.Diameter)
	}
	return all
}

// Every way a plate can be arranged, in both units, with and without the
// controller's cycles, with either change of tool: the program run by the rules
// makes the holes the report and the plan ask for, and no others.
func TestProgramCutsWhatTheReportSays(t *testing.T) {
	for _, a := range plantest.Arrangements {
		for _, units := range []string{plan.UnitsMM, plan.UnitsInch} {
			for _, canned := range []bool{false, true} {
				p := mitres(a)
				p.Router.Units, p.Router.Canned = units, canned
				p.Router.ToolChange = map[bool]string{false: plan.ChangePause, true: plan.ChangeM6}[canned]
				for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable, plan.PartCollar} {
					program := made(t, p, part)
					file := text(t, program)
					if !canned { // the rules count tools by their changes
						file = numbered(file)
					}
					m := replayed(t, file)
					assertRemoves(t, m, diameters(program), wantedIn(t, p, part))
				}
			}
		}
	}
}

// numbered puts the number of the tool that a maker fits at a pause into a
// program, for an interpreter that sees no maker.
func numbered(file string) string {
	tool := 1
	var b bytes.Buffer
	for line := range bytes.Lines([]byte(file)) {
		if string(line) == "M0\n" {
			tool++
			b.WriteString("T" + string(rune('0'+tool)) + " M6\n")
			continue
		}
		b.Write(line)
	}
	return b.String()
}

// What the making of a plate adds is cut too: by its own hand-made list.
func TestFittingsAreCut(t *testing.T) {
	for _, a := range plantest.Arrangements {
		p := fitted(mitres(a))
		for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable} {
			program := made(t, p, part)
			m := replayed(t, numbered(text(t, program)))
			assertRemoves(t, m, diameters(program), wantedIn(t, p, part))
		}
	}
}

// A catch longer than its part is carried by a block behind it: the bore goes
// right through, and there is no floor to knock it out of.
func TestCarriedCatchIsBoredThrough(t *testing.T) {
	p := fitted(mitres(plantest.Arrangements[0]))
	p.Catch.BodyLength, p.Making.Carrier.Width = 24, 40
	c := p.Making.Carrier
	set := p.RouterSettings()
	bore, end := p.Catch.BodyDiameter+p.Catch.BodyAllowance, set.Breakthrough
	// The bore goes through 18 mm of turntable and 4 mm of pad, and 2.5 mm on.
	p.Making.Carrier.PadThickness = 4
	thick := c.Thickness + end
	blocks := map[plan.Part][]want{
		plan.PartPad: {{0, 0, bore, 4 + end}},
		plan.PartCarrier: {
			{0, 0, bore, 24 + p.Catch.RecessAllowance - 18 - 4},
			{0, 0, p.Making.KnockOut, thick + drillTip(p, p.Making.KnockOut)},
		},
	}
	for part, wanted := range blocks {
		thick := map[plan.Part]float64{plan.PartPad: 4, plan.PartCarrier: c.Thickness}[part] + end
		for _, x := range []float64{-c.Spacing / 2, c.Spacing / 2} {
			wanted = append(wanted, want{x, 0, c.Screw, thick + drillTip(p, c.Screw)})
		}
		program := made(t, p, part)
		assert.Equal(t, 2, program.Copies, "one for each catch")
		m := replayed(t, numbered(text(t, program)))
		assertRemoves(t, m, diameters(program), wanted)
	}
	program := made(t, p, plan.PartTurntable)
	for _, s := range program.Steps {
		assert.NotEqual(t, router.KnockOut, s.Job)
		if s.Job == router.Body {
			assert.True(t, s.Through)
			assert.InDelta(t, 18.5, s.Depth, sameMM)
		}
	}
}

func TestDemonstrationPlansAreCut(t *testing.T) {
	for _, d := range plans.List() {
		file, err := plans.Open(d.Name)
		require.NoError(t, err)
		p, err := plan.Decode(bytes.NewReader(file))
		require.NoError(t, err)
		for _, part := range []plan.Part{plan.PartBase, plan.PartTurntable} {
			program := made(t, p, part)
			m := replayed(t, numbered(text(t, program)))
			assertRemoves(t, m, diameters(program), wantedIn(t, p, part))
		}
	}
}

// The moves are what the file says: the window's drawing and the estimate of
// time are made from them.
func TestMovesAreThoseOfTheFile(t *testing.T) {
	for _, canned := range []bool{false, true} {
		p := mitres(plantest.Arrangements[0])
		p.Router.Canned = canned
		program := made(t, p, plan.PartBase)
		var went []motion
		for _, s := range replayed(t, text(t, program)).motions {
			if s.from != s.to || s.arc { // a file says a height again after a change of tool
				went = append(went, s)
			}
		}
		went = went[1:] // from wherever the machine was to the safe height
		require.Len(t, went, len(program.Moves))
		for i, m := range program.Moves {
			assert.InDelta(t, m.To.X, went[i].to.x, sameMM)
			assert.InDelta(t, m.To.Y, went[i].to.y, sameMM)
			assert.InDelta(t, m.To.Z, went[i].to.z, sameMM)
			assert.Equal(t, m.Kind == router.Rapid, went[i].rapid)
			assert.Equal(t, m.Kind == router.Turn, went[i].arc)
			assert.InDelta(t, m.Feed, went[i].feed, 1e-2) // mm/min: a feed's decimals
			if m.Kind == router.Turn {
				assert.InDelta(t, m.Centre.X, went[i].centre.x, sameMM)
				assert.InDelta(t, m.Centre.Y, went[i].centre.y, sameMM)
			}
		}
	}
}
