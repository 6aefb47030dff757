package store

import (
	"slices"

	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// Change says what has changed, as a set.
type Change int

// The changes.
const (
	PlanChanged      Change = 1 << iota // the plan and its report
	SelectionChanged                    // the selected stops, finding or feature
	FileChanged                         // path, or whether all is saved
	ViewChanged                         // how the plate is looked at
	TurnChanged                         // how far the table is turned on screen
	StudyChanged                        // the report has been completed by a study
	Everything       = PlanChanged | SelectionChanged | FileChanged | ViewChanged | TurnChanged
)

// Store holds the state. Make one with [New].
type Store struct {
	plan    plan.Plan
	report  detent.Report
	studied detent.Report // the last that was completed: see [Store.Studied]

	past, future []step
	gesture      bool // an edit under way that is to be undone as one
	begun        bool // and has already changed the plan

	path  string    // "" until saved or opened
	saved plan.Plan // as the file holds it
	loose bool      // no file holds the plan, edited or not

	selection Selection
	view      View
	turn      geom.Angle

	listeners []func(Change)
}

// step is a plan to return to, what was selected in it, and the name of the
// edit that left it.
type step struct {
	name      string
	plan      plan.Plan
	selection Selection
	takesTool bool // of an edit to be made again: it takes the tool out, and so its marks
}

// New returns a store holding a plan that [plan.Validate] accepts, as not yet
// saved to any file and unchanged.
func New(p plan.Plan) *Store {
	s := &Store{view: DefaultView()}
	s.Load(p, "")
	return s
}

// OnChange calls f after every change from now on, in the order in which the
// listeners were added.
func (s *Store) OnChange(f func(Change)) { s.listeners = append(s.listeners, f) }

func (s *Store) tell(c Change) {
	for _, f := range s.listeners {
		f(c)
	}
}

// Plan returns the plan. The caller must not write to its slices.
func (s *Store) Plan() plan.Plan { return s.plan }

// Report returns the report of the plan.
func (s *Store) Report() detent.Report { return s.report }

// Load replaces everything by a plan just made (path "") or read from a file.
func (s *Store) Load(p plan.Plan, path string) {
	s.past, s.future = nil, nil
	s.gesture, s.begun = false, false
	s.path, s.saved, s.loose = path, p, false
	s.selection, s.turn = noSelection(), 0
	s.view.BothSides = symmetric(p)
	s.put(p)
	s.tell(Everything)
}

// symmetric reports whether a plan's stops are meant on both sides: whether any
// is, or there are none yet.
func symmetric(p plan.Plan) bool {
	return len(p.Stops) == 0 || slices.ContainsFunc(p.Stops, func(s plan.Stop) bool { return s.BothSides })
}

// put makes p the plan and solves it.
func (s *Store) put(p plan.Plan) {
	s.plan, s.report = p, detent.Solve(p)
	s.selection = s.selection.within(len(p.Stops), len(p.Features))
	if p.Collar == nil && s.view.Part == plan.PartCollar {
		s.view.Part = "" // there is nothing to see
	}
	s.turn = geom.Angle(max(p.Travel.From, min(p.Travel.To, s.turn.Degrees())))
}

// Path returns the plan's file, "" if it has none yet.
func (s *Store) Path() string { return s.path }

// Unsaved reports whether the plan differs from its file.
func (s *Store) Unsaved() bool { return s.loose || !plan.Equal(s.plan, s.saved) }

// MarkUnsaved records that no file holds the plan, though nothing was edited:
// its file has gone or holds another now, or it was recovered. Saving it again
// mends that, undo does not.
func (s *Store) MarkUnsaved() {
	s.loose = true
	s.tell(FileChanged)
}

// Saved records that the plan as it now is was written to path.
func (s *Store) Saved(path string) {
	s.path, s.saved, s.loose = path, s.plan, false
	s.tell(FileChanged)
}
