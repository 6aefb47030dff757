package router_test

import (
	"bytes"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
	"stopwright/export/router"
)

// date is what a caller might give.
const date = "2026-11-20"

// mitres is a one-sided set with a catch off the axis and holes of every kind,
// so that no sign can hide.
func mitres(a plan.Arrangement) plan.Plan {
	p := plan.Default()
	p.Title, p.Arrangement = "Swivelling sanding table", a
	p.Catches = []plan.Placement{{Name: "A", Azimuth: 20, Radius: 105}, {Name: "B", Azimuth: -140, Radius: 90}}
	p.Stops = []plan.Stop{
		{Angle: 0, Label: "square"},
		{Angle: 22.5, BothSides: true, Label: "8 sides"},
		{Angle: 50, Label: "odd", Catches: []string{"A", "B"}},
	}
	p.Seat.ReliefDiameter = 2.5
	collar := plan.NewCollar(p.Turntable)
	p.Collar = &collar
	p.Features = []plan.Feature{
		{Part: plan.PartBase, Kind: plan.Hole, X: 60, Y: -40, Diameter: 5, Label: "foot screw"},
		{Part: plan.PartTurntable, Kind: plan.Hole, X: 30, Y: 25, Diameter: 12},
		{Part: plan.PartBase, Kind: plan.Slot, X: -60, Y: -30, X2: -60, Y2: -70, Width: 8, Label: "dust"},
	}
	r := plan.DefaultRouter()
	p.Router = &r
	return p
}

// fitted adds what the making of a plate may add: pilots for the screws and
// recesses for their heads, knock-out holes and registration pins.
func fitted(p plan.Plan) plan.Plan {
	p.Making.Screws = plan.ScrewHoles{Size: "M4", Pilot: 2.8, PilotDepth: 12, Head: 8.5, HeadDepth: 3}
	p.Making.KnockOut = 4
	p.Making.Registration = plan.Registration{Diameter: 6, Distance: 60}
	return p
}

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: date} }

// made returns the program of a part that is not refused.
func made(t testing.TB, p plan.Plan, part plan.Part) router.Program {
	t.Helper()
	require.NoError(t, plan.Validate(p))
	program, err := router.New(plate.New(p), part, words.English())
	require.NoError(t, err)
	return program
}

// text returns the file of a program.
func text(t testing.TB, p router.Program) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, router.Write(&b, p, info()))
	return b.String()
}

func writeFile(path, content string) error { return os.WriteFile(path, []byte(content), 0o600) }
