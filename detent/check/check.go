package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Slack (mm or degrees) is how near a value may come to its limit and count as
// equal to it: well above the rounding of a coordinate at 10 m and far below
// anything a workshop can measure.
const Slack = 1e-9

// Severity is how much a finding matters.
type Severity string

// The severities.
const (
	Error   Severity = "error"   // it will not work, or it breaks out
	Warning Severity = "warning" // it may not work
	Note    Severity = "note"    // worth knowing
)

// Check is one question asked of a plate.
type Check struct {
	ID       string
	Severity Severity

	// run reports every finding, with its numbers only: it runs at every edit,
	// and most findings are never read.
	run func(pl *plate.Plate, report func(Finding))
	// say gives a finding's sentence: the end of its key, after check.ID, and
	// its numbers.
	say func(pl *plate.Plate, f Finding) (key string, args words.Args)
	// fix gives the change that puts a finding right, or nil. No fix: nil.
	fix func(pl *plate.Plate, f Finding) *Fix
	// cautious: the fix changes so much that it is offered only if it brings no
	// error that was not there.
	cautious bool
}

// All lists every check in the order their findings are reported.
var All = []Check{
	seatsOverlap, webThin, edgeThin, featureOverlap,
	trackCrossed, trackLeaves, stopOutsideTravel, stopRepeated,
	ballOverBody, ballFallsIn, ballLocks, ballCannotReach, ballShort, seatBottoms,
	pocketBreaksThrough, pocketEdge, drillBreaksThrough,
	fittingEdge, fittingWeb, fittingTurns, knockOutWide, screwHoles, wearRingRoom, carrierRoom,
	falseClick,
	willNotCentre, deadBandWide, tableLifts, stopStiff,
	fenceClash, wanderOverTarget,
	truenessOverTarget, seasonBinds,
	dustTrapped, notALock,
}

// Run asks every check of a plate.
func Run(pl *plate.Plate) []Finding {
	var out []Finding
	for _, c := range All {
		c.run(pl, func(f Finding) {
			f.ID, f.Severity = c.ID, c.Severity
			out = append(out, f)
		})
	}
	return out
}

// Worst returns the gravest severity among findings, and false when there are
// none.
func Worst(findings []Finding) (Severity, bool) {
	rank := map[Severity]int{Note: 1, Warning: 2, Error: 3}
	var worst Severity
	for _, f := range findings {
		if rank[f.Severity] > rank[worst] {
			worst = f.Severity
		}
	}
	return worst, worst != ""
}

// byID finds a check by its id.
var byID = func() map[string]*Check {
	m := make(map[string]*Check, len(All))
	for i := range All {
		m[All[i].ID] = &All[i]
	}
	return m
}()

// Sentence says a finding of plate pl in the words of a catalogue.
func Sentence(pl *plate.Plate, f Finding, c *words.Catalogue) string {
	key, args := byID[f.ID].say(pl, f)
	for name, v := range args {
		if feature, ok := v.(plate.Feature); ok {
			args[name] = FeatureName(c, feature)
		}
	}
	return c.Text("check."+f.ID+"."+key, args)
}

// Fix is a change to the plan that puts a finding right: the key of what it
// does in the word catalogue, its numbers, and the change.
type Fix struct {
	Key   string
	Args  words.Args
	Apply func(plan.Plan) plan.Plan // returns a new plan, sharing nothing it changes
}

// FixOf returns the change that puts a finding of plate pl right, or nil when
// there is none to offer.
func FixOf(pl *plate.Plate, f Finding) *Fix {
	c := byID[f.ID]
	if c.fix == nil {
		return nil
	}
	fix := c.fix(pl, f)
	if fix != nil && c.cautious && countErrors(plate.New(fix.Apply(pl.Plan))) > countErrors(pl) {
		return nil
	}
	return fix
}

// countErrors counts the findings that keep a plate from working.
func countErrors(pl *plate.Plate) int {
	n := 0
	for _, f := range Run(pl) {
		if f.Severity == Error {
			n++
		}
	}
	return n
}
