package budget

import (
	"context"
	"math"
	"runtime"
	"sync"
	"sync/atomic"
)

// Model says what follows from errors, many trials at a time.
type Model struct {
	Outputs int
	// Work draws errors and yields a column of results for every output, each
	// once and in any order. It is called from several goroutines at once and
	// must write to no column but those of its own [Draw].
	Work func(d *Draw, yield func(output int, column []float64))
}

// Options say how many trials are made.
type Options struct {
	Seed uint64 // the same seed gives the same result, on any number of processors
	Most int    // trials, rounded up to whole blocks of 16,384
	// Digits is to how many significant digits (1 or more) of its standard
	// uncertainty every result is wanted: trials end early once JCGM 101 7.9 is
	// satisfied that they are known. 0 makes all the trials.
	Digits int
}

// Result is what the trials say.
type Result struct {
	Trials    int
	Settled   bool // known to the digits asked for; false where none were
	Estimates []Estimate
}

// blocksPerRound is how many blocks are made between two looks at whether that
// is enough. It is the same whatever the number of processors, and so is what
// comes out.
const blocksPerRound = 8

// Run makes trials of a model until there are enough. It returns the context's
// error if that ends first.
func Run(ctx context.Context, m Model, o Options) (Result, error) {
	r := run{Model: m, Options: o, totals: make([]total, m.Outputs)}
	r.workers = make([]*worker, min(blocksPerRound, runtime.GOMAXPROCS(0)))
	for i := range r.workers {
		r.workers[i] = &worker{run: &r}
	}
	r.workers[0].findRanges(binsFor(m.Outputs))
	most := max(1, (o.Most+blockSize-1)/blockSize)
	done, settled := 0, false
	for done < most && !settled {
		count := min(blocksPerRound, most-done)
		if err := r.round(ctx, done, count); err != nil {
			return Result{}, err
		}
		done += count
		settled = o.Digits > 0 && r.settled()
	}
	out := Result{Trials: done * blockSize, Settled: settled, Estimates: make([]Estimate, m.Outputs)}
	for i := range r.totals {
		t := &r.totals[i]
		out.Estimates[i] = Estimate{Mean: t.all.mean, Std: t.all.std(), histogram: t.histogram}
	}
	return out, nil
}

// run is a run under way.
type run struct {
	Model
	Options
	workers []*worker
	totals  []total
}

// total is what is known of one output.
type total struct {
	all    moments
	blocks [4]moments // of the blocks' means, deviations and two ends of the interval
	mutex  sync.Mutex
	histogram
}

// blockFigures are what one block says of one output.
type blockFigures struct {
	moments
	low, high float64
}

// round makes count blocks from a first one on, shared out among the workers,
// and adds them up in order.
func (r *run) round(ctx context.Context, first, count int) error {
	figures := make([][]blockFigures, count)
	var next atomic.Int64
	var group sync.WaitGroup
	for _, w := range r.workers {
		group.Go(func() {
			for {
				k := int(next.Add(1)) - 1
				if k >= count || ctx.Err() != nil {
					return
				}
				figures[k] = w.block(ctx, first+k)
			}
		})
	}
	group.Wait()
	if err := ctx.Err(); err != nil {
		return err
	}
	for _, block := range figures {
		for i, f := range block {
			r.totals[i].addBlock(f)
		}
	}
	return nil
}

func (t *total) addBlock(f blockFigures) {
	t.all = t.all.plus(f.moments)
	for k, x := range [4]float64{f.mean, f.std(), f.low, f.high} {
		t.blocks[k] = t.blocks[k].plus(moments{n: 1, mean: x})
	}
}

// settled reports whether twice the standard deviation of each figure's mean
// over the blocks is within the tolerance, for every output (JCGM 101 7.9.4).
func (r *run) settled() bool {
	for i := range r.totals {
		t := &r.totals[i]
		limit := tolerance(t.all.std(), r.Digits)
		for _, b := range t.blocks {
			if b.n < 2 || 2*b.std()/math.Sqrt(b.n) > limit {
				return false
			}
		}
	}
	return true
}

// tolerance returns half a unit of the last of so many significant digits of an
// uncertainty (JCGM 101 7.9.2); 0 for 0.
func tolerance(std float64, digits int) float64 {
	if std == 0 {
		return 0
	}
	return math.Pow(10, math.Floor(math.Log10(std))-float64(digits)+1) / 2
}

// worker makes one block at a time.
type worker struct {
	*run
	draw  Draw
	count histogram
}

// findRanges lets the first block say how far the outputs spread.
func (w *worker) findRanges(bins int) {
	w.draw.begin(w.Seed, 0)
	w.Work(&w.draw, func(output int, column []float64) {
		low, high := math.Inf(1), math.Inf(-1)
		for _, x := range column {
			low, high = min(low, x), max(high, x)
		}
		w.totals[output].histogram = newHistogram(low, high, bins)
	})
}

// block makes one block of trials. What it returns after the context has ended
// is not complete.
func (w *worker) block(ctx context.Context, number int) []blockFigures {
	figures := make([]blockFigures, w.Outputs)
	w.draw.begin(w.Seed, number)
	w.Work(&w.draw, func(output int, column []float64) {
		if ctx.Err() != nil {
			return
		}
		figures[output] = w.tally(&w.totals[output], column)
	})
	return figures
}

// tally counts one output of one block.
func (w *worker) tally(t *total, column []float64) blockFigures {
	if len(w.count.counts) != len(t.counts) {
		w.count.counts = make([]uint32, len(t.counts))
	}
	w.count.low, w.count.width, w.count.total = t.low, t.width, 0
	clear(w.count.counts)
	w.count.count(column)
	f := blockFigures{moments: momentsOf(column)}
	if w.Digits > 0 {
		f.low, f.high = w.count.Quantile((1-coverage)/2), w.count.Quantile((1+coverage)/2)
	}
	t.mutex.Lock()
	defer t.mutex.Unlock()
	t.add(w.count)
	return f
}
