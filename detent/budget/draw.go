package budget

import "math"

// Draw hands a model its random errors for one block of trials. It belongs to
// one call of the model and must not be kept.
type Draw struct {
	from    stream
	seed    uint64
	block   int
	columns [][]float64
	used    int
}

// blockSize is how many trials are worked out together: more than the 10,000 of
// JCGM 101 7.9.4 for an adaptive run, and few enough that a column stays in the
// processor's cache.
const blockSize = 1 << 14

// Column returns a column of numbers, one a trial, to work in. What is in it is
// left over from before.
func (d *Draw) Column() []float64 {
	if d.used == len(d.columns) {
		d.columns = append(d.columns, make([]float64, blockSize))
	}
	d.used++
	return d.columns[d.used-1]
}

// begin makes the draw ready for a block: all columns may be used again.
func (d *Draw) begin(seed uint64, block int) {
	d.seed, d.block = seed, block
	d.from, d.used = streamAt(seed, block), 0
}

// Fill sets every number of a column to an error of its own.
func (d *Draw) Fill(column []float64, t Term) {
	clear(column)
	d.Add(column, t)
}

// AddCommon adds to every number of a column an error that other columns have
// too. Errors of one name, a number, are the same in every trial and those of
// different names independent: they are drawn anew each time from a place of
// their own, so that nothing need be kept.
func (d *Draw) AddCommon(column []float64, name int, t Term) {
	own := d.from
	place := stream(d.seed ^ uint64(name+1)*golden)
	d.from = streamAt(place.next(), d.block)
	d.Add(column, t)
	d.from = own
}

// Add adds an error of its own to every number of a column.
func (d *Draw) Add(column []float64, t Term) {
	from := d.from // a copy stays in registers
	switch t.Shape {
	case Rectangular:
		for i := range column {
			column[i] += t.Size * signed(from.next())
		}
	case Disc:
		for i := range column {
			column[i] += t.Size * discStrips.draw(&from)
		}
	case Circle:
		for i := range column {
			column[i] += t.Size * math.Cos(math.Pi*signed(from.next()))
		}
	default:
		for i := range column {
			column[i] += t.Size * normalStrips.draw(&from)
		}
	}
	d.from = from
}
