package ui

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/proving"
)

// settingPlan is a plate of nine stops at which tool and fence can be set up.
func settingPlan() plan.Plan {
	p := plan.NewPlan()
	for _, a := range []float64{-60, -45, -30, -15, 0, 15, 30, 45, 60} {
		p.Stops = append(p.Stops, plan.Stop{Angle: a})
	}
	return p
}

// setUp opens a window on a plan at one tab of the setting-up page.
func setUp(t *testing.T, p plan.Plan, tab int) *Window {
	t.Helper()
	w := opened(t, p)
	w.showPage(settingPage)
	w.setting.tabs.SelectIndex(tab)
	return w
}

// typeReading fills in the form for one reading and keeps it.
func (w *Window) typeReading(t *testing.T, stop float64, method proving.Method, approach int, open int, values ...string) {
	t.Helper()
	f := w.setting.proof.form
	for i, a := range f.angles {
		if a.Degrees() == stop {
			f.stop.SetSelectedIndex(i)
		}
	}
	for i, m := range proving.Methods {
		if m == method && f.method.SelectedIndex() != i {
			f.method.SetSelectedIndex(i)
		}
	}
	f.approach.SetSelectedIndex(approach)
	if f.open != nil {
		f.open.SetSelectedIndex(open)
	}
	require.Len(t, f.values, len(values))
	for i, v := range values {
		f.values[i].SetText(v)
	}
	f.add()
}

// chooseSetting does what an item of the setting-up menu does.
func (w *Window) chooseSetting(t *testing.T, key string) {
	t.Helper()
	for _, i := range w.settingMenu().ChildMenu.Items {
		if i.Label == w.words.Text(key) {
			i.Action()
			return
		}
	}
	t.Fatalf("no %s in the menu", key)
}

// TestASimulatedBuildIsDiagnosedInTheWindow types what a maker would read on a
// plate whose tool, fence, one seat and play are known, and reads the page.
func TestASimulatedBuildIsDiagnosedInTheWindow(t *testing.T) {
	const offset, fence, common, bad, play = 1.2, -2.5, 0.2, 0.6, 0.05
	w := setUp(t, settingPlan(), toolTab)
	w.giveTool()
	require.NotNil(t, w.store.Plan().Tool)
	pane := w.setting.tool
	for _, a := range []float64{-45, -15, 0, 30, 45} {
		rad := a * math.Pi / 180
		x := 120 + (offset+fence*math.Sin(rad))/math.Cos(rad)
		pane.marks.angle.SetText(fmt.Sprint(a))
		pane.marks.x.SetText(fmt.Sprintf("%.2f", x))
		pane.marks.add()
	}
	require.Len(t, w.store.Plan().Tool.Marks, 5)
	assert.Equal(t, w.words.Text("edit.tool"), w.undoName(), "marks are a log: they leave no step to undo")
	assert.Contains(t, pane.found.Text, w.words.Text("marks.move.left", words.Args{"By": words.MM(pane.cut.Marks.Offset)}))
	assert.InDelta(t, offset, pane.cut.Marks.Offset, 0.05, "marks typed to a hundredth")
	assert.InDelta(t, fence, pane.cut.Marks.Fence, 0.02)
	pane.takeAsFound()
	assert.InDelta(t, offset, w.store.Plan().Tool.Offset, 0.05)
	pane.fenceToBest()
	assert.InDelta(t, 0, w.store.Plan().Tool.Fence, 0.9, "near the pivot, where the cut wanders least")

	w.setting.tabs.SelectIndex(proofTab)
	for i, s := range w.store.Report().Plate.Stops {
		at := s.Angle.Degrees() + common + 0.005*float64(i%3-1)
		if s.Angle == 30 {
			at += bad
		}
		w.typeReading(t, s.Angle.Degrees(), proving.Typed, 1, 0, fmt.Sprintf("%.3f", at+play))
		w.typeReading(t, s.Angle.Degrees(), proving.Typed, 2, 0, fmt.Sprintf("%.3f", at-play))
	}
	require.Len(t, w.store.Plan().Readings, 18)
	v, ok := w.store.Report().Proving()
	require.True(t, ok)
	said := w.setting.proof.said.Text
	for _, line := range v.Say(w.store.Report(), w.words) {
		assert.Contains(t, said, line)
	}
	assert.InDelta(t, common, v.Common.Is, 0.01)
	assert.InDelta(t, play, v.Play.Is, 0.001)
	for _, s := range v.Seats {
		assert.Equal(t, v.Stops[s.Stop] == 30, s.Out, "%v", v.Stops[s.Stop])
	}
	repairs := w.setting.proof.repairs
	require.Len(t, repairs.pick.Options, 1, "the one that is out")
	assert.True(t, repairs.ways[0].object.Visible())
	assert.Equal(t, detent.Plug, repairs.ways[0].repair.Kind)
	assert.Contains(t, repairs.ways[1].said.Text, w.words.Text("repair.bush"))

	w.undo()
	w.undo()
	assert.Len(t, w.store.Plan().Readings, 18, "undo leaves the log alone")
	assert.Len(t, w.store.Plan().Tool.Marks, 5)
}

