package store

import "stopwright/detent/plan"

// Edit changes the plan by change, which gets a copy of its own to work on. The
// edit can be undone under its name. If the result is not a valid plan nothing
// changes and the error is a [plan.Problems]. An edit that alters nothing is
// not recorded.
func (s *Store) Edit(name string, change func(*plan.Plan)) error {
	p := s.plan.Clone()
	change(&p)
	return s.Replace(name, p)
}

// Replace makes p the plan, as [Store.Edit] does.
func (s *Store) Replace(name string, p plan.Plan) error {
	if err := plan.Validate(p); err != nil {
		return err
	}
	if plan.Equal(p, s.plan) {
		return nil
	}
	if !s.begun {
		s.past = append(s.past, step{name: name, plan: s.plan, selection: s.selection})
		s.begun = s.gesture
	}
	s.future = nil
	s.put(p)
	s.tell(PlanChanged | SelectionChanged | FileChanged)
	return nil
}

// BeginGesture makes the edits from now to [Store.EndGesture] one to undo: a
// seat dragged along its ring.
func (s *Store) BeginGesture() { s.gesture, s.begun = true, false }

// EndGesture ends what BeginGesture began. A gesture that came back to where it
// started leaves nothing to undo.
func (s *Store) EndGesture() {
	if s.begun && plan.Equal(s.past[len(s.past)-1].plan, s.plan) {
		s.past = s.past[:len(s.past)-1]
		s.tell(FileChanged)
	}
	s.gesture, s.begun = false, false
}

// CanUndo returns the name of the edit that Undo would take back.
func (s *Store) CanUndo() (name string, ok bool) { return last(s.past) }

// CanRedo returns the name of the edit that Redo would make again.
func (s *Store) CanRedo() (name string, ok bool) { return last(s.future) }

func last(steps []step) (string, bool) {
	if len(steps) == 0 {
		return "", false
	}
	return steps[len(steps)-1].name, true
}

// Undo takes back the last edit, if there is one.
func (s *Store) Undo() { s.travel(&s.past, &s.future, s.plan.Tool == nil) }

// Redo makes the edit taken back last again, if there is one.
func (s *Store) Redo() { s.travel(&s.future, &s.past, false) }

// travel goes to the last plan of one list, with what was selected in it, and
// puts the present one on the other. The log is not a decision and stays as it
// is; only the marks of a tool that is now bare of them, because the edit took it
// out, go with it when that is done again.
func (s *Store) travel(from, to *[]step, bare bool) {
	n := len(*from)
	if n == 0 || s.gesture {
		return
	}
	goal := (*from)[n-1]
	*from = (*from)[:n-1]
	*to = append(*to, step{goal.name, s.plan, s.selection, bare && goal.plan.Tool != nil})
	p := goal.plan.WithLogOf(s.plan)
	if goal.takesTool {
		p.Tool = nil
	}
	s.selection = goal.selection
	s.put(p)
	s.tell(PlanChanged | SelectionChanged | FileChanged)
}
