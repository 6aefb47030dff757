package chart

import (
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/export/drawing"
)

// The decimals of a table for a spreadsheet: mm, degrees.
const (
	csvLength = 3
	csvAngle  = 4
)

// WriteCSV writes the chart as comma-separated values after RFC 4180: for each
// part a few rows of what the sheet says, an empty row, and a table with one
// row a hole. Numbers have a decimal point and a fixed number of decimals
// whatever the language; depth 0 is right through. A cell that means nothing is
// empty.
func WriteCSV(w io.Writer, c Chart) error {
	var rows [][]string
	for i, s := range c.Sheets {
		if i > 0 {
			rows = append(rows, nil)
		}
		rows = append(append(rows, csvHead(c, s)...), nil)
		if s.HoldsSeats() {
			rows = append(rows, csvSeats(c, s)...)
		} else {
			rows = append(rows, csvPockets(c, s)...)
		}
	}
	rows = append(append(rows, csvBill(c)...), csvOperations(c)...)
	out := csv.NewWriter(w)
	out.UseCRLF = true
	if err := out.WriteAll(rows); err != nil {
		return fmt.Errorf("chart: %w", err)
	}
	return nil
}

// csvBlank are the columns to be filled in by hand: four ticks and a reading.
var csvBlank = []string{"", "", "", "", ""}

// csvSeats returns the table of the seats.
func csvSeats(c Chart, s Sheet) [][]string {
	rows := make([][]string, 1, 1+len(s.Seats))
	rows[0] = heads(c, "seat", "stops", "label", "ring", "azimuth", "x", "y",
		"zero", "zero-chord", "zero-outside", "zero-inside",
		"neighbour", "neighbour-chord", "neighbour-outside", "neighbour-inside",
		"drill", "depth", "depth-stop", "marked", "spotted", "drilled", "gauged", "actual")
	drill := []string{mm(s.Drill.Diameter), mm(s.Drill.Depth), mm(s.Drill.Stop)}
	if s.Drill.Depth == 0 {
		drill[2] = ""
	}
	for _, r := range s.Seats {
		rows = append(rows, slices.Concat(
			[]string{guard(r.Tag), csvStops(r), guard(r.Label)},
			csvPlace(r.Radius, r.Azimuth, r.At), csvGauge(r.FromZero), csvGauge(r.FromNeighbour), drill, csvBlank,
		))
	}
	return rows
}

// csvPockets returns the table of the catches' pockets.
func csvPockets(c Chart, s Sheet) [][]string {
	rows := make([][]string, 1, 1+len(s.Pockets))
	rows[0] = heads(c, "catch", "ring", "azimuth", "x", "y", "recess", "recess-depth", "bore", "bore-depth",
		"marked", "spotted", "drilled", "gauged", "actual")
	for _, p := range s.Pockets {
		recess := []string{"", ""}
		if p.Rim > 0 {
			recess = []string{mm(p.Rim), mm(p.RimDepth)}
		}
		rows = append(rows, slices.Concat(
			[]string{guard(p.Tag)}, csvPlace(p.Radius, p.Azimuth, p.At),
			recess, []string{mm(p.Body), mm(p.BodyDepth)}, csvBlank,
		))
	}
	return rows
}

func csvPlace(radius float64, az geom.Angle, at geom.Point) []string {
	return []string{mm(radius), deg(az.Degrees()), mm(at.X), mm(at.Y)}
}

// csvHead returns what a sheet says above its table, a name and its value a row.
func csvHead(c Chart, s Sheet) [][]string {
	name := func(key string) string { return guard(c.Words.Text("chart.head." + key)) }
	rows := [][]string{
		{name("chart"), guard(c.Title)},
		{name("part"), guard(drawing.PartName(c.Words, s.Part))},
		{name("face"), guard(drawing.ViewName(c.Words, s.Part))},
		{name("turn"), guard(c.Words.Text("turn." + string(s.Turn)))},
		{name("units"), guard(c.Words.Text("chart.units"))},
		{name("date"), guard(c.Date)},
		{name("holes"), strconv.Itoa(len(s.Seats) + len(s.Pockets))},
	}
	if !s.HoldsSeats() {
		return rows
	}
	if s.Datum >= 0 {
		rows = append(rows, []string{name("zero"), guard(s.Seats[s.Datum].Tag)})
	}
	rows = append(rows,
		[]string{name("drill"), mm(s.Drill.Diameter)},
		[]string{name("point"), deg(s.Drill.Point)},
	)
	rows = append(append(rows, csvLoose(c, s.Loose)...), []string{name("pins"), mm(s.Pins.Diameter)})
	if s.Pins.Pivot > 0 {
		rows = append(rows, []string{name("pivot-pin"), mm(s.Pins.Pivot)})
		for _, radius := range s.rings() {
			rows = append(rows, []string{name("over-pivot"), mm(s.Pins.OverPivot(radius)), name("ring"), mm(radius)})
		}
	}
	return rows
}

func heads(c Chart, keys ...string) []string {
	out := make([]string, len(keys))
	for i, k := range keys {
		out[i] = guard(c.Words.Text("chart.csv." + k))
	}
	return out
}

func csvGauge(g Gauge) []string {
	switch {
	case g.From < 0:
		return []string{"", "", "", ""}
	case !g.Fits:
		return []string{guard(g.Tag), mm(g.Chord), "", ""}
	}
	return []string{guard(g.Tag), mm(g.Chord), mm(g.Outside), mm(g.Inside)}
}

func csvStops(r Seat) string {
	all := make([]string, len(r.Stops))
	for i, a := range r.Stops {
		all[i] = deg(a.Degrees())
	}
	return strings.Join(all, "; ")
}

func mm(x float64) string  { return measure.Fixed(x, csvLength) }
func deg(x float64) string { return measure.Fixed(x, csvAngle) }
