package ui

import (
	"stopwright/detent/plan"
)

// proveForPicture gives the plan a tool and a fence, marks and readings, as a
// plate might have them whose fence is off, whose third stop is out and whose
// table plays a little.
func (w *Window) proveForPicture() {
	_ = w.store.Edit(w.words.Text("edit.tool"), func(p *plan.Plan) {
		t := plan.NewTool()
		t.Offset, t.Fence = 0.5, 3
		p.Tool = &t
	})
	_ = w.store.Log(func(p *plan.Plan) {
		for _, m := range [...]plan.Mark{{Angle: -45, X: 198.2}, {Angle: -22.5, X: 200}, {Angle: 0, X: 201.4}, {Angle: 22.5, X: 203.3}, {Angle: 45, X: 206.9}} {
			p.Tool.Marks = append(p.Tool.Marks, m)
		}
		stray := [...]float64{0.01, -0.02, 0.015, 0, -0.01, 0.02}
		for i, s := range w.store.Report().Plate.Stops {
			off := 0.18 + stray[i%len(stray)]
			if i == 3 {
				off += 0.55
			}
			const play = 0.04
			for _, r := range [...]plan.Reading{
				{Measured: s.Angle.Degrees() + off + play, Approach: string(plan.Clockwise), Date: "2026-11-20"},
				{Measured: s.Angle.Degrees() + off - play, Approach: string(plan.Counterclockwise), Date: "2026-11-21"},
			} {
				r.Angle, r.Method = s.Angle.Degrees(), "direct"
				p.Readings = append(p.Readings, r)
			}
		}
	})
}
