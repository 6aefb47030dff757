package check

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// betterSeat proposes the standard seat that suits the plan best: see
// [plate.Plate.BestSeat]. All catches seat alike, so the one that pulls home
// with least decides.
func betterSeat(pl *plate.Plate, _ Finding) *Fix {
	return bestSeat(pl, []int{pl.Innermost()}, nil)
}

// seatThat proposes the best standard seat with which the catches of a finding
// do better than what it tells of.
func seatThat(suits func(p plan.Plan, c plate.SeatChoice) bool) func(*plate.Plate, Finding) *Fix {
	return func(pl *plate.Plate, f Finding) *Fix {
		return bestSeat(pl, f.Pockets, func(c plate.SeatChoice) bool { return suits(pl.Plan, c) })
	}
}

func bestSeat(pl *plate.Plate, catches []int, suits func(plate.SeatChoice) bool) *Fix {
	best, ok := pl.BestSeat(catches, suits)
	if !ok || best.Seat == pl.Plan.Seat {
		return nil
	}
	return takeSeat(pl.Plan.Seat, best.Seat)
}

// takeSeat changes the plan's seat, and says so by what is changed.
func takeSeat(old, seat plan.Seat) *Fix {
	fix := &Fix{
		Key:  "fix.drill",
		Args: words.Args{"New": words.MM(seat.Diameter), "Old": words.MM(old.Diameter), "Depth": words.MM(seat.Depth)},
		Apply: func(p plan.Plan) plan.Plan {
			p.Seat = seat
			return p
		},
	}
	switch {
	case seat.Diameter == old.Diameter:
		fix.Key = "fix.depth"
	case seat.Form == plan.Countersunk:
		fix.Key = "fix.countersink"
	}
	return fix
}
