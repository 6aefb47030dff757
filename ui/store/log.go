package store

import "stopwright/detent/plan"

// Log changes the plan's log by change, which gets a copy of the plan to work
// on; what it does to anything else is dropped. A log is what was measured and
// done, not what was decided: it makes no step to undo, and undo leaves it
// alone. If the result is not a valid plan nothing changes and the error is a
// [plan.Problems].
func (s *Store) Log(change func(*plan.Plan)) error {
	p := s.plan.Clone()
	change(&p)
	p = s.plan.WithLogOf(p)
	if err := plan.Validate(p); err != nil {
		return err
	}
	if plan.Equal(p, s.plan) {
		return nil
	}
	s.put(p)
	s.tell(PlanChanged | FileChanged)
	return nil
}
