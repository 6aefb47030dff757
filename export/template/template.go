// Package template makes the paper templates of a plan: each part at full size,
// as it lies at the drill, with an open cross at every centre, tiled over sheets
// of paper by package tile.
package template

import (
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

// Pages returns the templates of every part, one after the other, each part's
// own first page before its sheets. The error is one of [tile.Pages].
func Pages(pl *plate.Plate, info drawing.Info, paper drawing.Paper, corrected tile.Correction) ([]drawing.Page, error) {
	var all []drawing.Page
	for _, s := range Sheets(pl, info) {
		pages, err := tile.Pages(s, paper, corrected, info.Words)
		if err != nil {
			return nil, err
		}
		all = append(all, pages...)
	}
	return all, nil
}

// Sheets returns the template of every part that is made.
func Sheets(pl *plate.Plate, info drawing.Info) []tile.Sheet {
	var all []tile.Sheet
	for _, part := range drawing.AllPartsOf(pl.Plan) {
		all = append(all, Sheet(pl, part, info))
	}
	return all
}

// Sheet returns the template of one part.
func Sheet(pl *plate.Plate, part plan.Part, info drawing.Info) tile.Sheet {
	t := info.Words.Text
	o := plate.OutlineOf(pl.Plan, part)
	return tile.Sheet{
		Title:   drawing.Title(pl.Plan, info.Words, t("template.title")),
		What:    drawing.PartName(info.Words, part) + ", " + t("chart.face."+string(plate.FaceOf(part))),
		Date:    info.Date,
		Drawing: Drawing(pl, part, info.Words),
		Steps: []string{
			t("template.step.check", words.Args{"Across": words.MM(2 * o.Reach(90)), "Along": words.MM(2 * o.Reach(0))}),
			t("template.step.glue"), t("template.step.prick"),
		},
	}
}
