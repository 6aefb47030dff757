package plan

// Making is what the parts have besides the plate itself: fits, and fittings
// that a maker may want and the plate turns without. A fitting whose first size
// is 0 is not made; all are made as [Default] has them where a file leaves them
// out.
type Making struct {
	ClearanceFrom ClearanceFrom
	KnockOut      float64 // diameter of the hole on through a pocket, to push the catch out; 0: none
	Pivot         PivotFit
	Screws        ScrewHoles
	Dust          DustSlots
	EndStops      Slider
	Clamp         Slider
	Fence         FenceSlots
	Registration  Registration
	WearRing      WearRing
	Carrier       Carrier
}

// ClearanceFrom says which part the clearance between turntable and collar is
// cut from. The other one has the turntable's diameter.
type ClearanceFrom string

// What the clearance may be cut from.
const (
	FromCollar    ClearanceFrom = "collar"    // its bore is larger
	FromTurntable ClearanceFrom = "turntable" // it is smaller
	FromBoth      ClearanceFrom = "both"      // half from each
)

// PivotFit is what is added to the pivot bore in each part: a table that runs
// on a bolt which the base holds tight has another fit than the base.
type PivotFit struct {
	Turntable float64
	Base      float64
}

// ScrewHoles says how the collar's screws are bored for. In the collar each has
// its own clearance hole, see [Screws].
type ScrewHoles struct {
	Size       string  // as it is sold, as M4 or #8
	Pilot      float64 // diameter of the hole in the base; 0: the clearance hole goes through
	PilotDepth float64 // 0: right through
	Head       float64 // diameter of the recess for the head in the collar; 0: none
	HeadDepth  float64
}

// DustSlots are curved slots beside the balls' tracks, through which dust leaves
// the seats' face. They keep the web rule from seats and tracks.
type DustSlots struct {
	Width  float64 // 0: none
	Side   Side
	Bridge float64 // material left between two of them, along the slot
}

// Side is where something lies as seen from the ring.
type Side string

// The sides.
const (
	Inside  Side = "inside"
	Outside Side = "outside"
	Both    Side = "both"
)

// Slider is a pin or bolt in the turntable that runs in a curved slot of the
// base: it ends the travel, or clamps.
type Slider struct {
	Diameter float64 // of its hole in the turntable; 0: none
	Radius   float64 // from the pivot; 0: halfway from the pivot to the innermost ring
	Azimuth  float64 // at table zero
	Play     float64 // by which the slot is wider
	Beyond   float64 // degrees of turn past the travel, either end
}

// FenceSlots are two straight slots of the base along y, either side of the
// pivot, along which a fence is moved.
type FenceSlots struct {
	Width   float64 // 0: none
	Length  float64 // between the middles of the round ends
	Spacing float64 // from one slot's middle line to the other's
	Y       float64 // of their middle
}

// Registration is two pins on the y axis of every part. A part that is turned
// over about that axis goes back on the same pins.
type Registration struct {
	Diameter float64 // 0: none
	Distance float64 // from the pivot; 0: in the waste, outside the part's edge
}

// WearRing is a flat ring let into the seats' face under the balls' tracks. The
// seats are drilled through it.
type WearRing struct {
	Width     float64 // beyond the middle of the outermost and innermost ring together; 0: none
	Thickness float64
	Material  string
}

// Carrier is a block behind the part that holds the catches, one for each,
// where the catch is longer than that part is thick. A pad packs it out.
type Carrier struct {
	Width        float64 // along the radius; 0: none
	Length       float64 // across it
	Thickness    float64
	PadThickness float64 // of the packing between; 0: none
	Screw        float64 // diameter of the two clearance holes
	Pilot        float64 // diameter of the holes in the part, right through
	Spacing      float64 // from one screw to the other, across the radius
	Material     string
}
