package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"stopwright/detent/plan"
)

func TestDiameters(t *testing.T) {
	assert.Equal(t, 5.0, plan.Seat{Diameter: 4.5, Chamfer: 0.25}.Mouth(), "a chamfer widens both sides")
}
