package ui

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/angles"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// setKind is a kind of set of stops, with the fields it is made from.
type setKind struct {
	key    string // of its name
	both   string // key of the tick for both sides; empty: it has them already
	fields []setField
	make   func(*setReader) setResult
}

// setField is a field of a kind of set.
type setField struct {
	key   string                 // of its name
	first func(plan.Plan) string // what stands in it at first
}

// setResult is what a set comes to: stops on one side, and a word about them.
type setResult struct {
	stops []plan.Stop
	note  string
}

func fixed(text string) func(plan.Plan) string { return func(plan.Plan) string { return text } }

// endOfTravel is how far the table turns, a quarter turn at most: as far as a
// range of stops is likely to go.
func endOfTravel(p plan.Plan) string { return measure.Trim(min(p.Travel.To, 90), plainDecimals) }

// setKinds are the kinds, the most asked for first.
var setKinds = []setKind{
	{
		key: "set.polygons", both: "set.both",
		fields: []setField{{"set.sides", fixed("3-8")}},
		make: func(r *setReader) setResult {
			var out setResult
			for _, n := range r.sides(0) {
				label := r.w.words.Text("set.label.sides", words.Args{"N": n})
				out.stops = append(out.stops, plan.Stop{Angle: angles.Mitre(n).Degrees(), Label: label})
			}
			return out
		},
	},
	{
		key:    "set.turn",
		fields: []setField{{"set.parts", fixed("8")}, {"set.start", fixed("0")}},
		make: func(r *setReader) setResult {
			parts, start := r.count(0), r.angle(1)
			return r.plain(func() ([]geom.Angle, error) {
				all, err := angles.Turn(start, parts)
				for i, a := range all {
					all[i] = r.w.store.InTravel(a)
				}
				return all, err
			})
		},
	},
	{
		key: "set.arc", both: "set.both",
		fields: []setField{{"set.from", fixed("0")}, {"set.to", endOfTravel}, {"set.parts", fixed("4")}},
		make: func(r *setReader) setResult {
			from, to, parts := r.angle(0), r.angle(1), r.count(2)
			return r.plain(func() ([]geom.Angle, error) { return angles.Arc(from, to, parts) })
		},
	},
	{
		key: "set.steps", both: "set.both",
		fields: []setField{{"set.from", fixed("0")}, {"set.to", endOfTravel}, {"set.step", fixed("5")}},
		make: func(r *setReader) setResult {
			from, to, step := r.angle(0), r.angle(1), r.angle(2)
			return r.plain(func() ([]geom.Angle, error) { return angles.Steps(from, to, step) })
		},
	},
	{
		key: "set.moulding", both: "set.both.corners",
		fields: []setField{{"set.spring", fixed("38")}, {"set.corner", fixed("90")}},
		make: func(r *setReader) setResult {
			spring, corner := r.angle(0), r.angle(1)
			if r.err != nil {
				return setResult{}
			}
			mitre, bevel, err := angles.Moulding(spring, corner)
			r.fail(err)
			label := r.w.words.Text("set.label.moulding", words.Args{"Spring": words.Deg(spring), "Corner": words.Deg(corner)})
			return setResult{
				[]plan.Stop{{Angle: mitre.Degrees(), Label: label}},
				r.w.words.Text("set.note.moulding", words.Args{"Mitre": words.Deg(mitre), "Bevel": words.Deg(bevel)}),
			}
		},
	},
}

// setReader reads the fields of a set, and keeps the first thing wrong.
type setReader struct {
	w     *Window
	kind  setKind
	texts []string
	err   error
}

// plain makes stops without labels of angles.
func (r *setReader) plain(make func() ([]geom.Angle, error)) setResult {
	if r.err != nil {
		return setResult{}
	}
	all, err := make()
	r.fail(err)
	var out setResult
	for _, a := range all {
		out.stops = append(out.stops, plan.Stop{Angle: a.Degrees()})
	}
	return out
}

// fail keeps an error, worded for the window.
func (r *setReader) fail(err error) {
	var out *angles.RangeError
	if r.err == nil && errors.As(err, &out) {
		num := func(x float64) string { return measure.Trim(x, plainDecimals) }
		key := "set.bad.range"
		switch {
		case math.IsInf(out.Hi, 1):
			key = "set.bad.above"
		case out.Above:
			key = "set.bad.aboveto"
		}
		r.wrong(rangeNames[out.Name], r.w.words.Text(key, words.Args{"Lo": num(out.Lo), "Hi": num(out.Hi)}))
		return
	}
	if r.err == nil {
		r.err = err
	}
}

// rangeNames are what the window calls the numbers of a set.
var rangeNames = map[string]string{
	angles.From: "set.from", angles.To: "set.to", angles.Parts: "set.parts", angles.Step: "set.step",
	angles.SpringAngle: "set.spring", angles.CornerAngle: "set.corner",
}

// wrong keeps what is wrong with a field.
func (r *setReader) wrong(key, why string) {
	if r.err == nil {
		r.err = errors.New(r.w.words.Text("set.field", words.Args{"Field": r.w.words.Text(key), "Why": why}))
	}
}

// angle reads a field as an angle.
func (r *setReader) angle(i int) geom.Angle {
	a, err := measure.ParseAngle(r.texts[i])
	if err != nil {
		r.wrong(r.kind.fields[i].key, r.w.inWords(err))
	}
	return a
}

// count reads a field as a whole number.
func (r *setReader) count(i int) int {
	n, err := strconv.Atoi(strings.TrimSpace(r.texts[i]))
	if err != nil {
		r.wrong(r.kind.fields[i].key, r.w.words.Text("set.bad.count"))
	}
	return n
}

// sides reads a field as numbers of sides.
func (r *setReader) sides(i int) []int {
	n, err := angles.ParseSides(r.texts[i])
	if err != nil {
		r.wrong(r.kind.fields[i].key, r.w.words.Text("set.bad.sides", words.Args{"Lo": angles.MinSides, "Hi": angles.MaxSides}))
	}
	return n
}
