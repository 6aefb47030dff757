package detent

import (
	"stopwright/detent/geom"
	"stopwright/detent/plan"
)

// jsonCutLine is where the cut crosses the fence; null where the plan gives no
// tool. What cannot be told is null.
type jsonCutLine struct {
	Crossings       []jsonCrossing `json:"crossings"`
	Travel          float64        `json:"travel"`
	BestFence       *float64       `json:"best_fence"`
	BestFenceTravel *float64       `json:"best_fence_travel"`
	BestOffset      *float64       `json:"best_offset"`
	TravelLeft      float64        `json:"travel_left"`  // of the cut's left edge
	TravelRight     float64        `json:"travel_right"` // of its right edge
	OpeningLeft     *float64       `json:"opening_left"` // that the tool sweeps in the fence
	OpeningRight    *float64       `json:"opening_right"`
	FenceBack       float64        `json:"fence_back"`
	FenceScrews     [2]jsonPoint   `json:"fence_screws"`
	Fit             *jsonMarkFit   `json:"fit"`
	MarkNext        *geom.Angle    `json:"mark_next"`
}

type jsonPoint struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

type jsonCrossing struct {
	Angle geom.Angle `json:"angle"`
	X     *float64   `json:"x"`
	Past  *float64   `json:"past"` // how far the tool cuts across the fence's face
}

type jsonMarkFit struct {
	Datum       float64   `json:"datum"`
	Offset      float64   `json:"offset"`
	Fence       float64   `json:"fence"`
	OffsetStd   *float64  `json:"offset_std"`
	FenceStd    *float64  `json:"fence_std"`
	Residuals   []float64 `json:"residuals"` // one a mark
	Travel      float64   `json:"travel"`
	BestFence   float64   `json:"best_fence"`
	TravelAfter float64   `json:"travel_after"`
	Weak        bool      `json:"weak"` // the angles are too close together
	ToolSlot    float64   `json:"tool_slot"`
	FenceSlot   float64   `json:"fence_slot"`
}

func (r Report) cutLine() *jsonCutLine {
	c, ok := r.CutLine()
	if !ok {
		return nil
	}
	j := &jsonCutLine{
		Crossings: []jsonCrossing{},
		Travel:    c.Travel.Wander() + 0,
		BestFence: known(c.BestFence.At, c.BestFence.Known), BestFenceTravel: known(c.BestFence.Wander, c.BestFence.Known),
		BestOffset: known(c.BestOffset.At, c.BestOffset.Known),
		TravelLeft: c.KeepsLeft, TravelRight: c.KeepsRight,
		OpeningLeft: known(c.SlotLeft, c.HasSlot), OpeningRight: known(c.SlotRight, c.HasSlot),
		FenceBack: c.Fence + c.Body.Thickness, MarkNext: c.Next,
	}
	for i, s := range c.Screws(c.Body) {
		j.FenceScrews[i] = jsonPoint{s.X + 0, s.Y + 0}
	}
	for _, x := range c.Crossings {
		j.Crossings = append(j.Crossings, jsonCrossing{x.Angle, known(x.X, x.Meets), known(x.Past, x.Meets && reaches(r.Plate.Plan))})
	}
	if f := c.Marks; f != nil {
		j.Fit = &jsonMarkFit{
			Datum: f.Datum + 0, Offset: f.Offset + 0, Fence: f.Fence + 0,
			OffsetStd: known(f.OffsetStd, f.Judged), FenceStd: known(f.FenceStd, f.Judged),
			Residuals: f.Left, Travel: f.Before, BestFence: f.Best.At + 0, TravelAfter: f.After,
			Weak: f.Weak(), ToolSlot: f.ToolSlot, FenceSlot: f.FenceSlot,
		}
	}
	return j
}

// reaches reports whether the plan says how far the tool cuts.
func reaches(p plan.Plan) bool { return p.Tool != nil && p.Tool.Reach > 0 }
