package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/check"
	"stopwright/detent/plan"
)

// crowd is a plan of n stops that run into each other, and of a catch whose long
// name makes every sentence of them two lines long.
func crowd(n int) plan.Plan {
	var angles []float64
	for i := range n {
		angles = append(angles, float64(i)/100)
	}
	p := withStops(angles...)
	p.Catches[0].Name = strings.Repeat("the one on the left ", 5) + "side"
	return p
}

// rowOf returns the row of the list that shows a finding of the report, scrolled
// into sight.
func (w *Window) rowOf(t testing.TB, finding int) *findingRow {
	t.Helper()
	r := w.store.Report()
	for _, row := range find[*findingRow](w.findings.list) {
		if row.Visible() && row.text.Text == check.Sentence(r.Plate, r.Findings[finding], w.words) {
			return row
		}
	}
	require.Fail(t, "the row is not in sight")
	return nil
}

// wholeIn reports whether a row is as high as all lines of its sentence.
func wholeIn(row *findingRow) bool {
	return row.text.Truncation == fyne.TextTruncateOff && row.Size().Height+1 >= row.box.MinSize().Height // 1 px: rounding
}

// Of more findings than are shown in full the selected one is, by mouse and by
// keys alike, and no other.
func TestTheSelectedOfManyFindingsUnfolds(t *testing.T) {
	w := opened(t, crowd(3*mostFitted))
	l := w.findings
	require.False(t, l.fits())
	w.win.Resize(fyne.NewSize(1024, 700))
	line := l.line()

	l.list.ScrollToTop()
	last := int(l.list.Size().Height / line) // the last in sight, or half of it
	for _, at := range []int{1, 2 * mostFitted, 0, last - 1, last, last + 1} {
		l.list.Select(at)
		row := w.rowOf(t, l.order[at])
		assert.LessOrEqual(t, placeOf(row).foot, placeOf(l.list).foot+1, "px: row %d is in sight", at)
		assert.GreaterOrEqual(t, placeOf(row).top, placeOf(l.list).top-1, "px: row %d is in sight", at)
		assert.True(t, wholeIn(row), "row %d", at)
		assert.Greater(t, row.Size().Height, line, "the sentence has two lines")
		for _, other := range find[*findingRow](l.list) {
			if other != row && other.Visible() {
				assert.InDelta(t, line, other.Size().Height, 1, "px: one line")
			}
		}
	}

	l.list.Select(0)
	w.focus(l.list)
	w.press(fyne.KeyDown)
	w.press(fyne.KeySpace)
	assert.NotEqual(t, l.order[0], w.store.Selection().Finding)
	assert.True(t, wholeIn(w.rowOf(t, w.store.Selection().Finding)))

	w.store.SelectFinding(-1)
	for _, row := range find[*findingRow](l.list) {
		if row.Visible() {
			assert.InDelta(t, line, row.Size().Height, 1, "px: folded again")
		}
	}
}

// A list that grows long has rows of one line, whatever they were before.
func TestAListThatGrowsLongFolds(t *testing.T) {
	w := opened(t, crowd(3))
	w.win.Resize(fyne.NewSize(1024, 700))
	require.True(t, w.findings.fits())
	require.Greater(t, w.rowOf(t, w.findings.order[0]).Size().Height, w.findings.line())
	require.NoError(t, w.store.Replace("many", crowd(3*mostFitted)))
	require.False(t, w.findings.fits())
	for _, row := range find[*findingRow](w.findings.list) {
		if row.Visible() {
			assert.InDelta(t, w.findings.line(), row.Size().Height, 1, "px")
		}
	}
}
