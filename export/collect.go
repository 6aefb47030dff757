package export

import (
	"bytes"
	"context"
	"path/filepath"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
)

// Progress is how far a piece of work has come.
type Progress struct {
	Done, Total int
	File        string // being made, its name alone; empty: the last step
}

// bundled is one file of a bundle, made and held until all are.
type bundled struct {
	name   string
	format string // of [Formats]; empty: the plan, the contents
	data   []byte
}

// LeftOut is a format that cannot be made of a plan.
type LeftOut struct {
	Format string
	Reason words.Saying // one reason a line
}

// collection is what a bundle holds.
type collection struct {
	files   []bundled
	leftOut []LeftOut
}

// collect makes every file of every format and the plan's own, in memory, all
// named after the plan. Nothing meets the disk here, so a format that gives an
// error cannot be made of this plan, whatever the disk: it is left out and told.
// It gives up with the context's error.
func collect(ctx context.Context, r detent.Report, q BundleRequest, tell func(Progress)) (collection, error) {
	var c collection
	jobs := q.jobs(r)
	total := 2 // the plan and the contents
	for _, j := range jobs {
		total += len(j.outputs)
	}
	for _, j := range jobs {
		made, err := j.make(ctx, func(file string, done int) { tell(Progress{len(c.files) + done, total, file}) })
		switch {
		case ctx.Err() != nil:
			return c, ctx.Err()
		case err != nil:
			c.leftOut = append(c.leftOut, LeftOut{j.format, Reason(err)})
		default:
			c.files = append(c.files, made...)
		}
	}
	own, err := q.planFile(r.Plate.Plan)
	if err != nil {
		return c, err
	}
	tell(Progress{total - 1, total, contentsName})
	c.files = append(c.files, own)
	page, err := contentsOf(r, q, c)
	if err != nil {
		return c, cannotWrite(contentsName, err)
	}
	c.files = append([]bundled{{name: contentsName, data: page}}, c.files...)
	return c, ctx.Err()
}

// job is one format's share of a bundle.
type job struct {
	format  string
	outputs []output
}

// jobs lists what is to be made. Only the names of the files count: they are
// kept in memory first.
func (q BundleRequest) jobs(r detent.Report) []job {
	var all []job
	for _, f := range Formats {
		path := filepath.Join(q.To, q.Name+f.Ending)
		all = append(all, job{f.Name, f.outputs(r, q.Request, path)})
	}
	return all
}

// make makes a format's files, telling each before it is begun.
func (j job) make(ctx context.Context, tell func(file string, done int)) ([]bundled, error) {
	var made []bundled
	for i, o := range j.outputs {
		name := filepath.Base(o.path)
		tell(name, i)
		b := untilDone{ctx: ctx}
		if err := o.write(&b); err != nil {
			return nil, err
		}
		made = append(made, bundled{name, j.format, b.Bytes()})
	}
	return made, nil
}

// planFile makes the file of the plan itself.
func (q BundleRequest) planFile(p plan.Plan) (bundled, error) {
	f := bundled{name: q.Name + planEnding}
	var b bytes.Buffer
	if err := plan.Encode(&b, p); err != nil {
		return f, cannotWrite(f.name, err)
	}
	f.data = b.Bytes()
	return f, nil
}

// planEnding is what plan files are called by.
const planEnding = ".stopwright"

// untilDone holds what is written until a context is done.
type untilDone struct {
	ctx context.Context
	bytes.Buffer
}

// Write returns the context's error when it is done.
func (b *untilDone) Write(p []byte) (int, error) {
	if err := b.ctx.Err(); err != nil {
		return 0, err
	}
	return b.Buffer.Write(p)
}

// isZip reports whether a path names a zip file.
func isZip(path string) bool { return strings.EqualFold(filepath.Ext(path), ".zip") }
