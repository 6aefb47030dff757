package detent

import (
	"encoding/json"
	"io"

	"stopwright/assets/words"
	"stopwright/detent/check"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// The report as other programs read it. Keys are only ever added. Lengths are
// mm, angles degrees. Lists are empty, never null; room is empty before [Study],
// pairs where no two catches drop together.
type (
	jsonReport struct {
		Seats    []jsonSeat    `json:"seats"`
		Findings []jsonFinding `json:"findings"`
		Click    []jsonClick   `json:"click"`
		Trueness jsonTrueness  `json:"trueness"`
		Season   jsonSeason    `json:"season"`
		Room     []jsonRoom    `json:"room"`
		Pairs    []jsonPair    `json:"pairs"`
		CutLine  *jsonCutLine  `json:"cut_line"`
		Proving  *jsonProving  `json:"proving"`
	}

	jsonSeat struct {
		Tag      string        `json:"tag"`
		Angle    geom.Angle    `json:"angle"`
		Label    string        `json:"label"`
		Catch    string        `json:"catch"`
		Part     plan.Part     `json:"part"`
		Face     plate.Face    `json:"face"`
		Azimuth  geom.Angle    `json:"azimuth"`
		Radius   float64       `json:"radius"`
		X        float64       `json:"x"`
		Y        float64       `json:"y"`
		DrillX   float64       `json:"drill_x"`
		DrillY   float64       `json:"drill_y"`
		Diameter float64       `json:"diameter"`
		Depth    float64       `json:"depth"`
		Web      *float64      `json:"web"`
		Serves   []jsonService `json:"serves"`
	}

	jsonService struct {
		Angle geom.Angle `json:"angle"`
		Catch string     `json:"catch"`
	}

	jsonFinding struct {
		ID       string         `json:"id"`
		Severity check.Severity `json:"severity"`
		Angles   []geom.Angle   `json:"angles"`
		Features []string       `json:"features"`
		Value    float64        `json:"value"`
		Limit    float64        `json:"limit"`
		Unit     string         `json:"unit"`
		Text     string         `json:"text"`
	}
)

// Encode writes the report as one JSON object, its sentences in the words of a
// catalogue. Numbers that come straight from the plan get 0 added: a typed -0
// is written as 0.
func (r Report) Encode(w io.Writer, c *words.Catalogue) error {
	out := jsonReport{Seats: []jsonSeat{}, Findings: []jsonFinding{}, Click: []jsonClick{}}
	for i := range r.Plate.Seats {
		out.Seats = append(out.Seats, r.seat(i))
	}
	for _, f := range r.Findings {
		out.Findings = append(out.Findings, r.finding(f, c))
	}
	for _, k := range r.Plate.Clicks {
		out.Click = append(out.Click, r.click(k))
	}
	out.Trueness, out.Season = r.trueness(), r.season()
	out.Room, out.Pairs = r.rooms(), r.pairs()
	out.CutLine, out.Proving = r.cutLine(), r.proving()
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	e.SetEscapeHTML(false)
	return e.Encode(out)
}

func (r Report) seat(i int) jsonSeat {
	pl := r.Plate
	s, p := pl.Seats[i], pl.Plan
	drill := plate.AtDrill(pl.SeatsPart, s.Centre)
	j := jsonSeat{
		Tag: s.Tag, Angle: s.Angle, Label: s.Label, Catch: p.Catches[s.Catch].Name,
		Part: pl.SeatsPart, Face: plate.FaceOf(pl.SeatsPart),
		Azimuth: s.Azimuth, Radius: s.Radius,
		X: s.Centre.X, Y: s.Centre.Y, DrillX: drill.X, DrillY: drill.Y,
		Diameter: p.Seat.Mouth(), Depth: p.Seat.Depth + 0,
	}
	if s.Nearest >= 0 {
		j.Web = &s.Web
	}
	for _, v := range s.Serves {
		j.Serves = append(j.Serves, jsonService{v.Angle, p.Catches[v.Catch].Name})
	}
	return j
}

func (r Report) finding(f check.Finding, c *words.Catalogue) jsonFinding {
	j := jsonFinding{
		ID: f.ID, Severity: f.Severity, Angles: []geom.Angle{}, Features: []string{},
		Value: f.Value + 0, Limit: f.Limit + 0, Unit: f.Unit, Text: check.Sentence(r.Plate, f, c),
	}
	j.Angles = append(j.Angles, f.Angles...)
	for _, k := range f.Features {
		j.Features = append(j.Features, check.FeatureName(c, r.Plate.Features[k]))
	}
	return j
}
