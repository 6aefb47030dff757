package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/stock"
)

// commonScreen is the size of window that pictures of every page are made of, px.
var commonScreen = fyne.NewSize(1024, 700)

func TestTextsOfPagesAreNotCutOff(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 45))
	for _, language := range words.Languages() {
		w.speak(language)
		for _, id := range []pageID{settingPage, stockPage, roomPage} {
			w.showPage(id)
			w.win.Resize(commonScreen)
			page := w.pages.Selected().Content
			labels := find[*widget.Label](page)
			require.NotEmpty(t, labels)
			for _, l := range labels {
				if l.Wrapping == fyne.TextWrapWord {
					assert.GreaterOrEqual(t, l.Size().Height, l.MinSize().Height, "%s %s: %s", language, id, l.Text)
				}
			}
			if id == roomPage {
				assert.LessOrEqual(t, w.room.object.MinSize().Width, page.Size().Width, "%s: nothing of it is beside the page", language)
			}
		}
	}
}

func TestAFindingIsShownInAsManyLinesAsItNeeds(t *testing.T) {
	w := opened(t, withStops(0, 1, 90))
	w.win.Resize(commonScreen)
	rows := find[*findingRow](w.findings.list)
	require.NotEmpty(t, rows)
	high := float32(0)
	for _, r := range rows {
		assert.GreaterOrEqual(t, r.Size().Height, r.text.MinSize().Height, r.text.Text)
		high = max(high, r.Size().Height)
	}
	assert.Greater(t, high, rows[0].fix.MinSize().Height, "one of them needs more than a line")

	var many []float64
	for i := range 2 * mostFitted {
		many = append(many, float64(i)/10)
	}
	w = opened(t, withStops(many...))
	require.False(t, w.findings.fits())
	for _, r := range find[*findingRow](w.findings.list) {
		assert.Equal(t, fyne.TextTruncateEllipsis, r.text.Truncation, "of so many each has a line")
	}
}

// typedField is any field that is typed into.
type typedField interface {
	fyne.CanvasObject
	SelectedText() string
}

func TestPicturesShowNothingThatIsScrolledOutOfSight(t *testing.T) {
	w := opened(t, settingPlan())
	w.giveTool()
	w.showPage(settingPage)
	w.win.Resize(fyne.NewSize(1600, 1000))
	find[*splitBar](w.win.Content())[0].Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, -100)})
	fields := len(find[typedField](w.setting.tool.object))
	require.NotZero(t, fields)

	picture := w.capture()
	foot := placeOf(w.findings.object)
	const empty = 100 // px at the foot of the checks, below the last of them
	paper := picture.At(int(foot.left)+2, int(foot.foot)-2)
	for y := int(foot.foot) - empty; y < int(foot.foot); y++ {
		for x := int(foot.left) + 2; x < int(foot.right)-2; x++ {
			require.Equal(t, paper, picture.At(x, y), "at %d, %d", x, y)
		}
	}
	assert.Len(t, find[typedField](w.setting.tool.object), fields, "all is there again")
}

func TestTheButtonsOfTruenessAreAllInSight(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 45))
	for _, language := range words.Languages() {
		w.speak(language)
		w.showPage(truthPage)
		w.win.Resize(commonScreen)
		for _, method := range stock.Methods() {
			require.NoError(t, w.store.Edit("method", func(p *plan.Plan) { p.Shop.Method = method.ID }))
			head := w.truth.head
			assert.LessOrEqual(t, head.Content.MinSize().Width, head.Size().Width, "%s %s", language, method.ID)
		}
	}
}

func TestTheSizesOfTheCouponAreNotCutOff(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 45))
	for _, language := range words.Languages() {
		w.speak(language)
		w.win.Resize(commonScreen)
		w.askCoupon()
		picks := find[*sheetSelect](w.overlay())
		require.NotEmpty(t, picks)
		for _, pick := range picks {
			for i, size := range pick.Options {
				pick.SetSelectedIndex(i)
				drawn := find[*canvas.Text](pick)
				require.NotEmpty(t, drawn)
				assert.Equal(t, size, drawn[0].Text, language)
			}
		}
		w.press(fyne.KeyEscape)
	}
}

func TestTheNamesOfSizesAreNotCutOff(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 45))
	w.win.Resize(commonScreen)
	for _, language := range words.Languages() {
		w.speak(language)
		for i, s := range w.parts.sections {
			w.parts.accordion.Open(i)
			for k, r := range s.rows {
				for _, name := range find[*widget.Label](r.object) {
					if name.Truncation == fyne.TextTruncateEllipsis {
						assert.LessOrEqual(t, widget.NewLabel(name.Text).MinSize().Width, name.Size().Width, "%s %s: %s", language, s.made[k], name.Text)
					}
				}
			}
		}
	}
}

func TestTheNumberOfASheetIsNotWrittenOver(t *testing.T) {
	w := opened(t, withStops(0, 22.5, 45))
	w.showPage(chartPage)
	number := w.chart.number
	for _, o := range w.chart.bar.Objects {
		if o != number && o.Position().X > number.Position().X {
			assert.GreaterOrEqual(t, o.Position().X, number.Position().X+number.MinSize().Width)
		}
	}
}