func TestMethodsAreWorkedOutAsTyped(t *testing.T) {
	w := setUp(t, settingPlan(), proofTab)
	f := w.setting.proof.form
	gap := fmt.Sprintf("%.6f", 100*math.Tan(0.4*math.Pi/180))
	w.typeReading(t, 45, proving.Square, 0, 0, gap, "100")
	w.typeReading(t, 45, proving.Square, 0, 1, gap, "100")
	w.typeReading(t, 0, proving.FiveCut, 0, 0, fmt.Sprintf("%.6f", 20+100*math.Tan(0.4*math.Pi/180)), "20", "100")
	w.typeReading(t, -30, proving.Ring, 0, 1, fmt.Sprintf("%.6f", 2*50*math.Sin(0.6*math.Pi/180)), "50")
	var got []float64
	for _, x := range w.store.Plan().Readings {
		got = append(got, x.Measured)
	}
	assert.InDeltaSlice(t, []float64{45.2, 44.8, 0.1, -29.9}, got, 1e-5)
	assert.Equal(t, []string{"square", "square", "five-cut", "ring"}, []string{
		w.store.Plan().Readings[0].Method, w.store.Plan().Readings[1].Method, w.store.Plan().Readings[2].Method, w.store.Plan().Readings[3].Method,
	})

	w.typeReading(t, 30, proving.Square, 0, 0, "1", "100")
	assert.Len(t, w.store.Plan().Readings, 4, "mitres of 30 do not make a right angle")
	assert.Equal(t, w.words.Text("reading.unsuited.square"), f.wrong.label.Text)
	f.date.SetText("20.11.2026")
	w.typeReading(t, 30, proving.Typed, 0, 0, "30.1")
	assert.Len(t, w.store.Plan().Readings, 4, "a date is as 2026-11-20")
	assert.True(t, f.wrong.object.Visible())
	f.date.SetText("2026-11-20")
	f.add()
	assert.Len(t, w.store.Plan().Readings, 5, "what was typed is still there")
	assert.False(t, f.wrong.object.Visible())
}

func TestReadingsOfGoneStopsAreKeptAndMarked(t *testing.T) {
	p := settingPlan()
	p.Readings = []plan.Reading{{Angle: 15, Measured: 15.1, Date: "2026-01-05"}, {Angle: 30, Measured: 30.2, Date: "2026-11-20"}}
	w := setUp(t, p, proofTab)
	l := w.setting.proof.log
	text, counts := l.text(0)
	assert.True(t, counts)
	assert.NotContains(t, text, w.words.Text("reading.gone"))
	require.NoError(t, w.store.RemoveStops("x", 5)) // 15
	text, counts = l.text(0)
	assert.False(t, counts)
	assert.Contains(t, text, w.words.Text("reading.gone"), "in words, not by colour alone")
	assert.Len(t, w.store.Plan().Readings, 2)
	assert.Contains(t, w.setting.proof.said.Text, w.words.Text("proof.lost", words.Args{"N": 1}))

	w.typeInto(find[*valueEntry](w.setting.proof.since.object)[0], "2026-11-21")
	w.focus(w.stops.add)
	assert.Equal(t, "2026-11-21", w.store.Plan().ReadingsSince)
	text, counts = l.text(1)
	assert.False(t, counts)
	assert.Contains(t, text, w.words.Text("reading.old"))

	l.remove(0)
	assert.Len(t, w.store.Plan().Readings, 1, "a slip can be taken out")
}

