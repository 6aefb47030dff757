package scale

import (
	"math"
	"slices"
	"strconv"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Options says what scale is wanted. The zero Options is a scale of whole
// degrees read to a tenth, its index towards the operator.
type Options struct {
	Step    float64    // degrees, one of [Steps]; 0: whole degrees
	Reading Reading    // "": to a tenth
	Index   geom.Angle // where the index stands, from the operator's side, clockwise seen from above
	Rim     float64    // diameter of the rim as measured, mm; 0: the turntable's
}

// Check returns what is wrong with the options: a step or a reading there is
// not, a pair that makes no vernier, a rim not above 0.
func (o Options) Check() error {
	o = o.filled(plan.Plan{})
	if !slices.Contains(Steps, o.Step) {
		return refused("scale.no.step", words.Args{"Step": words.Deg(o.Step)})
	}
	if !slices.Contains(Readings, o.Reading) {
		return refused("scale.no.reading", words.Args{"Reading": strconv.Quote(string(o.Reading))})
	}
	if !(o.Rim >= 0) || math.IsInf(o.Rim, 0) {
		return refused("scale.no.rim", words.Args{"Rim": words.MM(o.Rim)})
	}
	if az := o.Index.Degrees(); math.IsNaN(az) || math.IsInf(az, 0) {
		return refused("scale.no.index", words.Args{"Index": words.Deg(az)})
	}
	_, err := NewVernier(o.Step, o.Reading)
	return err
}

// filled returns the options with what was left out.
func (o Options) filled(p plan.Plan) Options {
	if o.Step == 0 {
		o.Step = 1
	}
	if o.Reading == "" {
		o.Reading = Tenth
	}
	if o.Rim == 0 {
		o.Rim = p.TableDiameter()
	}
	return o
}

// dial is a scale worked out.
type dial struct {
	plate   *plate.Plate
	words   *words.Catalogue // whose language decides the decimal mark
	vernier Vernier
	radius  float64    // of the rim, mm
	index   geom.Angle // azimuth of the index, seen from above
	sense   geom.Angle // +1: a positive turn is clockwise
	lo, hi  int        // first and last graduation, in steps; of a whole turn the last one before it closes
	whole   bool       // goes right round
	plus    bool       // the table turns to above 0
	minus   bool       // and to below
}

// newDial works out a scale.
func newDial(pl *plate.Plate, c *words.Catalogue, o Options) (dial, error) {
	if err := o.Check(); err != nil {
		return dial{}, err
	}
	o = o.filled(pl.Plan)
	d := dial{plate: pl, words: c, radius: o.Rim / 2, index: 180 + o.Index, sense: 1}
	if pl.Plan.Arrangement.PositiveTurn == plan.Counterclockwise {
		d.sense = -1
	}
	d.vernier, _ = NewVernier(o.Step, o.Reading)
	travel := pl.Plan.Travel
	d.plus, d.minus = travel.To > 0 || travel.From >= 0, travel.From < 0
	d.lo, d.hi = int(math.Floor(travel.From/o.Step)), int(math.Ceil(travel.To/o.Step))
	if d.plus { // a vernier reads against graduations beyond the end
		d.hi += d.vernier.Lines
	}
	if d.minus {
		d.lo -= d.vernier.Lines
	}
	if turn := int(math.Round(360 / o.Step)); d.hi-d.lo >= turn {
		d.whole = true
		d.lo = max(d.lo, min(1-turn/2, d.hi-turn+1)) // about 0 where the travel is
		if travel.From >= 0 {
			d.lo = 0
		}
		d.hi = d.lo + turn - 1
	}
	return d, nil
}

// reading returns what graduation i is numbered, degrees.
func (d dial) reading(i int) float64 { return float64(i) * d.vernier.Step.Degrees() }

// onTable returns the azimuth of a reading on the table at zero, seen from above.
func (d dial) onTable(reading float64) geom.Angle { return d.index - d.sense*geom.Angle(reading) }
