package coupon

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// Sheet returns the coupon with what is to be done with it.
func Sheet(pl *plate.Plate, info drawing.Info) tile.Sheet {
	t, p := info.Words.Text, pl.Plan
	steps := []string{
		t("coupon.step.board", words.Args{
			"Seats": drawing.PartName(info.Words, pl.SeatsPart), "Catches": drawing.PartName(info.Words, pl.CatchPart),
		}),
		t("coupon.step.seat", words.Args{"Depth": depth(info.Words, p.Seat)}),
		t("coupon.step.bore", words.Args{"Depth": words.MM(pl.Pockets[0].BodyDepth), "Diameter": words.MM(p.Catch.BodyDiameter)}),
	}
	for _, r := range Rows(p) {
		if r.Kind == Recess {
			steps = append(steps, t("coupon.step.recess", words.Args{
				"Bore": words.MM(bore(p)), "Deeper": words.MM(p.Catch.BodyLength - p.Catch.FlangeThickness), "Protrusion": words.MM(p.Catch.Protrusion),
			}))
		}
	}
	return tile.Sheet{
		Title: drawing.Title(p, info.Words, t("coupon.title")), What: t("coupon.what"), Date: info.Date,
		Drawing: Drawing(p, info.Words), Steps: append(steps, t("coupon.step.back")),
	}
}

// depth says how deep the seats are cut.
func depth(c *words.Catalogue, s plan.Seat) string {
	switch {
	case s.Form == plan.Countersunk:
		return c.Text("coupon.depth.mouth")
	case s.Depth == 0:
		return c.Text("coupon.depth.through")
	}
	return c.Text("coupon.depth.blind", words.Args{"Depth": words.MM(s.Depth)})
}
