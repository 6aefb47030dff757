package drawing

import (
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
)

// Title returns what a sheet is headed with: the plan's title on one line,
// however it was typed, or other where it has none; and before it, where nothing
// cuts it off, the scale of a trial.
func Title(p plan.Plan, c *words.Catalogue, other string) string {
	title := strings.Join(strings.Fields(p.Title), " ")
	if title == "" {
		title = other
	}
	if !p.IsTrial() {
		return title
	}
	mark := c.Text("sheet.trial", words.Args{"Scale": c.Decimal(ScaleText(p.Scale))})
	return strings.TrimSpace(mark + " " + title)
}

// ScaleText writes a scale as draughtsmen do: "1:2" for 0.5, "2:1" for 2.
func ScaleText(scale float64) string {
	const decimals = 3
	if scale < 1 {
		return "1:" + measure.Trim(1/scale, decimals)
	}
	return measure.Trim(scale, decimals) + ":1"
}
