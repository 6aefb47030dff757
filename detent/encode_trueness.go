package detent

import (
	"stopwright/detent/angles"
	"stopwright/detent/budget"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
)

// The sides of the frames for which the report says how their joints close.
const (
	fewestSides = 3
	mostSides   = 16
)

type (
	// jsonTrueness says how far off the stops may be. All figures are to either
	// side, in degrees.
	jsonTrueness struct {
		Reference *geom.Angle   `json:"reference"` // the stop at which the table is set to zero
		Stops     []jsonError   `json:"stops"`
		Zeroed    []jsonError   `json:"zeroed"`
		Joint     []jsonJoint   `json:"joint"`
		AsDrilled []jsonDrilled `json:"as_drilled"`
		Reach     *jsonReach    `json:"reach"`   // null where nothing is over the target
		Sampled   *jsonSampled  `json:"sampled"` // null before the study
	}

	// jsonError is one stop; all is null where no ball clicks.
	jsonError struct {
		Angle      geom.Angle `json:"angle"`
		Worst      *float64   `json:"worst"`
		Std        *float64   `json:"std"`
		Interval95 *float64   `json:"interval95"`
		Shares     *jsonShare `json:"shares"` // of the variance, by cause, 0 to 1
	}

	jsonShare struct {
		Seat  float64 `json:"seat"`
		Catch float64 `json:"catch"`
		Guide float64 `json:"guide"`
		Rest  float64 `json:"rest"`
	}

	// jsonJoint is what the largest zeroed interval does to a frame: a gap in mm
	// at one corner, and at the last when all others are drawn shut; null where
	// the cuts do not meet at all.
	jsonJoint struct {
		Sides      int      `json:"sides"`
		Length     float64  `json:"length"`
		Gap        *float64 `json:"gap"`
		ClosingGap *float64 `json:"closing_gap"`
	}

	// jsonDrilled is a seat as measured, and the stop it gives; those are null
	// where the plan has no such stop any more.
	jsonDrilled struct {
		Angle       float64  `json:"angle"`
		Catch       string   `json:"catch"`
		X           float64  `json:"x"`
		Y           float64  `json:"y"`
		TrueAngle   *float64 `json:"true_angle"`
		Error       *float64 `json:"error"`
		ZeroedError *float64 `json:"zeroed_error"` // null unless the reference's seats are measured
		RadiusError *float64 `json:"radius_error"` // mm, outwards
	}

	// jsonReach is what single changes would bring the worst stop within the
	// target; null for one that cannot.
	jsonReach struct {
		Angle      geom.Angle `json:"angle"`
		RingRadius *float64   `json:"ring_radius"`
		RingFits   bool       `json:"ring_fits"`
		RadialPlay *float64   `json:"radial_play"`
		Methods    []string   `json:"methods"`
	}

	jsonSampled struct {
		Trials          int             `json:"trials"`
		Settled         bool            `json:"settled"`
		AllWithin95     geom.Angle      `json:"all_within95"`
		AllWithinTarget float64         `json:"all_within_target"`
		Stops           []jsonSampledAt `json:"stops"`
		Zeroed          []jsonSampledAt `json:"zeroed"`
	}

	jsonSampledAt struct {
		Angle      geom.Angle `json:"angle"`
		Mean       float64    `json:"mean"`
		Std        float64    `json:"std"`
		Interval95 float64    `json:"interval95"`
		Shortest   [2]float64 `json:"shortest95"`
	}

	// jsonSeason is what the year's air does; lengths mm, moisture per cent.
	jsonSeason struct {
		MoistureDry  float64  `json:"moisture_dry"`
		MoistureWet  float64  `json:"moisture_wet"`
		Growth       *float64 `json:"growth"` // of the turntable's diameter, dry to wet
		ClearanceDry *float64 `json:"clearance_dry"`
		ClearanceWet *float64 `json:"clearance_wet"`
		Choose       *float64 `json:"clearance_to_choose"`
	}
)

