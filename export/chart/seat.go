package chart

import (
	"cmp"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// Seat is one row of the chart: one hole and how to prove it.
type Seat struct {
	Tag     string
	Stops   []geom.Angle // those it serves, each once, ascending
	Label   string
	Radius  float64    // of its ring
	Azimuth geom.Angle // as seen at the drill
	At      geom.Point // as seen at the drill

	FromZero      Gauge // from the zero stop's seat
	FromNeighbour Gauge // from the seat before it on its ring, clockwise as seen at the drill
}

// seatRows makes a row of every seat, in the order of the plate's seats.
func seatRows(pl *plate.Plate, pins Pins) []Seat {
	rows := make([]Seat, len(pl.Seats))
	for i, s := range pl.Seats {
		rows[i] = Seat{
			Tag: s.Tag, Stops: stopsOf(s), Label: s.Label, Radius: s.Radius,
			Azimuth: azimuthSeen(pl.SeatsPart, s.Azimuth), At: plate.AtDrill(pl.SeatsPart, s.Centre),
		}
	}
	zero, before := pl.Datum(), neighbours(rows)
	for i := range rows {
		rows[i].FromZero = pins.between(rows, zero, i)
		rows[i].FromNeighbour = pins.between(rows, before[i], i)
	}
	return rows
}

// stopsOf lists the angles a seat serves. Services are by angle.
func stopsOf(s plate.Seat) []geom.Angle {
	out := make([]geom.Angle, 0, len(s.Serves))
	for _, v := range s.Serves {
		if n := len(out); n == 0 || out[n-1] != v.Angle {
			out = append(out, v.Angle)
		}
	}
	return out
}

// neighbours returns, for every row, the one before it on its ring, going
// clockwise as seen at the drill, all the way round; -1 where it is alone.
func neighbours(rows []Seat) []int {
	order := make([]int, len(rows))
	before := make([]int, len(rows))
	for i := range order {
		order[i], before[i] = i, -1
	}
	slices.SortFunc(order, func(a, b int) int {
		return cmp.Or(
			cmp.Compare(rows[a].Radius, rows[b].Radius),
			cmp.Compare(rows[a].Azimuth.Turn(), rows[b].Azimuth.Turn()),
			a-b,
		)
	})
	for from := 0; from < len(order); {
		to := from
		for to < len(order) && rows[order[to]].Radius == rows[order[from]].Radius {
			to++
		}
		for k := from; k < to && to-from > 1; k++ {
			last := k - 1
			if k == from {
				last = to - 1
			}
			before[order[k]] = order[last]
		}
		from = to
	}
	return before
}
