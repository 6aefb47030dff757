package scale

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// Sheet returns the flat scale to be printed at full size. The error is one of
// [Options.Check].
func Sheet(pl *plate.Plate, info drawing.Info, o Options) (tile.Sheet, error) {
	d, err := newDial(pl, info.Words, o)
	if err != nil {
		return tile.Sheet{}, err
	}
	flat, err := Drawing(pl, info.Words, o)
	s := d.sheet(info, "scale.what.flat", info.Words.Text("scale.step.ring"))
	s.Drawing = flat
	return s, err
}

// Noted returns the flat scale for a drawing's file, with what must be said below
// it. The error is one of [Options.Check].
func Noted(pl *plate.Plate, info drawing.Info, o Options) (drawing.Drawing, error) {
	s, err := Sheet(pl, info, o)
	if err != nil {
		return drawing.Drawing{}, err
	}
	return s.Noted(info.Words), nil
}

// NotedStrip returns the whole strip in the same way.
func NotedStrip(pl *plate.Plate, info drawing.Info, o Options) (drawing.Drawing, error) {
	d, err := newDial(pl, info.Words, o)
	if err != nil {
		return drawing.Drawing{}, err
	}
	s := d.sheet(info, "scale.what.strip", d.wrap(info.Words))
	s.Drawing, err = Strip(pl, info.Words, o)
	return s.Noted(info.Words), err
}

// wrap says how a strip is put round the rim: one that goes right round shows by
// how it closes whether it fits, another does not.
func (d dial) wrap(c *words.Catalogue) string {
	if d.whole {
		return c.Text("scale.step.strip")
	}
	return c.Text("scale.step.strip.part", words.Args{"Round": words.MM(math.Round(2*math.Pi*d.radius*10) / 10)})
}

// sheet returns all that is said with a scale; fix is its first step.
func (d dial) sheet(info drawing.Info, what, fix string) tile.Sheet {
	t := info.Words.Text
	title := drawing.Title(d.plate.Plan, info.Words, t("scale.title"))
	way := "scale.grow.counterclockwise"
	if d.sense < 0 {
		way = "scale.grow.clockwise"
	}
	apart := d.vernier.Step.Radians() * d.radius
	steps := []string{
		fix, t("scale.step.index"),
		t(way, words.Args{"Step": words.Deg(d.vernier.Step), "Apart": words.MM(math.Round(apart*100) / 100)}),
	}
	if n := d.vernier.Lines; n > 0 {
		steps = append(steps, t("scale.step.read", words.Args{"Count": d.count(info.Words)}))
	}
	return tile.Sheet{Title: title, What: t(what), Date: info.Date, Steps: steps}
}

// count returns what one line of the vernier reads, in words.
func (d dial) count(c *words.Catalogue) string {
	if count := d.vernier.Value(1).Degrees(); !whole(count * 10) {
		return c.Text("scale.minutes", words.Args{"N": int(math.Round(count * 60))})
	}
	return c.Angle(Tenth.Count().Degrees())
}
