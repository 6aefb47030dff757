package export

import (
	"io"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/detent"
	"stopwright/detent/plan"
)

// crowded returns a plate with n seats all round and room for each.
func crowded(n int) plan.Plan {
	const pitch = 9.0 // mm of ring a seat
	p := plan.Default()
	radius := max(105, pitch*float64(n)/(2*math.Pi))
	p.Catches[0].Radius = radius
	p.Turntable.Diameter = 2*radius + 60
	p.Base.Width, p.Base.Depth = 2*radius+120, 2*radius+120
	for i := range n {
		p.Stops = append(p.Stops, plan.Stop{Angle: 360*float64(i)/float64(n) - 180})
	}
	return p
}

// madeAs is the name of a file of a format. Where the ending chooses the kind of
// file it is the quickest, SVG; the other formats do not look at it.
func madeAs(f Format) string { return "plate-" + f.Name + ".svg" }

// BenchmarkFormat makes every file of each format for a plate of 720 seats, from
// the report to the last byte.
func BenchmarkFormat(b *testing.B) {
	const seats = 720
	r, err := detent.Study(b.Context(), detent.Solve(crowded(seats)))
	require.NoError(b, err)
	for _, f := range Formats {
		b.Run(f.Name, func(b *testing.B) {
			var q Request
			*f.Path(&q) = madeAs(f)
			for b.Loop() {
				for _, o := range q.outputs(r) {
					if err := o.write(io.Discard); err != nil {
						b.Fatal(err)
					}
				}
			}
		})
	}
}
