package ui

import (
	"strconv"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// catches returns a plan of two stops and catches of the names given, spread
// over the ring.
func catches(names ...string) plan.Plan {
	p := withStops(0, 20)
	at := p.Catches[0]
	p.Catches = nil
	for i, n := range names {
		p.Catches = append(p.Catches, plan.Placement{Name: n, Azimuth: float64(i) * 5, Radius: at.Radius})
	}
	return p
}

func TestOneCatchNeedsNoChoice(t *testing.T) {
	w := opened(t, withStops(0, 20))
	assert.False(t, w.row(t, 0).catch.Visible())
	wide := w.row(t, 0).angle.Size().Width

	require.NoError(t, w.store.Edit("two", func(p *plan.Plan) { p.Catches = catches("A", "B").Catches }))
	row := w.row(t, 0)
	assert.True(t, row.catch.Visible(), "it comes with the second")
	assert.Equal(t, "A", row.catch.Text, "none named is the first")
	w.win.Canvas().Capture()
	assert.Less(t, row.angle.Size().Width, wide)
	assert.LessOrEqual(t, row.MinSize().Width, float32(stopsWidth), "the row fits its pane")

	w.store.Undo()
	assert.False(t, w.row(t, 0).catch.Visible())
}

// openCatches opens the list of a row by keyboard and returns its entries.
func (w *Window) openCatches(t testing.TB, stop int) *widget.PopUpMenu {
	t.Helper()
	w.focus(w.row(t, stop).catch)
	assert.Equal(t, stop, w.store.Selection().Lead, "a part of a row with the keys shows its stop")
	w.press(fyne.KeySpace)
	list, ok := w.win.Canvas().Focused().(*widget.PopUpMenu)
	require.True(t, ok, "the list has the keys")
	return list
}

func TestCatchesAreChosenByKeyboard(t *testing.T) {
	w := opened(t, catches("A", "B"))
	w.openCatches(t, 1)
	for range 3 { // A, B, A and B
		w.press(fyne.KeyDown)
	}
	w.press(fyne.KeyReturn)
	assert.Nil(t, w.overlay())
	assert.Equal(t, []string{"A", "B"}, w.store.Plan().Stops[1].Catches)
	assert.Equal(t, "A+B", w.row(t, 1).catch.Text)
	assert.Equal(t, "A", w.row(t, 0).catch.Text)
	assert.Len(t, w.store.Report().Plate.Seats, 3)
	assert.Equal(t, "Catches of stop 20°", w.undoName())
	assert.Same(t, w.row(t, 1).catch, w.win.Canvas().Focused(), "the keys come back")

	w.openCatches(t, 1)
	w.press(fyne.KeyDown)
	w.press(fyne.KeyDown)
	w.press(fyne.KeyReturn)
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[1].Catches)

	w.openCatches(t, 1)
	w.press(fyne.KeyEscape)
	assert.Nil(t, w.overlay())
	assert.Equal(t, []string{"B"}, w.store.Plan().Stops[1].Catches)
	w.store.Undo()
	w.store.Undo()
	assert.Empty(t, w.store.Plan().Stops[1].Catches)
	assert.Equal(t, "A", w.row(t, 1).catch.Text)
}

func TestChoosingWhatIsChosenIsNoEdit(t *testing.T) {
	w := opened(t, catches("A", "B"))
	w.openCatches(t, 0)
	w.press(fyne.KeyDown)
	w.press(fyne.KeyReturn)
	assert.Empty(t, w.undoName())
}

func TestCatchChoices(t *testing.T) {
	assert.Equal(t, [][]string{{"A"}, {"B"}, {"A", "B"}}, catchChoices([]string{"A", "B"}, []string{"A"}))
	assert.Equal(t, [][]string{{"A"}, {"B"}, {"C"}, {"A", "B"}, {"A", "C"}, {"B", "C"}, {"A", "B", "C"}},
		catchChoices([]string{"A", "B", "C"}, []string{"A"}), "all there are of three")
	four := catchChoices([]string{"A", "B", "C", "D"}, []string{"A", "B", "D"})
	assert.Len(t, four, 4+6+1+1)
	assert.Equal(t, []string{"A", "B", "D"}, four[11], "what the stop has is always there")

	var many []string
	for i := range plan.MaxCatches {
		many = append(many, strconv.Itoa(i))
	}
	assert.Len(t, catchChoices(many, many[:1]), plan.MaxCatches+1, "each, and all")
}

func TestCatchNamesInShort(t *testing.T) {
	w := opened(t, catches("A", "B", "C"))
	assert.Equal(t, "A, B and C", joinNames(w.words, []string{"A", "B", "C"}))
	assert.Equal(t, "A", joinNames(w.words, []string{"A"}))
	for want, names := range map[string][]string{
		"A": {"A"}, "A+B": {"A", "B"}, "A+B…": {"A", "B", "C"}, "lef…": {"left-hand"}, "äöü…": {"äöüäöü"},
	} {
		assert.Equal(t, want, shortNames(names))
	}
}
