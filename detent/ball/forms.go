package ball

import (
	"math"

	"stopwright/detent/geom"
)

// chamferHalf is half the angle of the tool that cuts a chamfer.
const chamferHalf geom.Angle = 45

// flat is half the angle of a floor's cone that has none.
const flat geom.Angle = 90

// drilled adds what a ball can touch in a drilled seat.
func (ps *pieces) drilled(s Seat) {
	wall := s.Diameter / 2
	ps.edge(Rim, s.Mouth(), 0, false)
	if s.Chamfer > 0 {
		ps.slope(Chamfer, wall+s.Chamfer, 0, wall, chamferHalf, false)
		ps.inside(Shoulder, wall, -s.Chamfer)
	}
	if s.Depth > 0 {
		rest := Point
		if s.DrillPoint/2 == flat {
			rest = Floor
		}
		ps.slope(rest, wall, -max(s.Depth, s.Chamfer), 0, s.DrillPoint/2, true)
	}
}

// countersunk adds what a ball can touch in a countersunk seat.
func (ps *pieces) countersunk(s Seat) {
	ps.edge(Rim, s.Mouth(), 0, false)
	sin, cos := (s.Countersink / 2).SinCos()
	narrows := sin / cos // of the cone's radius, per mm of depth
	deepest := math.Inf(1)
	if s.Depth > 0 {
		deepest = s.Depth
	}
	outer, top := s.Diameter/2, 0.0 // where the cone begins

	if s.Chamfer > 0 {
		mouth := outer + s.Chamfer
		foot := min(mouth, deepest)
		// A cone no steeper than the chamfer is cut away by it whole.
		meets := narrows < 1 && s.Chamfer/(1-narrows) < foot
		if meets {
			foot = s.Chamfer / (1 - narrows)
		}
		ps.slope(Chamfer, mouth, 0, mouth-foot, chamferHalf, false)
		if !meets {
			ps.slope(Floor, mouth-foot, -foot, 0, flat, true)
			return
		}
		outer, top = mouth-foot, foot
		ps.inside(Shoulder, outer, -top)
	}

	nose := max(outer-(deepest-top)*narrows, 0)
	ps.slope(Cone, outer, -top, nose, s.Countersink/2, false)
	ps.slope(Floor, nose, -deepest, 0, flat, true)
}
