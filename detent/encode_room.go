package detent

import (
	"math"
	"slices"

	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/detent/room"
)

// jsonRoom is one way to make room. Web is null where there is one seat alone;
// needs and most are the radii of a ring that does not fit, else null.
type jsonRoom struct {
	Kind    room.Kind      `json:"kind"`
	Fits    bool           `json:"fits"`
	Catches []jsonPlace    `json:"catches"`
	Stops   []jsonRoomStop `json:"stops"`
	Web     *float64       `json:"web"`
	Seats   int            `json:"seats"`
	Needs   *float64       `json:"needs"`
	Most    *float64       `json:"most"`

	Warnings []string `json:"warnings"` // ids of what the plan has not got as it is
	Clears   int      `json:"clears"`   // how many errors and warnings of the plan as it is are gone
}

type jsonPlace struct {
	Name    string  `json:"name"`
	Azimuth float64 `json:"azimuth"`
	Radius  float64 `json:"radius"`
}

type jsonRoomStop struct {
	Angle geom.Angle `json:"angle"`
	Catch string     `json:"catch"`
}

func (r Report) rooms() []jsonRoom {
	out := []jsonRoom{}
	for _, m := range r.Rooms {
		j := jsonRoom{
			Kind: m.Kind, Fits: m.Fits, Catches: []jsonPlace{}, Stops: []jsonRoomStop{}, Seats: m.Seats,
			Web: known(m.Web, !math.IsInf(m.Web, 1)), Needs: known(m.Needs, !m.Fits), Most: known(m.Most, !m.Fits),
			Warnings: []string{}, Clears: m.Clears,
		}
		for _, c := range m.Plan.Catches {
			j.Catches = append(j.Catches, jsonPlace{c.Name, c.Azimuth + 0, c.Radius})
		}
		for _, s := range plate.StopsOf(m.Plan) {
			j.Stops = append(j.Stops, jsonRoomStop{s.Angle, m.Plan.Catches[s.Catches[0]].Name})
		}
		for _, f := range m.Warnings {
			if !slices.Contains(j.Warnings, f.ID) {
				j.Warnings = append(j.Warnings, f.ID)
			}
		}
		out = append(out, j)
	}
	return out
}
