package store

import "stopwright/detent"

// Studied returns the plan's report completed by [detent.Study], and false until
// that is done for the plan as it is.
func (s *Store) Studied() (detent.Report, bool) {
	if s.studied.Plate == nil || s.studied.Plate != s.report.Plate {
		return detent.Report{}, false
	}
	return s.studied, true
}

// SetStudied keeps a completed report, unless the plan has changed since.
func (s *Store) SetStudied(r detent.Report) {
	if r.Plate == s.report.Plate {
		s.studied = r
		s.tell(StudyChanged)
	}
}
