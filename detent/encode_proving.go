package detent

import (
	"stopwright/detent/geom"
	"stopwright/detent/proving"
)

// jsonProving is what the readings say; null where the plan has none that count.
// What they cannot tell is null.
type jsonProving struct {
	Common        float64      `json:"common"`
	CommonStd     *float64     `json:"common_std"`
	EccentricX    *float64     `json:"eccentric_x"`
	EccentricY    *float64     `json:"eccentric_y"`
	EccentricXStd *float64     `json:"eccentric_x_std"`
	EccentricYStd *float64     `json:"eccentric_y_std"`
	Seats         []jsonProved `json:"seats"`
	PlayAngle     *float64     `json:"play_angle"`
	PlayAngleStd  *float64     `json:"play_angle_std"`
	Noise         *float64     `json:"noise"`      // standard deviation of a stop about the law
	FenceTurn     geom.Angle   `json:"fence_turn"` // clockwise
	FenceEnd      *float64     `json:"fence_end"`
	MeasureNext   []jsonNext   `json:"measure_next"`
	Lost          []jsonLost   `json:"lost"` // readings whose stop is gone
}

// jsonProved is one measured stop. Residual is the seat's own, what common error
// and eccentricity do not explain; Difference is measured less wanted.
type jsonProved struct {
	Angle      geom.Angle `json:"angle"`
	Residual   float64    `json:"residual"`
	Move       float64    `json:"move"`
	Difference float64    `json:"difference"`
	Readings   int        `json:"readings"`
	Out        bool       `json:"out"`
}

type jsonNext struct {
	Need  string     `json:"need"`
	Angle geom.Angle `json:"angle"`
}

type jsonLost struct {
	Angle    float64 `json:"angle"`
	Measured float64 `json:"measured"`
}

// NeedName returns the word that stands for a need, in a report and in the keys
// of the words.
func NeedName(n proving.Need) string {
	return [...]string{"more-stops", "repeat", "both-ways", "wider-arc"}[n]
}

func (r Report) proving() *jsonProving {
	v, ok := r.Proving()
	if !ok {
		return nil
	}
	value := func(x proving.Value) (is, std *float64) {
		return known(x.Is, x.Known), known(x.Std, x.Known && x.Judged)
	}
	j := &jsonProving{
		Common: v.Common.Is + 0, FenceTurn: v.FenceTurn, FenceEnd: known(v.FenceEnd, v.HasFence),
		Noise: known(v.Noise.Is, v.Noise.Known),
		Seats: []jsonProved{}, MeasureNext: []jsonNext{}, Lost: []jsonLost{},
	}
	_, j.CommonStd = value(v.Common)
	j.EccentricX, j.EccentricXStd = value(v.EccentricX)
	j.EccentricY, j.EccentricYStd = value(v.EccentricY)
	j.PlayAngle, j.PlayAngleStd = value(v.Play)
	for _, s := range v.Seats {
		j.Seats = append(j.Seats, jsonProved{v.Stops[s.Stop], s.Own, s.Move, s.Difference + 0, s.Readings, s.Out})
	}
	for _, a := range v.Next {
		j.MeasureNext = append(j.MeasureNext, jsonNext{NeedName(a.Need), v.Stops[a.Stop]})
	}
	for _, i := range v.Lost {
		x := r.Plate.Plan.Readings[i]
		j.Lost = append(j.Lost, jsonLost{x.Angle + 0, x.Measured + 0})
	}
	return j
}
