package store_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
	"stopwright/ui/store"
)

func TestAPlanThatNoFileHoldsIsUnsavedUntilItIsSaved(t *testing.T) {
	s := store.New(plan.Default())
	told := heard(s)
	s.MarkUnsaved()
	assert.True(t, s.Unsaved())
	assert.Equal(t, []store.Change{store.FileChanged}, *told)
	setTitle(t, s, "a")
	s.Undo()
	assert.True(t, s.Unsaved(), "undo does not mend it")
	s.Saved("plate.stopwright")
	assert.False(t, s.Unsaved())
	s.MarkUnsaved()
	s.Load(plan.Default(), "")
	assert.False(t, s.Unsaved())
}
