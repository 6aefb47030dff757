package template_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/plans"
	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/template"
)

// Every seat of a demonstration plan bears its name, sixteen on a small ring
// too, and no name stands on the flag.
func TestDemonstrationsHaveTheirTags(t *testing.T) {
	for _, demo := range plans.List() {
		name := demo.Name
		data, err := plans.Open(name)
		require.NoError(t, err)
		p, err := plan.Decode(bytes.NewReader(data))
		require.NoError(t, err)
		pl := plate.New(p)
		d := template.Drawing(pl, pl.SeatsPart, words.English())
		var tags []string
		flag := drawing.NoBounds()
		for _, e := range d.Entities {
			if e.Layer == drawing.Witness {
				flag = drawing.Drawing{Entities: []drawing.Entity{e}}.Bounds()
			}
		}
		for _, e := range d.Entities {
			text, ok := e.Shape.(drawing.Text)
			if !ok {
				continue
			}
			tags = append(tags, strings.Fields(text.Text)[0])
			b := drawing.Drawing{Entities: []drawing.Entity{e}}.Bounds()
			apart := b.Min.X > flag.Max.X || flag.Min.X > b.Max.X || b.Min.Y > flag.Max.Y || flag.Min.Y > b.Max.Y
			assert.True(t, apart, "%s: %s on the flag", name, text.Text)
		}
		var want []string
		for _, s := range pl.Seats {
			want = append(want, s.Tag)
		}
		assert.ElementsMatch(t, want, tags, name)
	}
}
