package ui

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/check"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// findingAt returns where the list shows the first finding of an id.
func (w *Window) findingAt(t testing.TB, id string) int {
	t.Helper()
	findings := w.store.Report().Findings
	at := slices.IndexFunc(w.findings.order, func(i int) bool { return findings[i].ID == id })
	require.GreaterOrEqual(t, at, 0, "no finding %s", id)
	return at
}

// findings lists the ids of what the checks found.
func (w *Window) findingIDs() []string {
	var out []string
	for _, f := range w.store.Report().Findings {
		out = append(out, f.ID)
	}
	return out
}

func TestAChosenFindingIsShownOnThePlate(t *testing.T) {
	w := opened(t, withStops(0, 1, 90))
	w.findings.list.Select(w.findingAt(t, "seats-overlap"))
	sel := w.store.Selection()
	require.GreaterOrEqual(t, sel.Finding, 0)
	assert.Equal(t, "seats-overlap", w.store.Report().Findings[sel.Finding].ID)
	w.plate.refreshScene()
	assert.Equal(t, map[int]bool{0: true, 1: true}, w.plate.scene.marks.Selected.Seats)
	assert.Contains(t, w.status.Text, "A1", "it is said in full")
	assert.Contains(t, w.status.Text, "A2")

	w.store.SelectStop(2)
	w.plate.refreshScene()
	assert.Equal(t, map[int]bool{2: true}, w.plate.scene.marks.Selected.Seats)
	w.findings.list.Select(w.findingAt(t, "seats-overlap"))
	assert.Empty(t, w.store.Selection().Stops, "chosen again, it is shown again")
}

func TestAChosenFindingIsBroughtIntoSight(t *testing.T) {
	p := withStops(0, 1, 90)
	w := opened(t, p)
	w.wheel(w.onPlate(onRing(90)), 10)
	w.store.SetView(store.View{Part: plan.PartTurntable, Snap: 0.5})
	w.findings.list.Select(w.findingAt(t, "seats-overlap"))
	assert.Equal(t, plan.Part(""), w.store.View().Part, "the seats are not on that part")
	assert.Equal(t, 1.0, w.plate.zoom)

	w.wheel(w.onPlate(onRing(0)), 2)
	zoom := w.plate.zoom
	w.store.SelectFinding(-1)
	w.findings.list.Select(w.findingAt(t, "seats-overlap"))
	assert.Equal(t, zoom, w.plate.zoom, "what is in sight stays as it is")
}

func TestFindingsAreInOrderOfGravity(t *testing.T) {
	w := opened(t, withStops(0, 1, 2.9, 90, 90))
	rank := map[check.Severity]int{check.Error: 0, check.Warning: 1, check.Note: 2}
	var ranks []int
	for _, i := range w.findings.order {
		ranks = append(ranks, rank[w.store.Report().Findings[i].Severity])
	}
	assert.IsNonDecreasing(t, ranks)
	assert.Len(t, ranks, len(w.store.Report().Findings), "each once")
	rows := find[*findingRow](w.findings.list)
	require.NotEmpty(t, rows)
	for _, r := range rows {
		assert.NotEmpty(t, r.text.Text)
		assert.NotNil(t, r.sign.Resource, "told by a sign, not by colour alone")
	}
}

// fixButton returns the button of a finding's row that mends it.
func (w *Window) fixButton(t testing.TB, id string) *widget.Button {
	t.Helper()
	at := w.findingAt(t, id)
	w.findings.list.ScrollTo(at)
	f := w.store.Report().Findings[w.findings.order[at]]
	for _, r := range find[*findingRow](w.findings.list) {
		if r.text.Text == check.Sentence(w.store.Report().Plate, f, w.words) {
			return r.fix
		}
	}
	require.Fail(t, "no row of "+id)
	return nil
}

func TestAFixIsOneEdit(t *testing.T) {
	for why, c := range map[string]struct {
		p  plan.Plan
		id string
	}{
		"a ring a little larger": {withStops(0, 3.3), "web-thin"},
		"a stop listed twice":    {withStops(0, 90, 90), "stop-repeated"},
		"a travel too short": {func() plan.Plan {
			p := withStops(0, 90)
			p.Travel = plan.Span{From: -60, To: 60}
			return p
		}(), "stop-outside-travel"},
	} {
		w := opened(t, c.p)
		fix := w.fixButton(t, c.id)
		require.True(t, fix.Visible(), why)
		text := fix.Text
		tap(fix)
		assert.NotContains(t, w.findingIDs(), c.id, why)
		assert.Equal(t, text, w.undoName(), why)
		w.undo()
		assert.Equal(t, c.p, w.store.Plan(), why)
		assert.Contains(t, w.findingIDs(), c.id, why)
	}
}

func TestAFindingThatNothingSimpleMendsHasNoButton(t *testing.T) {
	w := opened(t, withStops(0, 0.01))
	assert.False(t, w.fixButton(t, "seats-overlap").Visible(), "no table is large enough for two seats there")
}

func TestTheListFollowsThePlan(t *testing.T) {
	w := opened(t, withStops(0, 20, 36, 54))
	clean := len(w.store.Report().Findings)
	require.NotContains(t, w.findingIDs(), "seats-overlap")
	w.typeInto(w.stops.add, "38")
	w.press(fyne.KeyReturn)
	require.Contains(t, w.findingIDs(), "seats-overlap", "36 and 38 run into each other")
	w.findings.list.Select(w.findingAt(t, "seats-overlap"))
	w.store.SelectStop(3)
	w.choose(t, "menu.edit", "menu.remove")
	assert.Equal(t, []float64{0, 20, 36, 54}, w.angles())
	assert.Len(t, w.store.Report().Findings, clean)
	assert.Equal(t, -1, w.store.Selection().Finding)
}
