package ui

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/room"
)

// roomKind names a way to make room.
func (w *Window) roomKind(k room.Kind) string { return w.words.Text("room.kind." + string(k)) }

// catchesIn writes a number of catches.
func catchesIn(w *Window, n int) string {
	if n == 1 {
		return w.words.Text("room.catch.one")
	}
	return w.words.Text("room.catch.many", words.Args{"N": n})
}

// roomSummary says what can be done, and why nothing can.
func (w *Window) roomSummary(rooms []detent.Room) string {
	fit := 0
	for _, r := range rooms {
		if r.Fits {
			fit++
		}
	}
	switch {
	case len(rooms) == 0:
		return w.words.Text("room.nostops")
	case fit == 0:
		return w.words.Text("room.nothing", w.roomNeeds(rooms[0]))
	case rooms[0].Kind == room.Nearest:
		return w.words.Text("room.onlynearest")
	}
	text := w.words.Text("room.found", words.Args{"N": fit})
	if p := w.store.Plan(); p.Travel.To-p.Travel.From >= 360 && !slices.ContainsFunc(rooms, func(r detent.Room) bool {
		return r.Kind == room.SharedRing || r.Kind == room.Divided || r.Kind == room.OneRing && r.Fits
	}) {
		text += " " + w.words.Text("room.endstops")
	}
	return text
}

func (w *Window) roomNeeds(r detent.Room) words.Args {
	return words.Args{"Needs": words.MM(r.Needs), "Most": words.MM(r.Most)}
}

// roomNumbers are the lines of a card.
func (w *Window) roomNumbers(r detent.Room) string {
	if !r.Fits {
		return w.words.Text("room.needs", w.roomNeeds(r))
	}
	lines := []string{w.words.Text("room.count", words.Args{"Catches": catchesIn(w, len(r.Plan.Catches)), "Seats": r.Seats})}
	if !math.IsInf(r.Web, 1) {
		lines = append(lines, w.words.Text("room.web", words.Args{"Web": words.MM(r.Web)}))
	}
	lines = append(lines, w.words.Text("room.rings", words.Args{"Rings": w.ringsOf(r.Plan)}))
	if plan.Equal(r.Plan, w.store.Plan()) {
		return strings.Join(append(lines, w.words.Text("room.same")), "\n")
	}
	return strings.Join(append(lines, w.roomClears(r)...), "\n")
}

// roomClears says how much of what is wrong with the plan as it is an answer
// mends; nothing where nothing is wrong.
func (w *Window) roomClears(r detent.Room) []string {
	key := "room.clears"
	switch {
	case r.Wrong == 0:
		return nil
	case r.Clears == 0:
		key = "room.clears.none"
	case r.Clears == r.Wrong:
		key = "room.clears.all"
	}
	return []string{w.words.Text(key, words.Args{"N": r.Clears, "Of": r.Wrong})}
}

// ringsOf lists the radii of a plan's rings, each once.
func (w *Window) ringsOf(p plan.Plan) string {
	var radii []float64
	for _, c := range p.Catches {
		if !slices.Contains(radii, c.Radius) {
			radii = append(radii, c.Radius)
		}
	}
	out := make([]string, len(radii))
	for i, r := range radii {
		out[i] = w.words.Length(r)
	}
	return strings.Join(out, ", ")
}

// roomDetail says all about one answer for a plan: where the catches go, which
// stops they hold, and what it costs.
func (w *Window) roomDetail(now plan.Plan, r detent.Room) string {
	t := w.words.Text
	if !r.Fits {
		return t("room.needs", w.roomNeeds(r))
	}
	lines := []string{t("room.why." + string(r.Kind))}
	for _, c := range r.Plan.Catches {
		lines = append(lines, t("room.catch", words.Args{"Name": c.Name, "Azimuth": words.Deg(c.Azimuth), "Radius": words.MM(c.Radius)}))
	}
	if moved := r.Moved(now); moved > 0 {
		lines = append(lines, t("room.moved", words.Args{"Moved": words.Deg(moved)}))
	}
	lines = append(lines, w.roomClears(r)...)
	var said []string
	for _, f := range r.Warnings {
		if title := t("check." + f.ID + ".title"); !slices.Contains(said, title) {
			said = append(said, title)
		}
	}
	if len(said) > 0 {
		lines = append(lines, t("room.warnings", words.Args{"Warnings": strings.Join(said, ", ")}))
	}
	return strings.Join(append(lines, t("room.click")), "\n")
}

// pairWords say what it does that two catches drop together.
func (w *Window) pairWords(r detent.Report) string {
	var out []string
	for _, p := range r.Pairs() {
		names := r.Plate.Plan.Catches
		args := words.Args{
			"A": names[p.Hold.Catches[0]].Name, "B": names[p.Hold.Catches[1]].Name, "Apart": words.Deg(p.Apart),
			"Sway": words.Deg(p.Sway(p.Shift)), "SwayAlone": words.Deg(p.SwayAlone()),
			"Std": words.Deg(p.Std()), "StdAlone": words.Deg(p.StdAlone()),
			"Takes": words.MM(p.Takes().Radians() * p.Radii[0]), "Misses": words.MM(p.Misses().Radians() * p.Radii[0]),
			"Chance": fmt.Sprintf("%.0f %%", 100*p.Hangs()),
		}
		text := w.words.Text("room.pair", args)
		if p.Hold.Clicks {
			args["Holding"], args["Alone"] = words.NM(p.Hold.Holding), words.NM(p.Alone.Holding)
			args["Centring"], args["CentringAlone"] = words.NM(p.Hold.Centring), words.NM(p.Alone.Centring)
			text = w.words.Text("room.pair.torque", args) + " " + text
		}
		out = append(out, text)
	}
	if len(out) == 0 {
		return w.words.Text("room.nopairs")
	}
	return strings.Join(out, "\n")
}
