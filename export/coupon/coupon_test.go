package coupon_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"stopwright/assets/words"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
	"stopwright/export/coupon"
	"stopwright/export/drawing"
	"stopwright/export/tile"
)

func info() drawing.Info { return drawing.Info{Words: words.English(), Date: "2026-11-20"} }

// sizes returns what a row cuts, and which is the plan's own.
func sizes(r coupon.Row) (all []float64, own float64) {
	for _, g := range r.Rungs {
		all = append(all, math.Round(g.Size*1e6)/1e6)
		if g.Chosen {
			own = g.Size
		}
	}
	return all, own
}

func TestRows(t *testing.T) {
	for _, c := range []struct {
		why    string
		change func(p *plan.Plan)
		kind   coupon.Kind
		want   []float64
		own    float64
	}{
		{"a metric drill and its neighbours", func(p *plan.Plan) { p.Seat.Diameter = 4.5 }, coupon.Seat, []float64{4.2, 4.3, 4.4, 4.5, 4.6, 4.7, 4.8}, 4.5},
		{"a size between drills is tried among them", func(p *plan.Plan) { p.Seat.Diameter = 4.7625 }, coupon.Seat, []float64{4.5, 4.6, 4.7, 4.7625, 4.8, 4.9, 5, 5.1}, 4.7625},
		{"a cone goes in steps", func(p *plan.Plan) { p.Seat.Form, p.Seat.Diameter = plan.Countersunk, 5.05 }, coupon.Seat, []float64{4.75, 4.85, 4.95, 5.05, 5.15, 5.25, 5.35}, 5.05},
		{"nothing below the least size", func(p *plan.Plan) { p.Seat.Form, p.Seat.Diameter = plan.Countersunk, 0.25 }, coupon.Seat, []float64{0.15, 0.25, 0.35, 0.45, 0.55}, 0.25},
		{"the body and its allowance", func(p *plan.Plan) { p.Catch.BodyDiameter, p.Catch.BodyAllowance = 8, 0.1 }, coupon.Bore, []float64{7.8, 7.9, 8, 8.1, 8.2, 8.3, 8.4}, 8.1},
		{"depths of the recess", func(p *plan.Plan) { p.Catch.FlangeThickness, p.Catch.RecessAllowance = 1, 0.5 }, coupon.Recess, []float64{0.9, 1.1, 1.3, 1.5, 1.7, 1.9, 2.1}, 1.5},
		{"no recess so deep that the ball does not stand out", func(p *plan.Plan) {
			p.Catch.FlangeThickness, p.Catch.RecessAllowance, p.Catch.Protrusion = 1, 0.5, 0.4
		}, coupon.Recess, []float64{0.9, 1.1, 1.3, 1.5, 1.7}, 1.5},
	} {
		p := plan.Default()
		c.change(&p)
		found := false
		for _, r := range coupon.Rows(p) {
			if r.Kind != c.kind {
				continue
			}
			found = true
			all, own := sizes(r)
			if c.why == "a size between drills is tried among them" {
				assert.Contains(t, all, c.own, c.why)
				assert.Len(t, all, 8, c.why)
				assert.IsIncreasing(t, all, c.why)
			} else {
				assert.Equal(t, c.want, all, c.why)
			}
			assert.InDelta(t, c.own, own, 1e-12, c.why)
		}
		assert.True(t, found, c.why)
	}
	p := plan.Default()
	p.Catch.FlangeDiameter = 0
	assert.Len(t, coupon.Rows(p), 2, "a catch without a flange has no recess")
}

