package check

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// The numbers all fixtures are reckoned from. Limits are tried at, half a slack
// beyond, and a millionth of a millimetre (or degree) beyond: far above
// rounding, far below a workshop.
const (
	ring   = 105.0 // radius
	mouth  = 4.5   // diameter of a seat
	pocket = 9.5   // diameter of a catch's flange
	web    = 2.0   // the rule
	edge   = 4.0   // the rule
	disc   = 400.0 // diameter of base and turntable
	bore   = 8.0
	hair   = 1e-6
	within = Slack / 2
)

// fixture is a plan and what one check must find in it: nothing when want is
// empty.
type fixture struct {
	why  string
	plan plan.Plan
	want []expected
}

// expected is a finding and the sentence that tells it.
type expected struct {
	Finding
	text string
}

// build is a plan of two discs with stops on one ring, changed by edits.
func build(stops []float64, edits ...func(*plan.Plan)) plan.Plan {
	p := plan.Default()
	p.Turntable.Diameter, p.Turntable.PivotBore = disc, bore
	p.Base.Shape, p.Base.Diameter = plan.Disc, disc
	p.Catches = []plan.Placement{{Name: "A", Radius: ring}}
	p.Catch.BodyDiameter, p.Catch.FlangeDiameter = 8, pocket
	p.Seat.Diameter, p.Seat.Chamfer = mouth-0.5, 0.25 // a web is between chamfered rims
	p.Rules = plan.Rules{Web: web, Edge: edge}
	for _, a := range stops {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	for _, edit := range edits {
		edit(&p)
	}
	return p
}

// The edits.

func feature(f plan.Feature) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Features = append(p.Features, f) }
}

func baseHole(radius float64, azimuth geom.Angle, diameter float64, label string) func(*plan.Plan) {
	return hole(plan.PartBase, radius, azimuth, diameter, label)
}

func hole(part plan.Part, radius float64, azimuth geom.Angle, diameter float64, label string) func(*plan.Plan) {
	at := geom.Polar(radius, azimuth)
	return feature(plan.Feature{Part: part, Kind: plan.Hole, X: at.X, Y: at.Y, Diameter: diameter, Label: label})
}

func catches(at ...plan.Placement) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Catches = at }
}

func onRing(radius float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Catches[0].Radius = radius }
}

func travel(from, to float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Travel = plan.Span{From: from, To: to} }
}

func stop(s plan.Stop) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Stops = append(p.Stops, s) }
}

func rectangle(width, depth float64) func(*plan.Plan) {
	return func(p *plan.Plan) { p.Base.Shape, p.Base.Width, p.Base.Depth = plan.Rectangle, width, depth }
}

// turnFor returns the turn that parts two points of the ring by a straight
// distance: the chord 2R sin(turn/2) turned round.
func turnFor(distance float64) float64 { return 2 * math.Asin(distance/(2*ring)) * 180 / math.Pi }

// turnForWeb returns the turn that leaves a web between two seats of the ring.
func turnForWeb(web float64) float64 { return turnFor(mouth + web) }

// otherWayUp is the same plate with the catch in the base: the two parts and
// their features change places. The table then turns the other way, so that
// seats stay where they were.
func otherWayUp(p plan.Plan) plan.Plan {
	p.Arrangement = plan.Arrangement{CatchIn: plan.PartBase, PositiveTurn: plan.Counterclockwise}
	p.Features = slices.Clone(p.Features)
	for i := range p.Features {
		if f := &p.Features[i]; f.Part == plan.PartBase {
			f.Part = plan.PartTurntable
		} else {
			f.Part = plan.PartBase
		}
	}
	return p
}

func angles(a ...float64) []geom.Angle {
	out := make([]geom.Angle, len(a))
	for i := range a {
		out[i] = geom.Angle(a[i])
	}
	return out
}
