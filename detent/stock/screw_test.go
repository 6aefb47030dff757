package stock_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"stopwright/detent/stock"
)

// TestClearanceHoles holds every digit of the standard's table from M2 to M16.
func TestClearanceHoles(t *testing.T) {
	want := []struct {
		thread                        string
		nominal, fine, medium, coarse float64
	}{
		{"M2", 2, 2.2, 2.4, 2.6},
		{"M2.5", 2.5, 2.7, 2.9, 3.1},
		{"M3", 3, 3.2, 3.4, 3.6},
		{"M4", 4, 4.3, 4.5, 4.8},
		{"M5", 5, 5.3, 5.5, 5.8},
		{"M6", 6, 6.4, 6.6, 7},
		{"M8", 8, 8.4, 9, 10},
		{"M10", 10, 10.5, 11, 12},
		{"M12", 12, 13, 13.5, 14.5},
		{"M14", 14, 15, 15.5, 16.5},
		{"M16", 16, 17, 17.5, 18.5},
	}
	got := stock.Clearances()
	require.Len(t, got, len(want))
	for i, w := range want {
		assert.Equal(t, w.thread, got[i].Thread)
		assert.Equal(t, w.nominal, got[i].Nominal, w.thread)
		for fit, mm := range map[stock.Fit]float64{stock.Fine: w.fine, stock.Medium: w.medium, stock.Coarse: w.coarse} {
			hole := got[i].Hole(fit)
			assert.Equal(t, mm, hole, "%s fit %d", w.thread, fit)
			assert.Greater(t, hole, w.nominal)
		}
	}
}

func TestHoleOfNoFit(t *testing.T) {
	assert.Zero(t, stock.Clearances()[0].Hole(0))
}

// screw returns a wood screw by its designation.
func screw(t *testing.T, designation string) stock.WoodScrew {
	t.Helper()
	for _, s := range stock.WoodScrews() {
		if s.Designation() == designation {
			return s
		}
	}
	require.Fail(t, "no such screw", designation)
	return stock.WoodScrew{}
}

func TestShanksOfTheHandbook(t *testing.T) {
	for gauge, mm := range map[int]float64{4: 2.84, 6: 3.51, 8: 4.17, 10: 4.83, 12: 5.49, 14: 6.15, 20: 8.13, 24: 9.45} {
		for _, s := range stock.WoodScrews() {
			if s.Gauge == gauge {
				assert.Equal(t, mm, s.Shank.Typical, s.Designation())
				assert.Equal(t, stock.Transcribed, s.Shank.Certainty, s.Designation())
			}
		}
	}
}

// TestShanksFollowTheRule: what is printed is the rule to two decimals.
func TestShanksFollowTheRule(t *testing.T) {
	const printed = 0.005 // mm: half of the last decimal in the handbook
	last := 0.0
	for _, s := range stock.WoodScrews() {
		inch := 0.060 + 0.013*float64(s.Gauge)
		assert.InDelta(t, inch*25.4, s.Shank.Typical, printed+rounding, s.Designation())
		assert.InDelta(t, inch*25.4, stock.GaugeShank(s.Gauge), rounding, s.Designation())
		assert.Greater(t, s.Shank.Typical, last)
		last = s.Shank.Typical
	}
	assert.Len(t, stock.WoodScrews(), 15)
}

func TestLeadHolesAreNumberDrills(t *testing.T) {
	for gauge, want := range map[string][2]string{"#6": {"#52", "#44"}, "#8": {"#48", "#35"}, "#10": {"#43", "#31"}} {
		s := screw(t, gauge)
		for i, lead := range []stock.Value{s.LeadSoft, s.LeadHard} {
			d := drill(t, want[i])
			assert.Equal(t, d.MM, lead.Typical, gauge)
			nearest, _ := stock.NearestDrill(lead.Typical, stock.Number)
			assert.Equal(t, want[i], nearest.Designation)
			assert.Equal(t, stock.CommonPractice, lead.Certainty)
		}
	}
}

// TestLeadHolesAgree: the drills that shops use lie near the handbook's shares
// of a root of two thirds of the shank, so the gauges without a drill of their
// own are in line with those that have one.
func TestLeadHolesAgree(t *testing.T) {
	const apart = 0.13 // share: shop charts differ from each other by more
	for _, s := range stock.WoodScrews() {
		assert.InEpsilon(t, s.Shank.Typical*2/3*0.7, s.LeadSoft.Typical, apart, s.Designation())
		assert.InEpsilon(t, s.Shank.Typical*2/3*0.9, s.LeadHard.Typical, apart, s.Designation())
		assert.Less(t, s.LeadSoft.Typical, s.LeadHard.Typical)
	}
	s := screw(t, "#12")
	assert.InDelta(t, 5.49*2/3*0.7, s.LeadSoft.Typical, rounding)
	assert.InDelta(t, 5.49*2/3*0.9, s.LeadHard.Typical, rounding)
}
