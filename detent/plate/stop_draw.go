package plate

import "stopwright/detent/budget"

// StopDraw draws how far off a stop is on plates drilled in thought: with
// [budget.Draw] every seat and every catch lands in one place a plate, whichever
// stops it serves, and only what is anew at every rest is drawn for the stop
// alone.
type StopDraw struct {
	common []commonError
	own    []budget.Term
}

type commonError struct {
	name int
	budget.Term
}

// StopDraw prepares to draw a stop, in degrees.
func (pl *Plate) StopDraw(stop int) StopDraw {
	s, l := pl.Stops[stop], pl.Trueness.levers[pl.Trueness.hold[stop]]
	var out StopDraw
	disc := func(degrees float64) budget.Term { return budget.Term{Shape: budget.Disc, Size: degrees} }
	for _, p := range l.pulls {
		seat := 0
		for _, k := range s.Seats {
			for _, v := range pl.Seats[k].Serves {
				if v.Stop == stop && v.Catch == p.catch {
					seat = k
				}
			}
		}
		out.common = append(out.common,
			commonError{p.catch, disc(p.turn * pl.Plan.Shop.CatchError)},
			commonError{len(pl.Plan.Catches) + seat, disc(p.turn * pl.Plan.Shop.SeatError)})
	}
	var rest partList
	pl.addRest(&rest, l)
	for _, p := range rest.parts {
		out.own = append(out.own, p.Term)
	}
	return out
}

// Draw sets every number of a column to how far off the stop is, in degrees.
func (s StopDraw) Draw(d *budget.Draw, column []float64) {
	clear(column)
	for _, c := range s.common {
		d.AddCommon(column, c.name, c.Term)
	}
	for _, t := range s.own {
		d.Add(column, t)
	}
}
