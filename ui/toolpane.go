package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// toolPane shows tool and fence over the turning plate, how far the cut wanders
// along the fence, and what marks on a board say about both.
type toolPane struct {
	w       *Window
	give    *fyne.Container // where the plan has no tool yet
	has     *fyne.Container
	plate   *sketch
	wander  *sketch
	turn    *turnBar
	crosses *widget.Label
	said    *widget.Label
	sizes   *section
	height  fieldRow
	marks   *markTable
	found   *widget.Label
	take    *widget.Button
	best    *widget.Button
	object  *container.Scroll
	cut     detent.CutLine
	hasCut  bool
}

func newToolPane(w *Window) *toolPane {
	t := w.words.Text
	v := &toolPane{w: w, crosses: wrapped(""), said: wrapped(""), found: wrapped("")}
	v.plate = newSketch(w, fyne.NewSize(200, 300), v.paintPlate)
	v.wander = newSketch(w, fyne.NewSize(200, 220), v.paintWander)
	v.turn = newTurnBar(w)
	v.sizes = newSection(w, group{key: "group.tool", prefixes: []string{
		"tool.offset", "tool.fence", "tool.turning", "tool.kerf", "tool.reach",
	}})
	v.height = w.fenceHeightCheck()
	v.marks = newMarkTable(w)
	v.take = widget.NewButton(t("setting.take"), v.takeAsFound)
	v.best = widget.NewButton(t("setting.best"), v.fenceToBest)
	v.give = container.New(flow{},
		wrapped(t("setting.none")),
		container.NewHBox(widget.NewButton(t("setting.give"), w.giveTool)),
	)
	v.has = container.NewVBox(
		v.plate, v.turn.object, v.crosses,
		heading(t("setting.wander")), v.wander, v.said,
		heading(t("group.tool")), v.sizes.box, v.height.object, container.NewHBox(v.best),
		heading(t("setting.marks")), newCaution(w, "setting.marks.caution"), wrapped(t("setting.marks.how")),
		v.marks.object, v.found, container.NewHBox(v.take), v.marks.tall,
	)
	v.object = container.NewVScroll(container.New(flow{}, v.give, v.has))
	v.refresh()
	return v
}

// giveTool gives the plan a tool and a fence.
func (w *Window) giveTool() {
	w.report(w.store.Edit(w.words.Text("edit.tool"), func(p *plan.Plan) {
		if p.Tool == nil {
			t := plan.NewTool()
			p.Tool = &t
		}
	}))
}

// takeTool takes tool and fence out of the plan. Marks, which are a log, bring
// them back with undo.
func (w *Window) takeTool() {
	w.report(w.store.Edit(w.words.Text("setting.takeaway"), func(p *plan.Plan) { p.Tool = nil }))
}

// fenceHeightCheck makes the box that says whether the fence's height is known.
func (w *Window) fenceHeightCheck() fieldRow {
	c := widget.NewCheck(w.words.Text("setting.height"), nil)
	refresh := func() {
		t := w.store.Plan().Tool
		if has := t != nil && t.FenceUnderside != nil; c.Checked != has {
			c.Checked = has
			c.Refresh()
		}
	}
	refresh()
	c.OnChanged = func(on bool) {
		w.report(w.store.Edit(w.words.Text("edit.tool"), func(p *plan.Plan) {
			if p.Tool == nil {
				return
			}
			p.Tool.FenceUnderside = nil
			if on {
				top := plate.TableTop(*p)
				p.Tool.FenceUnderside = &top
			}
		}))
	}
	return fieldRow{c, refresh}
}

// refresh shows the plan's tool and the table's turn.
func (v *toolPane) refresh() {
	r := v.w.store.Report()
	v.cut, v.hasCut = r.CutLine()
	if !v.hasCut {
		v.has.Hide()
		v.give.Show()
		return
	}
	v.give.Hide()
	v.has.Show()
	v.turn.refresh()
	v.sizes.refresh(v.w)
	v.height.refresh()
	v.marks.refresh(v.cut)
	v.crosses.SetText(v.crossing())
	v.said.SetText(strings.Join(v.cut.Say(r, v.w.words), "\n"))
	v.found.SetText(strings.Join(v.cut.SayMarks(v.w.words), "\n"))
	enable(v.take, v.cut.Marks != nil)
	enable(v.best, v.cut.BestFence.Known && v.cut.BestFence.At != v.cut.Fence)
	v.plate.Refresh()
	v.wander.Refresh()
}

func enable(b *widget.Button, able bool) {
	if able {
		b.Enable()
	} else {
		b.Disable()
	}
}

// crossing says where the tool crosses the fence as the table is turned.
func (v *toolPane) crossing() string {
	turn := v.w.store.Turn()
	x, ok := v.cut.Crossing(plate.Lean(v.w.store.Plan(), turn))
	if !ok {
		return v.w.words.Text("setting.crosses.not", words.Args{"Turn": words.Deg(turn)})
	}
	return v.w.words.Text("setting.crosses", words.Args{"Turn": words.Deg(turn), "X": words.MM(x)})
}

// takeAsFound makes tool and fence lie in the plan where the marks show them.
func (v *toolPane) takeAsFound() {
	f := v.cut.Marks
	if f == nil {
		return
	}
	v.w.moveTool(f.Offset, f.Fence)
}

// typeMark gives the keys to the line that takes a mark.
func (v *toolPane) typeMark() {
	if v.hasCut {
		v.object.ScrollToOffset(fyne.NewPos(0, v.marks.object.Position().Y))
		v.w.focus(v.marks.angle)
	}
}

// fenceToBest moves the plan's fence to where the cut wanders least.
func (v *toolPane) fenceToBest() {
	if v.cut.BestFence.Known {
		v.w.moveTool(v.cut.Offset, v.cut.BestFence.At)
	}
}

func (w *Window) moveTool(offset, fence float64) {
	w.report(w.store.Edit(w.words.Text("edit.tool.move"), func(p *plan.Plan) {
		if p.Tool != nil {
			p.Tool.Offset, p.Tool.Fence = tidyLength(offset), tidyLength(fence)
		}
	}))
}

// removeMark takes one mark out of the log.
func (w *Window) removeMark(i int) {
	w.report(w.store.Log(func(p *plan.Plan) {
		if p.Tool != nil && i < len(p.Tool.Marks) {
			p.Tool.Marks = slices.Delete(p.Tool.Marks, i, i+1)
		}
	}))
}
