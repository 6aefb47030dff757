package check

import (
	"cmp"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// falseClick fires when a ball passes right over a seat, within the travel, at a
// turn at which no stop is wanted: the table clicks there all the same. Rings
// that differ by less than the mouth's radius count as one. Value is how far the
// nearest stop is, in degrees, and limit the angle within which the ball sinks
// into the seat: below it the click pulls that stop off, which is worse. With no
// stop at all that near, value may be as much as a full turn. One finding a seat,
// of the click nearest to a stop.
//
// A ball that drops into another's seat just at a stop is not flagged: there the
// table is to rest. Nor is a ball that hangs over a seat at the end of the travel
// without getting there.
var falseClick = Check{
	ID:       "false-click",
	Severity: Error,
	run: func(pl *plate.Plate, report func(Finding)) {
		if len(pl.Plan.Catches) < 2 {
			return // a lone ball has seats at its stops and nowhere else
		}
		worst := make([]room.FalseClick, len(pl.Seats)) // by seat; one without reach is none
		sweepOf(pl).Clicks(func(c room.FalseClick) {
			if w := worst[c.Seat]; w.Reach == 0 || graver(c, w) {
				worst[c.Seat] = c
			}
		})
		for seat, c := range worst {
			if c.Reach == 0 {
				continue
			}
			f := Finding{
				Angles: anglesOf(pl, seat), Seats: []int{seat}, Tracks: []int{c.Ball}, Pockets: []int{c.Ball},
				Value: c.Off.Degrees(), Limit: c.Reach.Degrees(), Unit: deg, Turn: c.Turn,
			}
			if c.PullsOff() {
				f.Angles = distinct(f.Angles, []geom.Angle{pl.Stops[c.Stop].Angle})
			}
			report(f)
		}
	},
	say: func(pl *plate.Plate, f Finding) (string, words.Args) {
		s := pl.Seats[f.Seats[0]]
		args := words.Args{
			"Turn": words.Deg(f.Turn), "Catch": pl.Tracks[f.Tracks[0]].Name,
			"Seat": s.Tag, "Angle": words.Deg(s.Angle),
		}
		if f.Value >= f.Limit {
			return "click", args
		}
		stop := slices.MinFunc(f.Angles, func(a, b geom.Angle) int {
			return cmp.Compare((a - f.Turn).Wrap().Abs(), (b - f.Turn).Wrap().Abs())
		})
		args["Off"], args["Stop"] = words.Deg(f.Value), words.Deg(stop)
		return "pulls", args
	},
}

// graver reports whether a false click is worse than another: nearer to a stop;
// of two as near, the earlier turn.
func graver(c, than room.FalseClick) bool {
	if c.Off < than.Off-Slack || c.Off > than.Off+Slack {
		return c.Off < than.Off
	}
	return c.Turn < than.Turn
}

// sweepOf returns a plate's balls, seats and stops, to be turned through its
// travel. A place is an azimuth in the sense of positive turns.
func sweepOf(pl *plate.Plate) room.Sweep {
	s := room.Sweep{
		From: geom.Angle(pl.Plan.Travel.From), To: geom.Angle(pl.Plan.Travel.To),
		Mouth: pl.Plan.Seat.Mouth(), Same: plate.Coincide,
		Stops: make([]geom.Angle, len(pl.Stops)), Seats: make([]room.Hole, len(pl.Seats)),
	}
	for _, c := range pl.Plan.Catches {
		s.Balls = append(s.Balls, room.Hole{Place: pl.Sigma * geom.Angle(c.Azimuth), Radius: c.Radius})
	}
	for i, seat := range pl.Seats {
		s.Seats[i] = room.Hole{Place: pl.Sigma * seat.Azimuth, Radius: seat.Radius}
	}
	for i, stop := range pl.Stops {
		s.Stops[i] = stop.Angle
	}
	return s
}

// FalseClicks lists every false click of a plate, by turn.
func FalseClicks(pl *plate.Plate) []room.FalseClick {
	var out []room.FalseClick
	if len(pl.Plan.Catches) > 1 {
		sweepOf(pl).Clicks(func(c room.FalseClick) { out = append(out, c) })
	}
	slices.SortStableFunc(out, func(a, b room.FalseClick) int { return cmp.Compare(a.Turn, b.Turn) })
	return out
}
