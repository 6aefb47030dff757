package ui

import (
	"strconv"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
)

// roomyPlan returns a plate large enough for n seats all round without a
// finding: 9 mm of ring a seat.
func roomyPlan(n int) plan.Plan {
	const pitch, tau = 9.0, 6.283185307179586
	p := plan.Default()
	radius := max(105, pitch*float64(n)/tau)
	p.Catches[0].Radius = radius
	p.Turntable.Diameter = 2*radius + 60
	p.Base.Width, p.Base.Depth = 2*radius+120, 2*radius+120
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360*float64(i)/float64(n) - 180})
	}
	return p
}

// BenchmarkPlateFrame is one edit of a stop to a finished frame: our own work
// (everything from the edit to the painted plate, every view told), and the
// whole window painted by the toolkit's software renderer as well.
func BenchmarkPlateFrame(b *testing.B) {
	for _, n := range []int{9, 720} {
		w := newWindow(test.NewTempApp(b), roomyPlan(n), LightLook)
		w.Show()
		w.win.Resize(fyne.NewSize(1600, 1000))
		w.plate.paint(800, 800)
		nudge := 0.01
		edit := func() {
			nudge = -nudge
			require.NoError(b, w.store.ChangeStops("move", func(s *plan.Stop) { s.Angle += nudge }, 3))
		}
		b.Run("edit/"+strconv.Itoa(n), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				edit()
				w.plate.paint(800, 800)
			}
		})
		b.Run("window/"+strconv.Itoa(n), func(b *testing.B) {
			for b.Loop() {
				edit()
				w.win.Canvas().Capture()
			}
		})
	}
}

// BenchmarkDragStep is one step of a seat dragged along its ring, from the
// pointer's event to the painted plate.
func BenchmarkDragStep(b *testing.B) {
	for _, n := range []int{9, 720} {
		b.Run(strconv.Itoa(n), func(b *testing.B) {
			w := newWindow(test.NewTempApp(b), roomyPlan(n), LightLook)
			w.Show()
			w.win.Resize(fyne.NewSize(1600, 1000))
			v := w.plate
			v.paint(800, 800)
			seat := w.store.Report().Plate.Seats[n/2]
			at := v.position(v.scene.fromPart(w.store.Report().Plate.SeatsPart, seat.Centre))
			v.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary})
			step := float32(1)
			b.ReportAllocs()
			for b.Loop() {
				step = -step
				at = at.AddXY(step*3, 0)
				v.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: at}, Dragged: fyne.Delta{DX: step * 3}})
				v.paint(800, 800)
			}
			v.DragEnd()
		})
	}
}
