package dxf

import (
	"io"
	"testing"

	"stopwright/detent/geom"
	"stopwright/export/drawing"
)

// BenchmarkDXF writes the most seats a plan may have.
func BenchmarkDXF(b *testing.B) {
	const seats = 10_000
	var d drawing.Drawing
	for i := range seats {
		d.Add(drawing.Seats, drawing.Circle{
			Centre: geom.Polar(5000, geom.Angle(i)*geom.FullTurn/seats), Radius: 0.5,
		})
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := Write(io.Discard, d); err != nil {
			b.Fatal(err)
		}
	}
}
