package detent

import (
	"context"

	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Report is what follows from a plan. It is never changed once made.
type Report struct {
	Plate    *plate.Plate
	Findings []check.Finding // by check, in the order of [check.All]

	Sampled *Sampled // of [Study]; nil before it, and where no ball clicks
	Rooms   []Room   // ways to make room for all stops; only after [Study]
}

// Solve works out the report of a plan that [plan.Validate] accepts. It takes
// time in proportion to n log n for n seats.
func Solve(p plan.Plan) Report {
	pl := plate.New(p)
	return Report{Plate: pl, Findings: check.Run(pl)}
}

// study is one piece of work too slow for every edit: it adds to the report,
// and gives up with the context's error when told to stop.
type study func(ctx context.Context, r *Report) error

// studies lists the slow work in the order it is done.
var studies = []study{studyTrueness, studyRooms}

// Study completes a report of Solve with everything that takes time, and
// returns the context's error if it was stopped before the end.
func Study(ctx context.Context, r Report) (Report, error) {
	for _, s := range studies {
		if err := s(ctx, &r); err != nil {
			return r, err
		}
	}
	return r, ctx.Err()
}

// Worst returns the gravest severity of the report's findings, and false when
// there are none.
func (r Report) Worst() (check.Severity, bool) { return check.Worst(r.Findings) }
