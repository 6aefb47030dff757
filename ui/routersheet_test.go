package ui

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/export/router"
)

// openRouter opens the sheet of the router.
func (w *Window) openRouter(t *testing.T) *routerSheet {
	t.Helper()
	w.choose(t, "menu.file", "menu.router")
	require.NotNil(t, w.router)
	return w.router
}

// set types a value into a field of the router's sheet.
func (s *routerSheet) set(t *testing.T, key, text string) {
	t.Helper()
	for i, f := range s.w.routerFields() {
		if f.Path == routerKeys+key {
			e := find[*valueEntry](s.rows[i].object)
			require.Len(t, e, 1, key)
			s.w.typeInto(e[0], text)
			s.w.press(fyne.KeyReturn)
			return
		}
	}
	require.Fail(t, "no field "+key)
}

func TestRouterIsSetInItsSheet(t *testing.T) {
	w := opened(t, withStops(0, 36))
	s := w.openRouter(t)
	require.Nil(t, w.store.Plan().Router, "looking changes nothing")
	assert.Contains(t, s.view.said.Text, "tools: 2")

	s.set(t, "depth_per_pass", "0.5")
	require.NotNil(t, w.store.Plan().Router)
	want := plan.DefaultRouter()
	want.DepthPerPass = 0.5
	assert.Equal(t, want, *w.store.Plan().Router, "the rest as it was by default")
	assert.Equal(t, w.words.Text("edit.field", words.Args{"Field": w.words.Text("field.router.depth_per_pass")}), w.undoName())
	assert.Equal(t, w.words.Text("explain.router.depth_per_pass"), s.explain.Text, "the field is explained in the sheet")

	s.set(t, "feed", "0")
	assert.Contains(t, texts(s.rows[5].object), "30000", "what a feed may be")
	assert.Equal(t, 500.0, w.store.Plan().RouterSettings().Feed)
	w.press(fyne.KeyEscape)

	w.answer(t, "router.close")
	assert.Nil(t, w.router)
	w.store.Undo()
	assert.Nil(t, w.store.Plan().Router)
}

func TestRouterSheetSaysWhyItRefuses(t *testing.T) {
	w := opened(t, withStops(0, 36))
	s := w.openRouter(t)
	assert.False(t, s.why.object.Visible())
	s.set(t, "spindle", "0")
	s.set(t, "cutter", "9")
	assert.True(t, s.why.object.Visible())
	assert.Contains(t, s.why.label.Text, "spindle is off")
	assert.Contains(t, s.why.label.Text, "too wide", "all at once")
	assert.Equal(t, w.words.Text("router.view.refused"), s.view.said.Text)
	w.answer(t, "router.export")
	assert.NotNil(t, w.router, "it is not exported, and the sheet stays")
	s.set(t, "spindle", "8000")
	s.set(t, "cutter", "3")
	assert.False(t, s.why.object.Visible())
	w.answer(t, "router.export")
	folder := t.TempDir()
	w.typePath(t, filepath.Join(folder, "x.ngc"))
	w.answer(t, "ask.save")
	assert.Equal(t, []string{"x-base.ngc", "x-turntable.ngc", "x.ngc"}, names(t, folder))
	assert.Contains(t, fileText(t, filepath.Join(folder, "x-base.ngc")), "S8000 M3")
}

func TestRouterSheetShowsTheSimulation(t *testing.T) {
	w := opened(t, withStops(0, 36))
	s := w.openRouter(t)
	base := s.view.program
	require.Equal(t, plan.PartBase, base.Part)
	w.press(fyne.KeyDown)
	s.pick.SetSelectedIndex(1)
	require.Equal(t, plan.PartTurntable, s.view.program.Part)
	assert.NotEqual(t, base.Seconds, s.view.program.Seconds)
	s.view.time.SetValue(s.view.time.Max / 2)
	assert.Contains(t, s.view.said.Text, router.Clock(w.words, s.view.program.Seconds/2))
	full := s.view.paint(300, 300)
	require.Equal(t, 300, full.Bounds().Dx())
}

func TestRouterSheetFitsAndSpeaksGerman(t *testing.T) {
	for _, language := range words.Languages() {
		w := opened(t, withStops(0, 36))
		w.speak(language)
		w.win.Resize(fyne.NewSize(1024, 700))
		s := w.openRouter(t)
		size := w.overlay().(*widget.PopUp).Content.Size()
		assert.LessOrEqual(t, size.Width, float32(1024), language)
		assert.LessOrEqual(t, size.Height, float32(700), language)
		assert.NotContains(t, texts(w.overlay()), "[", language)
		assert.Len(t, s.rows, 16, language)
		for _, f := range w.routerFields() {
			assert.True(t, w.words.Has("field."+f.Generic), f.Path)
			assert.True(t, w.words.Has("explain."+f.Generic), f.Path)
			for _, choice := range f.Choices {
				assert.True(t, w.words.Has("choice."+choice), choice)
			}
		}
	}
}

// A format that is refused cannot be chosen, and the others are exported.
func TestExportWithoutWhatIsRefused(t *testing.T) {
	p := withStops(0, 36)
	set := plan.DefaultRouter()
	set.Spindle = 0
	p.Router = &set
	w := opened(t, p)
	folder := t.TempDir()
	w.choose(t, "menu.file", "menu.export")
	assert.Contains(t, w.asked(t), "spindle is off")
	w.typePath(t, filepath.Join(folder, "table"))
	w.answer(t, "export.do")
	for _, name := range names(t, folder) {
		assert.NotEqual(t, ".ngc", filepath.Ext(name))
	}
	assert.Contains(t, names(t, folder), "table.dxf")
}