func TestATrendIsShown(t *testing.T) {
	p := settingPlan()
	for k, day := range []string{"2026-01-01", "2026-04-01", "2026-07-01", "2026-10-01"} {
		p.Readings = append(p.Readings, plan.Reading{Angle: 30, Measured: 30.1 + 0.02*float64(k), Date: day})
	}
	w := setUp(t, p, proofTab)
	v := w.setting.proof.trend
	assert.Equal(t, w.words.Text("trend.few"), v.said.Text)
	assert.False(t, v.sketch.Visible())
	v.stop.SetSelected(w.words.Angle(30))
	assert.True(t, v.sketch.Visible())
	assert.InDelta(t, 0.06*365.2425/273, v.trend.Slope.Is, 0.001, "0.06 degrees in 273 days")
	assert.Contains(t, v.said.Text, w.words.Angle(0.1))
}

func TestTheProofSheetIsWritten(t *testing.T) {
	w := setUp(t, settingPlan(), proofTab)
	w.proveForPicture()
	w.chooseSetting(t, "setting.print")
	path := filepath.Join(t.TempDir(), "proof.pdf")
	entry := find[*sheetEntry](w.overlay())[0]
	entry.SetText(path)
	w.press(fyne.KeyReturn)
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.True(t, strings.HasPrefix(string(data), "%PDF"))
}

func TestToolIsGivenSizedAndTakenAway(t *testing.T) {
	w := setUp(t, settingPlan(), toolTab)
	pane := w.setting.tool
	assert.True(t, pane.give.Visible())
	assert.False(t, pane.has.Visible())
	w.chooseSetting(t, "setting.give")
	assert.False(t, pane.give.Visible())
	require.True(t, pane.has.Visible())
	assert.Contains(t, pane.said.Text, w.words.Length(0), "a line and a fence on the pivot do not wander")

	for _, e := range find[*valueEntry](pane.sizes.box) {
		if e.value() == "400" {
			w.typeInto(e, "350")
		}
	}
	w.focus(w.stops.add)
	assert.Equal(t, 350.0, w.store.Plan().Tool.FenceLength)

	box := find[*widget.Check](pane.height.object)[0]
	box.SetChecked(true)
	require.NotNil(t, w.store.Plan().Tool.FenceUnderside)
	assert.Contains(t, pane.sizes.made, "tool.fence_underside", "now it has a field")
	box.SetChecked(false)
	assert.Nil(t, w.store.Plan().Tool.FenceUnderside)

	w.store.SetTurn(45)
	assert.Contains(t, pane.crosses.Text, w.words.Angle(45))
	pane.marks.angle.SetText("89")
	pane.marks.x.SetText("10")
	pane.marks.add()
	assert.Equal(t, w.words.Text("setting.marks.steep"), pane.marks.wrong.label.Text)
	pane.marks.angle.SetText("45")
	pane.marks.add()
	require.Len(t, w.store.Plan().Tool.Marks, 1)
	w.removeMark(0)
	assert.Empty(t, w.store.Plan().Tool.Marks)

	w.chooseSetting(t, "setting.takeaway")
	assert.Nil(t, w.store.Plan().Tool)
	w.undo()
	assert.NotNil(t, w.store.Plan().Tool)
}

func TestTheMovedPatternIsTaken(t *testing.T) {
	p := settingPlan()
	p.Travel = plan.Span{From: -60, To: 60}
	for _, s := range p.Stops {
		off := 0.1
		if s.Angle == -15 {
			off = 1
		}
		p.Readings = append(p.Readings, plan.Reading{Angle: s.Angle, Measured: s.Angle + off, Date: "2026-01-01"})
	}
	w := setUp(t, p, proofTab)
	w.chooseSetting(t, "repair.take")
	now := w.store.Plan()
	assert.Greater(t, math.Abs(now.Catches[0].Azimuth), 90.0, "the catch has gone round")
	assert.Len(t, now.Features, 9+1, "the old seats and the old pocket stay as holes")
	_, counts := w.setting.proof.log.text(0)
	assert.False(t, counts, "the old seats' readings count no longer")
	w.undo()
	assert.Equal(t, p.Catches, w.store.Plan().Catches)
	assert.Empty(t, w.store.Plan().ReadingsSince)
}
