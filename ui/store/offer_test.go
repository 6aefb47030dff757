package store_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// offered returns a store with stops at 0, ±15 and +36, over a travel of ±60.
func offered() *store.Store {
	p := plan.Default()
	p.Travel = plan.Span{From: -60, To: 60}
	p.Stops = []plan.Stop{{Angle: 0}, {Angle: 15, BothSides: true}, {Angle: 36}}
	return store.New(p)
}

func TestOffer(t *testing.T) {
	one := func(a float64) plan.Stop { return plan.Stop{Angle: a} }
	both := func(a float64) plan.Stop { return plan.Stop{Angle: a, BothSides: true} }
	for _, c := range []struct {
		stops []plan.Stop
		want  store.Offer
		why   string
	}{
		{nil, store.Offer{}, "nothing on offer"},
		{[]plan.Stop{both(22.5)}, store.Offer{New: []plan.Stop{both(22.5)}}, "new on both sides"},
		{[]plan.Stop{one(0), both(0)}, store.Offer{There: []plan.Stop{one(0), both(0)}}, "0 has no other side"},
		{[]plan.Stop{one(-15), both(15), both(-15)}, store.Offer{There: []plan.Stop{one(-15), both(15), both(-15)}}, "there by the other side"},
		{[]plan.Stop{both(36)}, store.Offer{New: []plan.Stop{one(-36)}}, "only the side that is missing"},
		{[]plan.Stop{one(36 + 0.5e-9)}, store.Offer{There: []plan.Stop{one(36 + 0.5e-9)}}, "the same but for rounding"},
		{[]plan.Stop{one(36.00001)}, store.Offer{New: []plan.Stop{one(36.00001)}}, "as near as anyone means"},
		{[]plan.Stop{one(20), one(20)}, store.Offer{New: []plan.Stop{one(20)}, Repeated: 1}, "named twice"},
		{[]plan.Stop{both(20), one(-20)}, store.Offer{New: []plan.Stop{both(20)}, Repeated: 1}, "named as the other side"},
		{[]plan.Stop{one(20), both(20)}, store.Offer{New: []plan.Stop{one(20), one(-20)}}, "its other side named later"},
		{[]plan.Stop{both(60), both(61), one(-70)}, store.Offer{New: []plan.Stop{both(60), both(61), one(-70)}, Outside: 2}, "beyond the travel"},
	} {
		assert.Equal(t, c.want, offered().Offer(c.stops), c.why)
	}
}

func TestInTravel(t *testing.T) {
	s := offered()
	require.NoError(t, s.Edit("travel", func(p *plan.Plan) { p.Travel = plan.Span{From: 0, To: 360} }))
	for give, want := range map[geom.Angle]geom.Angle{-90: 270, 90: 90, 0: 0, 400: 40} {
		assert.Equal(t, want, s.InTravel(give))
	}
	require.NoError(t, s.Edit("travel", func(p *plan.Plan) { p.Travel = plan.Span{From: -3, To: 93} }))
	assert.Equal(t, geom.Angle(-90), s.InTravel(-90), "left alone where the table cannot go there")
}

func TestAddStopsKeepsOrder(t *testing.T) {
	s := offered()
	require.NoError(t, s.AddStops("add", plan.Stop{Angle: 40}, plan.Stop{Angle: 5, Label: "new"}, plan.Stop{Angle: 0, Label: "again"}, plan.Stop{Angle: 10}))
	assert.Equal(t, []float64{0, 0, 5, 10, 15, 36, 40}, angles(s), "a list in order stays so")
	assert.Equal(t, "again", s.Plan().Stops[1].Label, "after one of the same angle")
	assert.Equal(t, 3, s.Selection().Lead, "the last one given is selected")
	s.Undo()
	assert.Len(t, s.Plan().Stops, 3, "one step to undo")

	require.NoError(t, s.Edit("shuffle", func(p *plan.Plan) { p.Stops[0].Angle = 50 }))
	require.NoError(t, s.AddStops("add", plan.Stop{Angle: 40}, plan.Stop{Angle: 5}))
	assert.Equal(t, 5.0, s.Plan().Stops[4].Angle, "a list out of order gets them at its end")
	assert.Equal(t, 4, s.Selection().Lead)
}

func BenchmarkOffer(b *testing.B) {
	s := offered()
	stops := make([]plan.Stop, 10_000)
	for i := range stops {
		stops[i].Angle = float64(i) / 100
	}
	for b.Loop() {
		s.Offer(stops)
	}
}
