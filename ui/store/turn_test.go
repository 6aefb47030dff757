package store_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestTheTableTurnsAsFarAsItsTravel(t *testing.T) {
	p := withStops(0, 30)
	p.Travel = plan.Span{From: -10, To: 60}
	s := store.New(p)
	told := heard(s)
	s.SetTurn(20)
	s.SetTurn(20)
	assert.Equal(t, []store.Change{store.TurnChanged}, *told, "the same turn is no change")
	s.SetTurn(75)
	assert.Equal(t, geom.Angle(60), s.Turn())
	s.SetTurn(-75)
	assert.Equal(t, geom.Angle(-10), s.Turn())

	s.SetTurn(60)
	require.NoError(t, s.Edit("travel", func(p *plan.Plan) { p.Travel.To = 45 }))
	assert.Equal(t, geom.Angle(45), s.Turn(), "a shorter travel brings it along")
	assert.Equal(t, "travel", undoName(s), "turning is no edit")

	p.Travel = plan.Span{From: 5, To: 60}
	assert.Equal(t, geom.Angle(5), store.New(p).Turn(), "a table that cannot stand at zero")
}

func TestNextStop(t *testing.T) {
	p := withStops(20, -36, 20)
	p.Stops[1].BothSides = true
	s := store.New(p)
	for _, c := range []struct {
		turn, next, before geom.Angle
		hasNext, hasBefore bool
	}{
		{0, 20, -36, true, true},
		{20, 36, -36, true, true},
		{20 + 1e-9, 36, -36, true, true},
		{36, 0, 20, false, true},
		{-36, 20, 0, true, false},
		{-100, -36, 0, true, false},
	} {
		s.SetTurn(c.turn)
		next, ok := s.NextStop(1)
		assert.Equal(t, c.hasNext, ok, "on from %v", c.turn)
		assert.Equal(t, c.next, next, "on from %v", c.turn)
		before, ok := s.NextStop(-1)
		assert.Equal(t, c.hasBefore, ok, "back from %v", c.turn)
		assert.Equal(t, c.before, before, "back from %v", c.turn)
	}
}

func TestAtStop(t *testing.T) {
	s := store.New(withStops(0, 30))
	for turn, want := range map[geom.Angle]bool{0: true, 30: true, 30 + 5e-7: true, 30.001: false, 15: false} {
		s.SetTurn(turn)
		at, ok := s.AtStop()
		assert.Equal(t, want, ok, "%v", turn)
		if ok {
			assert.InDelta(t, turn.Degrees(), at.Degrees(), 1e-6)
		}
	}
}
