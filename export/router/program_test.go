package router_test

import (
	"bytes"
	"math"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plan/plantest"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/router"
)

// jobs lists what a program does, in order.
func jobs(p router.Program) []router.Job {
	var all []router.Job
	for _, s := range p.Steps {
		all = append(all, s.Job)
	}
	return all
}

func TestOrderOfWork(t *testing.T) {
	for _, c := range []struct {
		why    string
		part   plan.Part
		change func(*plan.Plan)
		jobs   []router.Job
		tools  []router.ToolKind
	}{
		{
			"seats, relief and screws are drilled; screws need the seats' drill, so it is fitted once", plan.PartBase,
			func(*plan.Plan) {},
			[]router.Job{router.Pivot, router.Seat, router.Screw, router.Relief, router.Other},
			[]router.ToolKind{router.Flat, router.Drill, router.Drill, router.Drill},
		},
		{
			"the recess before the bore in its middle; a wide hole is milled", plan.PartTurntable, func(*plan.Plan) {},
			[]router.Job{router.Pivot, router.Recess, router.Body, router.Other},
			[]router.ToolKind{router.Flat},
		},
		{
			"a collar has screws, and its bore is an outline", plan.PartCollar, func(*plan.Plan) {},
			[]router.Job{router.Screw},
			[]router.ToolKind{router.Drill},
		},
		{
			"a countersink is guided by the relief hole", plan.PartBase,
			func(p *plan.Plan) {
				p.Seat.Form, p.Collar, p.Features, p.Turntable.PivotBore = plan.Countersunk, nil, nil, 0
			},
			[]router.Job{router.Relief, router.Seat},
			[]router.ToolKind{router.Drill, router.Countersink},
		},
		{
			"a chamfer comes last", plan.PartBase,
			func(p *plan.Plan) { p.Seat.Chamfer, p.Collar, p.Features, p.Turntable.PivotBore = 0.5, nil, nil, 0 },
			[]router.Job{router.Seat, router.Relief, router.Chamfer},
			[]router.ToolKind{router.Drill, router.Drill, router.Countersink},
		},
		{
			"with no drills but for seats everything else is milled", plan.PartBase,
			func(p *plan.Plan) { p.Router.DrillTo, p.Router.Cutter = 0, 1.5 },
			[]router.Job{router.Pivot, router.Relief, router.Other, router.Screw, router.Seat},
			[]router.ToolKind{router.Flat, router.Drill},
		},
		{
			"flat seats wider than any drill are milled", plan.PartBase,
			func(p *plan.Plan) {
				p.Seat.DrillPoint, p.Router.DrillTo, p.Seat.ReliefDiameter = 180, 4, 0
				p.Collar, p.Features, p.Turntable.PivotBore = nil, nil, 0
			},
			[]router.Job{router.Seat},
			[]router.ToolKind{router.Flat},
		},
		{
			"nothing to cut", plan.PartTurntable,
			func(p *plan.Plan) {
				p.Turntable.PivotBore, p.Features, p.Stops, p.Arrangement.CatchIn = 0, nil, nil, plan.PartBase
			}, nil, nil,
		},
	} {
		p := trial()
		c.change(&p)
		program := made(t, p, c.part)
		assert.Equal(t, c.jobs, jobs(program), c.why)
		var kinds []router.ToolKind
		for _, tool := range program.Tools {
			kinds = append(kinds, tool.Kind)
		}
		assert.Equal(t, c.tools, kinds, c.why)
		if c.part != plan.PartCollar {
			replayed(t, text(t, program))
		}
	}
}

