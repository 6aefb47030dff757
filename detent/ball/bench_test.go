package ball_test

import (
	"testing"

	"stopwright/detent/ball"
)

// BenchmarkClick works out all numbers of a catch over a seat, the dead band
// included, and both curves at 400 points: what a page does at every move of a
// slider.
func BenchmarkClick(b *testing.B) {
	s := example()
	s.Seat.Chamfer = 0.3
	table := ball.Table{Load: 6, Friction: 0.2, BearingRadius: 85}
	for b.Loop() {
		k, err := ball.NewClick(s)
		if err != nil {
			b.Fatal(err)
		}
		home, _ := k.Home()
		riding, _ := k.Riding()
		k.Torques()
		k.DeadBand(0.7, table.Drag(home.Force, 0))
		k.Capture()
		k.Contour().FloorClearance()
		ball.TrackDent(riding.Force, s.BallDiameter, 5600)
		if len(k.Curve(5, 400)) != 400 {
			b.Fatal("no curve")
		}
	}
}
