package plan

import (
	"fmt"
	"math"
	"slices"

	"stopwright/assets/words"
)

// relations adds the problems that no value has by itself: spans that run
// backwards, names that are not unique, seats that are too many.
func (c *checker) relations(p *Plan) {
	c.ordered("travel.from", p.Travel.From, "travel.to", p.Travel.To)
	c.leaves(p.Catch.BodyDiameter, "catch.body_diameter", "catch.body_allowance", p.Catch.BodyAllowance, hardware.lo)
	c.clearance(p)
	c.bores(p)
	c.ordered("shop.humidity.low", p.Shop.Humidity.Low, "shop.humidity.high", p.Shop.Humidity.High)
	if len(p.Features) <= MaxFeatures {
		for i, f := range p.Features {
			if f.Kind == ArcSlot && f.From > f.To { // or thousands of paths would be built for nothing
				at := fmt.Sprintf("features[%d]", i)
				c.ordered(at+".from", f.From, at+".to", f.To)
			}
		}
	}
	if len(p.Stops) <= MaxSeats {
		c.catchNames(p)
		c.seatCount(p)
	}
}

// ordered adds a problem where from is above to. NaN never is: it is out of
// range already.
func (c *checker) ordered(fromPath string, from float64, toPath string, to float64) {
	if from > to && !c.hasUnread(fromPath) && !c.hasUnread(toPath) {
		c.add(fromPath, inFile(from), words.Phrase{
			Key: "want.ordered", Args: words.Args{"Key": toPath, "Value": inFile(to)},
		})
	}
}

// leaves adds a problem where an allowance takes so much off a size that less
// than least (mm) is left to be cut.
func (c *checker) leaves(size float64, sizePath, path string, allowance, least float64) {
	const slack = 1e-9 // mm: 0.6 less 0.5 is to be 0.1
	if size+allowance < least-slack && !c.hasUnread(sizePath) && !c.hasUnread(path) {
		c.add(path, inFile(allowance), words.Phrase{Key: "want.leaves", Args: words.Args{
			"Least": inFile(math.Round((least-size)*1e9) / 1e9), "Key": sizePath, "Left": inFile(least),
		}})
	}
}

// clearance checks that the part it is cut from is not cut away: a collar whose
// clearance is below 0 has a smaller bore than the turntable's diameter, a
// turntable is smaller by what is cut from it.
func (c *checker) clearance(p *Plan) {
	if p.Collar == nil {
		return
	}
	const size, path = "turntable.diameter", "collar.clearance"
	if p.Making.ClearanceFrom == FromCollar {
		c.leaves(p.Turntable.Diameter, size, path, p.Collar.Clearance, sizes.lo)
		return
	}
	left := min(p.TableDiameter(), p.CollarBore())
	if left < sizes.lo && !c.hasUnread(size) && !c.hasUnread(path) {
		c.add(path, inFile(p.Collar.Clearance), words.Phrase{Key: "want.parted", Args: words.Args{"Left": inFile(sizes.lo)}})
	}
}

// bores checks that the pivot's fits leave a bore, where there is one.
func (c *checker) bores(p *Plan) {
	for _, fit := range []struct {
		path      string
		allowance float64
	}{{"making.pivot.turntable", p.Making.Pivot.Turntable}, {"making.pivot.base", p.Making.Pivot.Base}} {
		if p.Turntable.PivotBore > 0 && fit.allowance < 0 {
			c.leaves(p.Turntable.PivotBore, "turntable.pivot_bore", fit.path, fit.allowance, hardware.lo)
		}
	}
}

// catchNames checks that catches can be told apart, and that stops name ones
// that exist.
func (c *checker) catchNames(p *Plan) {
	if len(p.Catches) > MaxCatches {
		return
	}
	known := map[string]bool{}
	complete := !c.hasUnread("catches")
	for i, catch := range p.Catches {
		path := fmt.Sprintf("catches[%d].name", i)
		if c.hasUnread(path) {
			complete = false
			continue
		}
		if known[catch.Name] {
			c.add(path, quoted(catch.Name), words.Phrase{Key: "want.unique"})
		}
		known[catch.Name] = true
	}
	for i, s := range p.Stops {
		if len(s.Catches) > MaxCatches {
			continue
		}
		for j, name := range s.Catches {
			unknown := complete && !known[name]
			repeated := slices.Contains(s.Catches[:j], name)
			if !unknown && !repeated {
				continue
			}
			path := fmt.Sprintf("stops[%d].catches[%d]", i, j)
			switch {
			case c.hasUnread(path):
			case unknown:
				c.add(path, quoted(name), words.Phrase{Key: "want.catch"})
			default:
				c.add(path, quoted(name), words.Phrase{Key: "want.named.once"})
			}
		}
	}
}

// seatCount checks that the stops, on both sides and for every catch, are not
// more than a plan may have.
func (c *checker) seatCount(p *Plan) {
	seats := 0
	for _, s := range p.Stops {
		n := max(1, len(s.Catches))
		if s.BothSides && s.Angle != 0 {
			n *= 2
		}
		seats += n // at most 128 for each of 10,000 stops: no overflow
	}
	if seats > MaxSeats {
		c.add(
			"stops", words.Phrase{Key: "value.seats", Args: words.Args{"N": seats}},
			words.Phrase{Key: "want.seats", Args: words.Args{"Most": MaxSeats}},
		)
	}
}
