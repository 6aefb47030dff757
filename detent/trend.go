package detent

import (
	"time"

	"stopwright/detent/geom"
	"stopwright/detent/proving"
)

// Trend is how one stop has read over the years: every dated reading of it,
// those that no longer count for the diagnosis included.
type Trend struct {
	Days      []float64 // since the first of them
	Residuals []float64 // degrees
	First     string    // date of day 0
	proving.Trend
	Known bool // there are readings of two different days
}

// TrendOf returns the trend of a stop.
func (r Report) TrendOf(stop geom.Angle) Trend {
	var out Trend
	var dates []time.Time
	first := time.Time{}
	for _, x := range r.Plate.Plan.Readings {
		day, err := time.Parse(time.DateOnly, x.Date)
		if err != nil || !ofStop(x, stop) {
			continue
		}
		if len(dates) == 0 || day.Before(first) {
			first, out.First = day, x.Date
		}
		dates, out.Residuals = append(dates, day), append(out.Residuals, Residual(x))
	}
	for _, d := range dates {
		out.Days = append(out.Days, d.Sub(first).Hours()/24)
	}
	out.Trend, out.Known = proving.TrendOf(out.Days, out.Residuals)
	return out
}
