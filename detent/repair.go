package detent

import (
	"math"
	"slices"

	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// RepairKind is a way to put a seat right.
type RepairKind string

// The ways. Beside, another seat is drilled clear of the old one; otherwise the
// old hole must first be filled, since a drill would run into it.
const (
	Plug    RepairKind = "plug"    // fill the old hole with a plug and drill again
	Bush    RepairKind = "bush"    // bore for a bush whose hole is off its middle
	Pattern RepairKind = "pattern" // bore new pockets and drill all seats again on clean ground
)

// Repair is one way to put a seat, or the whole pattern, right. Places are mm in
// the part that holds the seats, seen from above, table at zero.
type Repair struct {
	Kind RepairKind
	Fits bool
	// InTheWay are what keeps it from fitting: findings of Trial.
	InTheWay []check.Finding
	// Trial is the plate that was tried, with what is cut anew as its features.
	Trial Report

	Seat     int // into the plate's seats; -1: the whole pattern
	Old, New geom.Point
	Move     float64    // along the ring, clockwise +
	Towards  geom.Angle // azimuth of the move
	Diameter float64    // of the plug or the bush
	Depth    float64    // to bore for it; 0: right through
	Beside   bool       // the new seat is clear of the old one, which is filled all the same

	Turned geom.Angle // of a pattern: by how much the catches are moved round, clockwise
	Radius float64    // of a pattern: by how much every ring is wider
}

// The material (mm) left round a seat in a bush of metal, and by how much a plug
// or a bush goes deeper than the seat it holds. Common practice, no source.
const (
	bushWall   = 1.0
	plugDeeper = 2.0
)

// RepairsOf lists the ways to move the seat of a plate by move mm along its
// ring, clockwise +, each tried for room.
func (r Report) RepairsOf(seat int, move float64) []Repair {
	return []Repair{r.filled(Plug, seat, move), r.filled(Bush, seat, move), r.Clean()}
}

// filled tries a plug or a bush, centred on the old hole and large enough to
// hold the new one with its wall.
func (r Report) filled(kind RepairKind, seat int, move float64) Repair {
	pl := r.Plate
	s, p := pl.Seats[seat], pl.Plan
	mouth := p.Seat.Mouth()
	wall, step := p.Rules.Web, 1.0
	if kind == Bush {
		wall, step = bushWall, 2 // bushes are sold in even sizes
	}
	out := Repair{Kind: kind, Seat: seat, Old: s.Centre, Move: move}
	out.New = s.Centre.Rotate(geom.FromRadians(move / s.Radius))
	out.Towards = (s.Azimuth + 90).Wrap()
	if move < 0 {
		out.Towards = (s.Azimuth - 90).Wrap()
	}
	off := out.New.Distance(out.Old)
	out.Beside = off >= mouth+p.Rules.Web-check.Slack
	if kind == Plug && out.Beside {
		off, wall = 0, 0 // it only fills the old hole
	}
	out.Diameter = math.Ceil((2*(off+mouth/2+wall)-check.Slack)/step) * step
	if bottom, blind := plate.SeatShape(p.Seat).Bottom(); blind && p.Seat.ReliefDiameter == 0 {
		out.Depth = math.Ceil(bottom + plugDeeper)
		if out.Depth >= plate.ThicknessOf(p, pl.SeatsPart) {
			out.Depth = 0
		}
	}
	trial := p.Clone()
	trial.Stops = without(pl, seat)
	added := len(trial.Features)
	trial.Features = append(trial.Features, plan.Feature{
		Part: pl.SeatsPart, Kind: plan.Hole, X: out.Old.X, Y: out.Old.Y, Diameter: out.Diameter,
	})
	out.Trial = Solve(trial)
	for _, f := range out.Trial.Findings {
		// A plug is flush: the ball rolls over it.
		if f.Severity == check.Error && f.ID != "track-crossed" && slices.Contains(f.Features, added) {
			out.InTheWay = append(out.InTheWay, f)
		}
	}
	out.Fits = len(out.InTheWay) == 0 && r.holds(out, seat, added)
	return out
}

// holds reports whether a plug keeps off the part's edges and its other
// features, and the new seat off other seats; a new seat that is not inside the
// plug keeps off edges and features too.
func (r Report) holds(x Repair, seat, own int) bool {
	pl, p := r.Plate, r.Plate.Plan
	mouth := p.Seat.Mouth()
	fits := func(at geom.Point, half float64) bool {
		if plate.OutlineOf(p, pl.SeatsPart).Inside(at)-half < p.Rules.Edge-check.Slack {
			return false
		}
		if bore := plate.BoreOf(p, pl.SeatsPart); bore > 0 && at.Norm()-bore/2-half < p.Rules.Edge-check.Slack {
			return false
		}
		for i, f := range x.Trial.Plate.Features {
			if i != own && f.Part == pl.SeatsPart && f.Clear(at, half) < p.Rules.Web-check.Slack {
				return false
			}
		}
		return true
	}
	if !fits(x.Old, x.Diameter/2) || x.Beside && !fits(x.New, mouth/2) {
		return false
	}
	for i, s := range pl.Seats {
		if i != seat && s.Centre.Distance(x.New)-mouth < p.Rules.Web-check.Slack {
			return false
		}
	}
	return true
}

// without returns a plan's stops but for those that a seat serves.
func without(pl *plate.Plate, seat int) []plan.Stop {
	gone := map[int]map[string]bool{} // catches by the plate's stop
	for _, v := range pl.Seats[seat].Serves {
		if gone[v.Stop] == nil {
			gone[v.Stop] = map[string]bool{}
		}
		gone[v.Stop][pl.Plan.Catches[v.Catch].Name] = true
	}
	var out []plan.Stop
	for i, s := range pl.Stops {
		var left []string
		for _, c := range s.Catches {
			if name := pl.Plan.Catches[c].Name; !gone[i][name] {
				left = append(left, name)
			}
		}
		if len(left) > 0 {
			out = append(out, plan.Stop{Angle: s.Angle.Degrees(), Catches: left})
		}
	}
	return out
}
