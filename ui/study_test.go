package ui

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

// waiting keeps what is to be done behind the window until the test says.
type waiting struct{ work []func() }

func (q *waiting) studies() studies {
	return studies{
		run:  func(work func()) { q.work = append(q.work, work) },
		back: func(done func()) { done() },
	}
}

func TestAPlanIsStudiedOnceAndOnlyWhileItStands(t *testing.T) {
	w := opened(t, withStops(0, 30))
	var q waiting
	w.studies = q.studies()
	changed := 0
	w.store.OnChange(func(c store.Change) {
		if c == store.StudyChanged {
			changed++
		}
	})

	w.study()
	w.study()
	require.Len(t, q.work, 1, "the same plan is not studied twice at once")
	require.NoError(t, w.store.AddStops("add", plan.Stop{Angle: 41}))
	w.study()
	require.Len(t, q.work, 2)
	q.work[0]()
	assert.Zero(t, changed, "the plan has changed since: that study was given up")
	q.work[1]()
	assert.Equal(t, 1, changed)
	_, done := w.store.Studied()
	assert.True(t, done)
	w.study()
	assert.Len(t, q.work, 2, "it is known already")
}

func TestPagesAreTurnedToByTheirKeys(t *testing.T) {
	w := opened(t, withStops(0, 30))
	for i, item := range w.pageCommands() {
		item.Action()
		assert.Equal(t, w.pageList[i].id, w.page())
		assert.Equal(t, w.words.Text("page."+string(w.page())), item.Label)
	}
}
