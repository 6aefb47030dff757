package proving

import "stopwright/detent/squares"

// Trend is how a stop's reading changes with time.
type Trend struct {
	Slope Value   // degrees a year
	First float64 // degrees, of the earliest day's mean
	Last  float64 // of the latest
	Days  float64 // between them
}

// daysAYear is the mean of the Gregorian calendar.
const daysAYear = 365.2425

// TrendOf fits a straight line to residuals (degrees) by day. It is false where
// there are not two different days; a standard error takes three readings.
func TrendOf(days, residuals []float64) (Trend, bool) {
	rows := make([][]float64, len(days))
	for i, d := range days {
		rows[i] = []float64{1, d - days[0]}
	}
	f, ok := squares.Of(rows, residuals)
	if !ok {
		return Trend{}, false
	}
	first, last := days[0], days[0]
	for _, d := range days {
		first, last = min(first, d), max(last, d)
	}
	t := Trend{Days: last - first, First: meanOn(first, days, residuals), Last: meanOn(last, days, residuals)}
	t.Slope = Value{Is: f.Coef[1] * daysAYear, Known: true}
	t.Slope.Std, t.Slope.Judged = f.Std(1)
	t.Slope.Std *= daysAYear
	return t, true
}

func meanOn(day float64, days, residuals []float64) float64 {
	sum, n := 0.0, 0.0
	for i, d := range days {
		if d == day {
			sum, n = sum+residuals[i], n+1
		}
	}
	return sum / n
}
