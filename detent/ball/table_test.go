package ball_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/ball"
)

func TestTable(t *testing.T) {
	table := ball.Table{Load: 6, Friction: 0.2, BearingRadius: 85}
	assert.InDelta(t, 58.8399, table.Weight(), rounding)
	// 0.2·(58.8399 - 12.7058809)·0.085
	assert.InDelta(t, 0.7842783, table.Drag(12.7058809, 0), sixDigits)
	assert.InDelta(t, 0.7842783+0.3948, table.Drag(12.7058809, 0.3948), sixDigits, "another ball rides")
	assert.InDelta(t, 0.3948, table.Drag(70, 0.3948), sixDigits, "a lifted table does not rub")
}

func TestAtHandle(t *testing.T) {
	f, ok := ball.AtHandle(1.4, 100)
	assert.True(t, ok)
	assert.InDelta(t, 14, f, rounding, "1.4 N·m at 100 mm")
	_, ok = ball.AtHandle(1.4, 0)
	assert.False(t, ok)
}