func TestApply(t *testing.T) {
	p := plan.Default()
	p.Catch.Protrusion, p.Catch.RecessAllowance = 2, 0.5
	coupon.Apply(&p, coupon.Seat, 4.6)
	coupon.Apply(&p, coupon.Bore, -0.1)
	coupon.Apply(&p, coupon.Recess, 0.7)
	assert.Equal(t, 4.6, p.Seat.Diameter)
	assert.Equal(t, -0.1, p.Catch.BodyAllowance)
	assert.Equal(t, 0.7, p.Catch.RecessAllowance)
	assert.Equal(t, 1.8, p.Catch.Protrusion, "the catch sits 0.2 deeper")
	coupon.Apply(&p, coupon.Recess, 0.5)
	assert.Equal(t, 2.0, p.Catch.Protrusion, "and back")
}

// TestAnyCoupon: whatever fits leaves a plan that is valid, the plan's own size
// changes nothing, and no two holes of the drawing come near each other.
func TestAnyCoupon(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := plan.Default()
		size := func(name string, lo, hi float64) float64 {
			return math.Round(rapid.Float64Range(lo, hi).Draw(t, name)*1000) / 1000
		}
		p.Seat.Form = rapid.SampledFrom([]plan.Form{plan.Drilled, plan.Countersunk}).Draw(t, "form")
		p.Seat.Diameter, p.Seat.Chamfer = size("seat", 0.1, 30), size("chamfer", 0, 2)
		p.Catch.BodyDiameter, p.Catch.BodyAllowance = size("body", 1, 60), size("allowance", -0.5, 2)
		p.Catch.FlangeThickness, p.Catch.RecessAllowance = size("flange", 0.2, 3), size("recess", -0.1, 2)
		p.Catch.FlangeDiameter = p.Catch.BodyDiameter + size("rim", 0.2, 5)
		if plan.Validate(p) != nil {
			t.Skip("no plan")
		}
		for _, r := range coupon.Rows(p) {
			all, _ := sizes(r)
			require.IsIncreasing(t, all)
			for _, g := range r.Rungs {
				changed := p.Clone()
				coupon.Apply(&changed, r.Kind, g.Value)
				require.NoError(t, plan.Validate(changed), "%s %v", r.Kind, g.Value)
				require.Equal(t, g.Chosen, plan.Equal(p, changed), "%s %v", r.Kind, g.Value)
			}
		}
		d := coupon.Drawing(p, words.English())
		var holes []drawing.Circle
		for _, e := range d.Entities {
			require.True(t, drawing.Sound(e.Shape))
			if c, ok := e.Shape.(drawing.Circle); ok {
				holes = append(holes, c)
			}
		}
		b := d.Bounds()
		for i, a := range holes {
			require.Greater(t, a.Centre.X-a.Radius-b.Min.X, 4.0)
			require.Greater(t, b.Max.X-a.Centre.X-a.Radius, 4.0)
			require.Greater(t, b.Max.Y-a.Centre.Y-a.Radius, 4.0)
			for _, o := range holes[i+1:] {
				if apart := a.Centre.Distance(o.Centre); apart > 0 {
					require.Greater(t, apart-a.Radius-o.Radius, 5.0)
				}
			}
		}
	})
}

func TestSheetSaysWhatToDo(t *testing.T) {
	p := plan.Default()
	p.Arrangement.CatchIn = plan.PartBase
	s := coupon.Sheet(plate.New(p), info())
	assert.Contains(t, s.Steps[0], "Seats: Turntable. Bores and recesses: Base.")
	pages, err := tile.Pages(s, drawing.A4, tile.Correction{}, words.English())
	require.NoError(t, err)
	assert.Len(t, pages, 1, "the usual coupon is one page")
	var text string
	for _, e := range s.Noted(words.English()).Entities {
		if x, ok := e.Shape.(drawing.Text); ok {
			text += x.Text + "\n"
		}
	}
	assert.Contains(t, text, "Unplug the tool", "the file to cut from has the cautions too")
	assert.Contains(t, text, "2026-11-20")
}

func BenchmarkCoupon(b *testing.B) {
	p := plan.Default()
	b.ReportAllocs()
	for b.Loop() {
		coupon.Drawing(p, words.English())
	}
}
