package ui

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/ink"
	"stopwright/ui/store"
)

// The bench is light or dark by choice, and what is on it changes with it.
func TestLooks(t *testing.T) {
	w := opened(t, withStops(0, 36))
	for _, c := range []struct {
		item    string
		look    Look
		palette ink.Palette
	}{
		{"look.dark", DarkLook, ink.Dark},
		{"look.light", LightLook, ink.Light},
		{"look.dark", DarkLook, ink.Dark},
		{"look.black", BlackOnWhiteLook, ink.BlackOnWhite},
		{"look.white", WhiteOnBlackLook, ink.WhiteOnBlack},
	} {
		w.styleItem(t, "menu.look", c.item).Action()
		assert.Equal(t, c.look, w.theme.look)
		for _, item := range []string{"look.desktop", "look.light", "look.dark", "look.black", "look.white"} {
			assert.Equal(t, item == c.item, w.styleItem(t, "menu.look", item).Checked, item)
		}
		assert.Equal(t, c.palette.Paper, mostOf(w, 0), "the plate's paper")
		assert.Equal(t, c.palette.Paper, mostOf(w, 1), "the chart's paper")
	}
	w.styleItem(t, "menu.look", "look.desktop").Action()
	assert.Contains(t, []ink.Palette{ink.Light, ink.Dark}, w.palette())
}

// mostOf returns the colour that covers most of a page.
func mostOf(w *Window, page int) (most any) {
	img := w.plate.paint(300, 300)
	if page == 1 {
		w.showPage(chartPage)
		img = w.chart.paint(300, 424)
		w.showPage(platePage)
	}
	n := 0
	for c, count := range colours(img) {
		if count > n {
			most, n = c, count
		}
	}
	return most
}

func TestShotsOfEveryPage(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "new", "folder")
	written, err := Shots(test.NewTempApp(t), folder)
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(written), 40, "five pictures, in four looks, at two sizes")
	for _, path := range written {
		f, err := os.Open(path)
		require.NoError(t, err)
		img, err := png.Decode(f)
		require.NoError(t, err)
		require.NoError(t, f.Close())
		assert.Contains(t, []int{1024, 1600}, img.Bounds().Dx(), path)
		assert.Greater(t, len(colours(img)), 50, "%s is not blank", path)
	}
}

func TestShotsThatCannotBeWritten(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o600))
	_, err := Shots(test.NewTempApp(t), filepath.Join(file, "folder"))
	assert.Error(t, err)
}

// Layers come and go by the menu, and the plate is another picture without.
func TestLayersOfThePlate(t *testing.T) {
	p := withStops(0, 36)
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	w := opened(t, p)
	picture := func() map[any]int {
		out := map[any]int{}
		for c, n := range colours(w.plate.paint(400, 400)) {
			out[c] = n
		}
		return out
	}
	all := picture()
	for i := range w.menuItem(t, "menu.view", "menu.layers").ChildMenu.Items {
		item := func() *fyne.MenuItem { return w.menuItem(t, "menu.view", "menu.layers").ChildMenu.Items[i] }
		require.True(t, item().Checked, item().Label)
		item().Action()
		assert.False(t, item().Checked, item().Label)
		assert.NotEqual(t, all, picture(), "without %s", item().Label)
		item().Action()
		assert.Equal(t, all, picture(), "with %s again", item().Label)
	}
	assert.Zero(t, w.store.View().Layers)
}

func TestEveryFaceIsAPictureOfItsOwn(t *testing.T) {
	p := withStops(0, 36)
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	w := opened(t, p)
	require.Len(t, w.tools.face.Options, 4)
	seen := map[string]bool{}
	for i, name := range w.tools.face.Options {
		w.tools.face.SetSelectedIndex(i)
		assert.Equal(t, w.tools.parts[i], w.store.View().Part)
		assert.Equal(t, name, w.tools.face.Selected)
		img := w.plate.paint(300, 300).(*image.RGBA)
		assert.False(t, seen[string(img.Pix)], name)
		seen[string(img.Pix)] = true
	}
	w.section(t, "group.collar")
	require.NoError(t, w.store.Edit("off", func(p *plan.Plan) { p.Collar = nil }))
	assert.Len(t, w.tools.face.Options, 3)
	assert.NotPanics(t, func() { w.plate.paint(300, 300) }, "the face looked at is gone")
	assert.NotEqual(t, plan.PartCollar, w.store.View().Part)
}

func TestSnapIsChosen(t *testing.T) {
	w := opened(t, withStops(0))
	for i, want := range snaps {
		w.tools.snap.SetSelectedIndex(i)
		assert.Equal(t, want, w.store.View().Snap)
	}
	w.store.SetView(store.View{Snap: 5})
	assert.Equal(t, "5°", w.tools.snap.Selected)
}
