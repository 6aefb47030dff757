package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"
)

// BenchmarkOpen makes the window on a demonstration plan and paints its first
// frame with the toolkit's software renderer: our share of starting the program.
func BenchmarkOpen(b *testing.B) {
	p, err := Example("sanding-table")
	require.NoError(b, err)
	a := test.NewTempApp(b)
	b.ReportAllocs()
	for b.Loop() {
		w := newWindow(a, p, LightLook)
		w.Show()
		w.win.Resize(fyne.NewSize(1180, 780))
		w.win.Canvas().Capture()
		w.win.Hide()
	}
}
