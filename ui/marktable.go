package ui

import (
	"errors"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"stopwright/assets/words"
	"stopwright/detent"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// tidyLength rounds a length that was worked out to what a file should hold: a
// millionth of a millimetre.
func tidyLength(mm float64) float64 { return math.Round(mm*1e6)/1e6 + 0 }

// markTable lists the marks of a board, with how far each lies from the curve
// fitted to them, and takes more.
type markTable struct {
	w      *Window
	list   *widget.List
	tall   *fyne.Container // the list
	angle  *widget.Entry
	x      *widget.Entry
	wrong  *problem
	object fyne.CanvasObject // the line that takes a mark
	cut    detent.CutLine
}

// rowsShown is how many rows of a list in this page can be seen at once.
const rowsShown = 5

func newMarkTable(w *Window) *markTable {
	t := w.words.Text
	m := &markTable{w: w, angle: widget.NewEntry(), x: widget.NewEntry(), wrong: newProblem(w)}
	m.list = widget.NewList(m.count, m.makeRow, m.showRow)
	m.tall = container.New(tallLayout(rowsShown*rowHeight()), m.list)
	m.angle.PlaceHolder, m.x.PlaceHolder = t("field.tool.marks[].angle"), t("field.tool.marks[].x")
	m.angle.OnSubmitted = func(string) { w.focus(m.x) }
	m.x.OnSubmitted = func(string) { m.add() }
	add := widget.NewButtonWithIcon(t("setting.marks.add"), theme.ContentAddIcon(), m.add)
	m.object = container.NewVBox(container.NewBorder(nil, nil, nil, add, container.NewGridWithColumns(2, m.angle, m.x)), m.wrong.object)
	return m
}

// rowHeight is the height of a list's row: a button's.
func rowHeight() float32 {
	return widget.NewButtonWithIcon("", theme.DeleteIcon(), nil).MinSize().Height + theme.Padding()
}

func (m *markTable) count() int {
	if t := m.w.store.Plan().Tool; t != nil {
		return len(t.Marks)
	}
	return 0
}

func (m *markTable) makeRow() fyne.CanvasObject {
	return container.NewBorder(nil, nil, nil, iconButton(theme.DeleteIcon(), nil), shortLabel(""))
}

func (m *markTable) showRow(i widget.ListItemID, o fyne.CanvasObject) {
	row := o.(*fyne.Container)
	mark := m.w.store.Plan().Tool.Marks[i]
	args := words.Args{"Angle": words.Deg(mark.Angle), "X": words.MM(mark.X)}
	key := "setting.mark"
	if f := m.cut.Marks; f != nil && i < len(f.Left) {
		key, args["Left"] = "setting.mark.off", words.MM(f.Left[i])
	}
	row.Objects[0].(*widget.Label).SetText(m.w.words.Text(key, args))
	row.Objects[1].(*widget.Button).OnTapped = func() { m.w.removeMark(i) }
}

// refresh shows the plan's marks.
func (m *markTable) refresh(cut detent.CutLine) {
	m.cut = cut
	if m.count() == 0 {
		m.tall.Hide()
	} else {
		m.tall.Show()
	}
	m.list.Refresh()
}

// add takes what is typed as one more mark.
func (m *markTable) add() {
	angle, err := m.w.units().ReadAngle(m.angle.Text)
	if err == nil {
		var x float64
		if x, err = m.w.units().ReadLength(m.x.Text); err == nil {
			if !crosses(m.w.store.Plan(), angle) {
				err = errors.New(m.w.words.Text("setting.marks.steep"))
			} else {
				err = m.w.store.Log(func(p *plan.Plan) { p.Tool.Marks = append(p.Tool.Marks, plan.Mark{Angle: angle, X: x}) })
			}
		}
	}
	m.wrong.tell(err)
	if err == nil {
		m.angle.SetText("")
		m.x.SetText("")
		m.w.focus(m.angle)
	}
}

// crosses reports whether the tool has a crossing worth marking at a turn.
func crosses(p plan.Plan, turn float64) bool {
	_, ok := plate.ToolLine(*p.Tool).Crossing(plate.Lean(p, geom.Angle(turn)))
	return ok
}
