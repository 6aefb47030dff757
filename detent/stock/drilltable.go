package stock

import (
	_ "embed" // for the table of drills
	"encoding/csv"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// drillTable holds system, designation, inch and mm of each drill.
//
//go:embed drills.csv
var drillTable string

// drillSources says where each system of the table comes from.
var drillSources = map[string]struct {
	system System
	Evidence
}{
	"metric":   {Metric, Evidence{"BS 328, tenths of a millimetre", Transcribed}},
	"fraction": {Fraction, Evidence{"sixty-fourths of an inch", Exact}},
	"number":   {Number, Evidence{"ASME B94.11M", Transcribed}},
	"letter":   {Letter, Evidence{"ASME B94.11M", Transcribed}},
}

// drills returns the shared table, the smallest drill first.
var drills = sync.OnceValue(func() []Drill {
	list, err := readDrills(strings.NewReader(drillTable))
	if err != nil {
		panic(err) // cannot happen: the table is compiled in and a test reads it
	}
	return list
})

// readDrills reads a table of drills, whose first line names its columns.
func readDrills(r io.Reader) ([]Drill, error) {
	lines := csv.NewReader(r)
	lines.FieldsPerRecord = 4
	rows, err := lines.ReadAll()
	if err != nil {
		return nil, fmt.Errorf("drills: %w", err)
	}
	list := make([]Drill, 0, len(rows))
	for i, row := range rows {
		if i == 0 {
			continue
		}
		d, err := readDrill(row)
		if err != nil {
			return nil, fmt.Errorf("drills: line %d: %w", i+1, err)
		}
		list = append(list, d)
	}
	slices.SortFunc(list, bySize)
	return list, nil
}

// readDrill reads one line of the table.
func readDrill(row []string) (Drill, error) {
	source, ok := drillSources[row[0]]
	if !ok {
		return Drill{}, fmt.Errorf("no system of drills is called %q", row[0])
	}
	inch, err := strconv.ParseFloat(row[2], 64)
	if err != nil {
		return Drill{}, fmt.Errorf("inch: %w", err)
	}
	mm, err := strconv.ParseFloat(row[3], 64)
	if err != nil {
		return Drill{}, fmt.Errorf("mm: %w", err)
	}
	return Drill{source.system, row[1], mm, inch, source.Evidence}, nil
}