func (r Report) trueness() jsonTrueness {
	pl, t := r.Plate, r.Plate.Trueness
	out := jsonTrueness{Stops: []jsonError{}, Zeroed: []jsonError{}, Joint: []jsonJoint{}, AsDrilled: []jsonDrilled{}}
	if t.Reference >= 0 {
		out.Reference = &pl.Stops[t.Reference].Angle
	}
	for i, s := range pl.Stops {
		drilled, ok := t.Drilled(i)
		out.Stops = append(out.Stops, errorAt(s.Angle, drilled, ok))
		zeroed, ok := t.Zeroed(i)
		out.Zeroed = append(out.Zeroed, errorAt(s.Angle, zeroed, ok))
	}
	if stop, worst, ok := t.WorstZeroed(); ok {
		out.Joint = joints(pl, worst.Interval95)
		out.Reach = reachOf(pl, stop)
	}
	for _, d := range pl.Drilled {
		out.AsDrilled = append(out.AsDrilled, drilledSeat(pl, d))
	}
	if r.Sampled != nil {
		out.Sampled = r.sampled()
	}
	return out
}

func errorAt(angle geom.Angle, e plate.StopError, ok bool) jsonError {
	j := jsonError{
		Angle: angle, Worst: known(e.Worst.Degrees(), ok),
		Std: known(e.Std.Degrees(), ok), Interval95: known(e.Interval95.Degrees(), ok),
	}
	if ok {
		j.Shares = &jsonShare{e.Share(plate.SeatPlace), e.Share(plate.CatchPlace), e.Share(plate.GuidePlay), e.Share(plate.BallRest)}
	}
	return j
}

func joints(pl *plate.Plate, off geom.Angle) []jsonJoint {
	var out []jsonJoint
	for n := fewestSides; n <= mostSides; n++ {
		j := jsonJoint{Sides: n, Length: angles.JointLength(pl.Plan.Shop.StockWidth, n)}
		corner, ok := angles.CornerGap(j.Length, off)
		j.Gap = known(corner, ok)
		closing, ok := angles.ClosingGap(j.Length, n, off)
		j.ClosingGap = known(closing, ok)
		out = append(out, j)
	}
	return out
}

func drilledSeat(pl *plate.Plate, d plate.DrilledSeat) jsonDrilled {
	there := d.Stop >= 0
	j := jsonDrilled{
		Angle: d.Angle + 0, Catch: d.AsDrilled.Catch, X: d.X + 0, Y: d.Y + 0,
		TrueAngle: known(d.True.Degrees(), there), Error: known(d.Off.Degrees(), there),
		RadiusError: known(d.Radial, there),
	}
	if d.Catch >= 0 {
		j.Catch = pl.Plan.Catches[d.Catch].Name
	}
	if there {
		zeroed, ok := pl.ReallyOffZeroed(d.Stop)
		j.ZeroedError = known(zeroed.Degrees(), ok)
	}
	return j
}

func reachOf(pl *plate.Plate, stop int) *jsonReach {
	r, ok := pl.ReachOf(stop, geom.Angle(pl.Plan.Shop.Target))
	if !ok {
		return nil
	}
	j := jsonReach{
		Angle: pl.Stops[stop].Angle, RingRadius: known(r.Ring, r.Ring > 0), RingFits: r.RingFits,
		RadialPlay: known(r.Play, r.Play > 0), Methods: []string{},
	}
	for _, m := range r.Methods {
		j.Methods = append(j.Methods, m.ID)
	}
	return &j
}

func (r Report) sampled() *jsonSampled {
	s := r.Sampled
	j := jsonSampled{
		Trials: s.Trials, Settled: s.Settled, AllWithin95: s.AllWithin95, AllWithinTarget: s.AllWithinTarget,
		Stops: []jsonSampledAt{}, Zeroed: []jsonSampledAt{},
	}
	for i, stop := range r.Plate.Stops {
		j.Stops = append(j.Stops, sampledAt(stop.Angle, s.Drilled[i]))
		j.Zeroed = append(j.Zeroed, sampledAt(stop.Angle, s.Zeroed[i]))
	}
	return &j
}

func sampledAt(angle geom.Angle, e budget.Estimate) jsonSampledAt {
	short := e.Shortest()
	return jsonSampledAt{angle, e.Mean + 0, e.Std, e.HalfWidth(), [2]float64{short.Low + 0, short.High + 0}}
}

func (r Report) season() jsonSeason {
	s := plate.NewSeason(r.Plate.Plan)
	return jsonSeason{
		MoistureDry: s.Dry.Moisture, MoistureWet: s.Wet.Moisture,
		Growth:       known(s.Growth.Typical, s.Growth.Known()),
		ClearanceDry: known(s.Dry.Clearance, s.HasCollar), ClearanceWet: known(s.Wet.Clearance, s.HasCollar),
		Choose: known(s.Choose, s.HasCollar),
	}
}