// One hole by hand: down and up at 2000 mm/min, drilled at 150.
func TestTimeByHand(t *testing.T) {
	p := plan.Default()
	p.Turntable.PivotBore, p.Catches[0].Radius = 0, 100
	p.Stops = []plan.Stop{{Angle: 0}}
	r := plan.DefaultRouter()
	r.Peck = 0
	p.Router = &r
	program := made(t, p, plan.PartBase)
	tip := 2.25 / math.Tan(59*math.Pi/180)
	fast := 100 + 9 + (10 + 6 + tip) // over, down to 1 mm, up to 10 mm
	want := 3 + fast/2000*60 + (1+6+tip)/150*60
	const exact = 1e-9 // s
	assert.InDelta(t, want, program.Seconds, exact, "three seconds for the spindle")

	r.Peck = 4 // up from -3 to 1 and back to -2.746, twice less 0.254
	ends := []float64{-3, -7}
	for _, z := range ends {
		want += (1 - z + 1 - z - 0.254) / 2000 * 60
		want += 0.254 / 150 * 60
	}
	p.Router = &r
	assert.InDelta(t, want, made(t, p, plan.PartBase).Seconds, exact)
}

func TestDrawingGrowsWithTime(t *testing.T) {
	program := made(t, trial(), plan.PartTurntable)
	holes := func(after float64) (cut, tools int) {
		for _, e := range program.Draw(after).Entities {
			switch e.Layer {
			case router.CutLayer:
				cut++
			case router.ToolLayer:
				tools++
			}
		}
		return cut, tools
	}
	cut, tools := holes(0)
	assert.Equal(t, [2]int{0, 1}, [2]int{cut, tools}, "at the start there is only the tool")
	last := 0
	for tenth := range 9 {
		cut, tools = holes(float64(tenth+1) / 10 * program.Seconds)
		assert.GreaterOrEqual(t, cut, last)
		assert.Equal(t, 1, tools)
		last = cut
	}
	cut, tools = holes(program.Seconds)
	assert.Equal(t, [2]int{program.Holes(), 0}, [2]int{cut, tools}, "at the end every hole is there and no tool")
}

// A drilled hole is reached by one travel; nothing else moves over the part.
func TestTravelsAreDrawn(t *testing.T) {
	program := made(t, trial(), plan.PartCollar)
	var at geom.Point
	n := 0
	for _, e := range program.Draw(program.Seconds).Entities {
		if e.Layer != router.TravelLayer {
			assert.Equal(t, router.CutLayer, e.Layer)
			continue
		}
		line := e.Shape.(drawing.Line)
		assert.Equal(t, at, line.A, "each begins where the last one ended")
		assert.Equal(t, program.Steps[0].Holes[n].At, line.B)
		at, n = line.B, n+1
	}
	assert.Equal(t, program.Holes(), n)
}

// In a turn the tool is where a clock's hand going backwards would be.
func TestToolOnATurn(t *testing.T) {
	program := made(t, trial(), plan.PartTurntable)
	at := 0.0
	for _, e := range program.Draw(program.Seconds).Entities {
		if c, ok := e.Shape.(drawing.Circle); ok && e.Layer == router.PathLayer && c.Centre == (geom.Point{}) {
			at = max(at, c.Radius)
		}
	}
	assert.InDelta(t, (8-3.175)/2, at, sameMM, "the last ring of the pivot bore")
	for _, seconds := range []float64{5, 6, 7, 8} {
		entities := program.Draw(seconds).Entities
		tool := entities[len(entities)-1]
		require.Equal(t, router.ToolLayer, tool.Layer)
		c := tool.Shape.(drawing.Circle)
		assert.InDelta(t, 3.175/2, c.Radius, sameMM)
		assert.LessOrEqual(t, c.Centre.Norm(), at+sameMM)
	}
}

func TestCardMovesNothing(t *testing.T) {
	programs, err := router.All(plate.New(trial()), words.English())
	require.NoError(t, err)
	require.Len(t, programs, 3)
	var cards []router.Card
	for _, p := range programs {
		cards = append(cards, router.Card{Program: p, File: "plate-" + string(p.Part) + ".ngc"})
	}
	var b bytes.Buffer
	require.NoError(t, router.WriteCard(&b, trial(), cards, info()))
	m := replayed(t, b.String())
	assert.Empty(t, m.motions)
	said := strings.Join(m.comments, "\n")
	for _, name := range []string{"plate-base.ngc: Base, 20 holes", "plate-turntable.ngc", "plate-collar.ngc"} {
		assert.Contains(t, said, name)
	}
}

