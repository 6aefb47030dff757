package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"
)

// paintStale paints the sketches of the click page that ask for it, as the
// driver does, at the size they have in the window.
func (v *clickView) paintStale() {
	for _, s := range []*sketch{v.section, v.torque, v.travel} {
		if s.stale {
			s.generate(int(s.Size().Width), int(s.Size().Height))
		}
	}
}

// BenchmarkClickPage is one step of a slider of the click page, from the
// slider's event to the painted pictures: the table turned, and what comes out
// otherwise.
func BenchmarkClickPage(b *testing.B) {
	p, err := Example("sanding-table")
	require.NoError(b, err)
	w := newWindow(test.NewTempApp(b), p, LightLook)
	w.studies = atOnce()
	w.Show()
	w.win.Resize(fyne.NewSize(1600, 1000))
	w.showPage(clickPage)
	v := w.clicks
	v.paintStale()
	require.Greater(b, v.travel.Size().Width, float32(600), "the page is laid out")
	b.Run("turn", func(b *testing.B) {
		x := 0.5
		b.ReportAllocs()
		for b.Loop() {
			x = -x
			v.turn.OnChanged(x)
			v.paintStale()
		}
	})
	b.Run("whatif", func(b *testing.B) {
		x := 0.1
		b.ReportAllocs()
		for b.Loop() {
			x = 0.3 - x
			v.ifs[0].OnChanged(x)
			v.paintStale()
		}
	})
}
