package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// The tabs of the page.
const (
	toolTab = iota
	proofTab
)

// settingView is the page for what comes after the plate is made: where the
// tool's line and the fence lie, and what the measured stops say.
type settingView struct {
	tool   *toolPane
	proof  *proofPane
	tabs   *container.AppTabs
	object fyne.CanvasObject
}

func newSettingView(w *Window) *settingView {
	v := &settingView{tool: newToolPane(w), proof: newProofPane(w)}
	v.tabs = container.NewAppTabs(
		container.NewTabItem(w.words.Text("setting.tool"), underWheel(v.tool.object, v.tool.marks.list)),
		container.NewTabItem(w.words.Text("setting.proof"), underWheel(v.proof.object, v.proof.log.list)),
	)
	v.tabs.OnSelected = func(*container.TabItem) { v.refresh() }
	v.object = container.New(flow{last: true}, newCaution(w, "setting.caution"), v.tabs)
	return v
}

// refresh brings the tab that can be seen up to date.
func (v *settingView) refresh() {
	if v.tabs.SelectedIndex() == toolTab {
		v.tool.refresh()
	} else {
		v.proof.refresh()
	}
}

// newCaution makes the line that stands before work at a machine.
func newCaution(w *Window, key string) fyne.CanvasObject {
	sign := widget.NewIcon(theme.NewWarningThemedResource(theme.WarningIcon()))
	return container.NewBorder(nil, nil, sign, nil, wrapped(w.words.Text(key)))
}

// wrapped makes a label of any length.
func wrapped(text string) *widget.Label {
	l := widget.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// tallLayout gives its one object a height of its own and the width there is: a
// list in a page that scrolls.
type tallLayout float32

// MinSize is the height, and what the object needs across.
func (l tallLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(objects[0].MinSize().Width, float32(l))
}

// Layout fills the place.
func (l tallLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) { objects[0].Resize(size) }