func TestCardOfAPlanWithNothingToCut(t *testing.T) {
	p := plan.Default()
	p.Turntable.PivotBore, p.Catch.FlangeDiameter = 0, 0
	var b bytes.Buffer
	require.NoError(t, router.WriteCard(&b, p, nil, info()))
	assert.Contains(t, commentsIn(t, b.String()), words.English().Text("router.card.nothing"))
}

func TestProgramSaysWhatItNeeds(t *testing.T) {
	p := trial()
	p.Router.Units = plan.UnitsInch
	for part, want := range map[plan.Part][]string{
		plan.PartTurntable: {
			"Lay the part with its underside up", "Inches", "Stock 0.7087 in thick", "Goes 0.0197 in into the spoil board",
			"Tool 1: flat cutter dia 0.125 in", "flange recess: mill 2, dia 0.374 in, 0.0591 in deep", "Date " + date,
			"Not in this program: the outline", "Spindle 12000 rev/min", "a stop positions",
		},
		plan.PartBase: {"Lay the part with its top face up", "Not in this program: the slots", "Touch off Z on the face after every change"},
	} {
		said := strings.Join(commentsIn(t, text(t, made(t, p, part))), " ")
		for _, w := range want {
			assert.Contains(t, said, w)
		}
	}
	assert.Equal(t, text(t, made(t, p, plan.PartBase)), text(t, made(t, p.Clone(), plan.PartBase)), "equal plans, equal bytes")
}

// TestAPublicInterpreterTakesIt runs the programs through rs274, where it is
// installed: Debian has it in a package of 60 MB with a desktop, which neither
// the project's checks nor its makers need.
func TestAPublicInterpreterTakesIt(t *testing.T) {
	rs274, err := exec.LookPath("rs274")
	if err != nil {
		t.Skip("no rs274 on this machine")
	}
	for _, canned := range []bool{false, true} {
		for _, units := range []string{plan.UnitsMM, plan.UnitsInch} {
			p := trial()
			p.Router.Canned, p.Router.Units, p.Router.ToolChange = canned, units, plan.ChangeM6
			for _, part := range drawing.Parts(p) {
				program := made(t, p, part)
				m := replayed(t, text(t, program))
				assert.Equal(t, seenBy(t, rs274, text(t, program)), feeds(m), "%s %v %s", part, canned, units)
			}
		}
	}
}

// feeds counts the straight and the round feeds of a run.
func feeds(m *machine) [2]int {
	var n [2]int
	for _, s := range m.motions {
		switch {
		case s.arc:
			n[1]++
		case !s.rapid:
			n[0]++
		}
	}
	return n
}

// seenBy returns how many straight and round feeds rs274 makes of a program.
func seenBy(t *testing.T, rs274, program string) [2]int {
	t.Helper()
	dir := t.TempDir()
	put := func(name, content string) string {
		path := filepath.Join(dir, name)
		require.NoError(t, writeFile(path, content))
		return path
	}
	tools := put("tool.tbl", "T1 P1 D1\nT2 P2 D1\nT3 P3 D1\nT4 P4 D1\nT5 P5 D1\n")
	said, err := exec.Command(rs274, "-t", tools, "-v", put("sim.var", ""), "-g", "-n", "2", put("p.ngc", program)).CombinedOutput()
	require.NoError(t, err, "%s", said)
	require.Contains(t, string(said), "PROGRAM_END")
	return [2]int{strings.Count(string(said), "STRAIGHT_FEED("), strings.Count(string(said), "ARC_FEED(")}
}

func BenchmarkProgram720(b *testing.B) {
	pl := plate.New(plantest.Equal(720))
	b.ReportAllocs()
	for b.Loop() {
		_, err := router.New(pl, plan.PartBase, words.English())
		require.NoError(b, err)
	}
}

func BenchmarkWrite720(b *testing.B) {
	program := made(b, plantest.Equal(720), plan.PartBase)
	b.ReportAllocs()
	for b.Loop() {
		text(b, program)
	}
}

func BenchmarkDraw720(b *testing.B) {
	program := made(b, plantest.Equal(720), plan.PartBase)
	for b.Loop() {
		program.Draw(program.Seconds / 2)
	}
}
