package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// workRowOf returns the row whose text begins with a text.
func (w *Window) workRowOf(t *testing.T, text string) int {
	t.Helper()
	for i, r := range w.work.rows {
		if strings.HasPrefix(w.work.text(r), text) {
			return i
		}
	}
	require.Fail(t, "no such row", text)
	return -1
}

func TestAClickTicksAHole(t *testing.T) {
	w := opened(t, withStops(0, 30))
	w.showPage(workPage)
	final := w.workRowOf(t, "Base: Drill the seats")
	w.work.list.Select(final + 1)
	assert.Equal(t, []string{"final base 0.00,105.00"}, w.store.Plan().Ticks)
	assert.True(t, w.work.isDone(w.work.rows[final+1]))
	assert.False(t, w.work.isDone(w.work.rows[final]), "one of two holes is not all of them")
	assert.True(t, strings.HasPrefix(w.work.count.Text, "1 of "), w.work.count.Text)
	assert.Empty(t, w.undoName(), "a tick is no decision to undo")
	assert.True(t, w.store.Unsaved(), "and is saved with the plan")

	w.work.list.Select(final + 1)
	assert.Empty(t, w.store.Plan().Ticks, "a second click takes it off")
	w.work.list.Select(final)
	assert.Len(t, w.store.Plan().Ticks, 2, "the operation's own row ticks all its holes")
}

func TestTicksByKeyboard(t *testing.T) {
	w := opened(t, withStops(0, 30))
	w.showPage(workPage)
	w.focus(w.work.list)
	w.press(fyne.KeyDown)
	w.press(fyne.KeySpace)
	assert.Equal(t, w.work.ticks(w.work.rows[1]), w.store.Plan().Ticks)
}

func TestATickWhoseHoleHasGoneIsKeptAndMarked(t *testing.T) {
	w := opened(t, withStops(0, 30))
	w.showPage(workPage)
	final := w.workRowOf(t, "Base: Drill the seats")
	w.work.list.Select(final + 1)
	require.NoError(t, w.store.Edit("ring", func(p *plan.Plan) { p.Catches[0].Radius = 100 }))
	last := w.work.rows[len(w.work.rows)-1]
	assert.Equal(t, "final base 0.00,105.00", last.stray)
	assert.Contains(t, w.work.text(last), "no hole there now")
	w.store.Undo()
	assert.True(t, w.work.isDone(w.work.rows[final+1]), "with the hole back, it is done again")

	require.NoError(t, w.store.Edit("ring", func(p *plan.Plan) { p.Catches[0].Radius = 100 }))
	w.work.list.Select(len(w.work.rows) - 1)
	assert.Empty(t, w.store.Plan().Ticks, "it can be struck off")
}

func TestTheWorkOfOnePart(t *testing.T) {
	w := opened(t, withStops(0, 30))
	w.showPage(workPage)
	all := len(w.work.rows)
	w.work.parts.SetSelectedIndex(2)
	require.NotEmpty(t, w.work.rows)
	assert.Less(t, len(w.work.rows), all)
	for _, r := range w.work.rows {
		assert.Equal(t, plan.PartTurntable, r.operation.Part)
	}
	require.NoError(t, w.store.Edit("title", func(p *plan.Plan) { p.Title = "x" }))
	assert.Equal(t, 2, w.work.parts.SelectedIndex(), "the choice stays")
}
