package ink

import (
	"fmt"
	"testing"
)

func BenchmarkPaint(b *testing.B) {
	for _, c := range []struct{ seats, size int }{{9, 800}, {720, 800}, {720, 1600}, {10_000, 800}} {
		b.Run(fmt.Sprintf("%d seats, %d px", c.seats, c.size), func(b *testing.B) {
			d := sample(c.seats)
			canvas := New(c.size, c.size)
			density := float64(c.size) / 800
			view := Fit(d.Bounds(), 800, 800, 24).Dense(density)
			style := Light.Style()
			b.ReportAllocs()
			for b.Loop() {
				canvas.Clear(Light.Paper)
				Paint(canvas, d, view, style)
			}
		})
	}
}
