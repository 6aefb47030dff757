package plate

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// DrilledSeat is a seat as it really came out: an entry of the plan's log.
type DrilledSeat struct {
	plan.AsDrilled
	Stop  int // into the plate's stops; -1 when there is no such stop any more
	Catch int // into the plan's catches; -1 when there is no such catch

	// Where Stop and Catch are known:
	True   geom.Angle // the stop it gives, with the catch where the plan has it
	Off    geom.Angle // that less the stop's own angle
	Radial float64    // how far outside its ring it lies, mm
}

// angleStep (degrees) is how near an entry of the log must be to a stop to be
// about it.
const angleStep = 1e-6

// service is a stop and a catch that drops there.
type service struct{ stop, catch int }

// readDrilled goes through the plan's log. An entry without a catch is about the
// plan's first.
func (pl *Plate) readDrilled() {
	if len(pl.Plan.AsDrilled) == 0 {
		return
	}
	catches := map[string]int{"": 0}
	for i, c := range pl.Plan.Catches {
		catches[c.Name] = i
	}
	type place struct {
		angle float64 // in steps
		catch int
	}
	at := map[place]int{}
	for i, s := range slices.Backward(pl.Stops) { // so that the first of equals counts
		for _, c := range s.Catches {
			at[place{math.Round(s.Angle.Degrees() / angleStep), c}] = i
		}
	}
	pl.measured = map[service]int{}
	for i, entry := range pl.Plan.AsDrilled {
		d := DrilledSeat{AsDrilled: entry, Stop: -1, Catch: -1}
		if c, known := catches[entry.Catch]; known {
			d.Catch = c
			if stop, known := at[place{math.Round(entry.Angle / angleStep), c}]; known {
				d.Stop = stop
				pl.judge(&d)
				pl.measured[service{stop, c}] = i
			}
		}
		pl.Drilled = append(pl.Drilled, d)
	}
}

// judge works out what stop a seat gives.
func (pl *Plate) judge(d *DrilledSeat) {
	at := AtDrill(pl.SeatsPart, geom.Point{X: d.X, Y: d.Y}) // a mirror undoes itself
	own := pl.Plan.Catches[d.Catch]
	stop := pl.Stops[d.Stop].Angle
	d.Off = (pl.Sigma*(at.Azimuth()-geom.Angle(own.Azimuth)) - stop).Wrap()
	d.True = stop + d.Off
	d.Radial = at.Norm() - own.Radius
}

// ReallyOff returns how far a stop will really be off, from the seats measured:
// where several catches drop together it is what they settle on, and all of
// their seats must have been measured. The last entry of a seat counts.
func (pl *Plate) ReallyOff(stop int) (off geom.Angle, ok bool) {
	var pulls, total float64
	for _, c := range pl.Stops[stop].Catches {
		k, measured := pl.measured[service{stop, c}]
		if !measured {
			return 0, false
		}
		r := pl.Plan.Catches[c].Radius
		pulls += r * r * pl.Drilled[k].Off.Degrees()
		total += r * r
	}
	return geom.Angle(pulls / total), true
}

// ReallyOffZeroed is what [Plate.ReallyOff] returns with the table set to zero at
// the reference, whose seats must have been measured too.
func (pl *Plate) ReallyOffZeroed(stop int) (off geom.Angle, ok bool) {
	here, ok := pl.ReallyOff(stop)
	if !ok {
		return 0, false
	}
	there, ok := pl.ReallyOff(pl.Trueness.Reference)
	return here - there, ok
}
