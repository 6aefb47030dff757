package tile

import (
	"math"

	"stopwright/assets/words"
	"stopwright/export/drawing"
)

// noteWidth is how wide the words below a drawing may always be, mm.
const noteWidth = 200.0

// Noted returns a sheet's drawing for a file to cut from, with its words and the
// cautions below.
func (s Sheet) Noted(c *words.Catalogue) drawing.Drawing {
	t := c.Text
	lines := []string{s.Title, s.What, t("tile.units")}
	if s.Date != "" {
		lines = append(lines, t("sheet.date", words.Args{"Date": s.Date}))
	}
	width := math.Max(noteWidth, s.Drawing.Bounds().Width())
	for _, step := range s.Steps {
		lines = append(lines, drawing.Wrap(step, drawing.NoteSize, width)...)
	}
	var d drawing.Drawing
	d.Place(s.Drawing, drawing.Transform{Scale: 1})
	drawing.Notes(&d, append(lines, t("caution.unplug"), t("caution.clamp"), t("caution.eyes"), t("caution.manual")))
	return d
}
