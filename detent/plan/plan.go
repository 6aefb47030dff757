package plan

// Version is the newest plan file version this package reads, and the one it
// writes.
const Version = 1

// Plan is everything a maker decided about one turning plate.
//
// Lengths are millimetres, angles degrees, forces newtons, the load kilograms.
// The allowed range of each value is held by [Validate]; the values of keys a
// file leaves out by [Default]. A Plan is a plain value: change a copy, and
// never write to a slice that another Plan may share (see [Plan.Clone]).
type Plan struct {
	Title string
	Notes string
	Scale float64 // of a trial to the plan it is a trial of, 0.05 to 20; 1: no trial

	Arrangement Arrangement
	Turntable   Turntable
	Base        Base
	Collar      *Collar // nil: none
	FaceGap     float64 // gap between the two facing surfaces, -5 to 50
	Catch       Catch
	Catches     []Placement // 1 to 64
	Seat        Seat
	Travel      Span // the turn the table can make, -360 to 360
	Stops       []Stop
	Features    []Feature // up to 10,000
	Rules       Rules
	Making      Making
	Shop        Shop
	Router      *Router // nil: [DefaultRouter]

	// Setting up and proving.
	Tool          *Tool     // nil: not given
	Readings      []Reading // up to 10,000, a log
	ReadingsSince string    // a date as 2026-11-20: readings before it are kept, but no longer count; empty: all count
	AsDrilled     []AsDrilled
	Ticks         []string // what is done, an operation and a hole each; up to 50,000, a log
}

// Arrangement says which part holds the catch and which way a positive stop
// angle turns the table.
type Arrangement struct {
	CatchIn      Part // PartTurntable or PartBase
	PositiveTurn Sense
}

// Part names one of the parts of the plate.
type Part string

// The parts.
const (
	PartTurntable Part = "turntable"
	PartBase      Part = "base"
	PartCollar    Part = "collar"

	// Those that [Making] adds.
	PartWearRing Part = "wear-ring"
	PartCarrier  Part = "carrier"
	PartPad      Part = "pad"
)

// Sense is a direction of turning, seen from above.
type Sense string

// The two senses.
const (
	Clockwise        Sense = "clockwise"
	Counterclockwise Sense = "counterclockwise"
)

// Guide says what keeps the turntable in place sideways.
type Guide string

// The guides.
const (
	GuidePivot  Guide = "pivot"
	GuideCollar Guide = "collar"
)

// Turntable is the part that turns.
type Turntable struct {
	Diameter      float64
	Thickness     float64
	Material      string
	PivotBore     float64 // diameter of the bore on the pivot; 0: none
	GuidedBy      Guide
	RadialPlay    float64 // how far the pivot lets the table move sideways, as a radius
	BearingRadius float64 // mean radius at which the table rubs; 0: two thirds of its own
}

// Shape is the outline of the base.
type Shape string

// The shapes.
const (
	Rectangle Shape = "rectangle"
	Disc      Shape = "disc"
)

// Base is the part the turntable turns on, centred on the pivot.
type Base struct {
	Shape     Shape
	Width     float64 // along x; a rectangle's
	Depth     float64 // along y; a rectangle's
	Diameter  float64 // a disc's
	Thickness float64
	Material  string
}

// Collar is the ring that keeps the turntable in place.
type Collar struct {
	Clearance       float64 // bore less turntable diameter, as they are cut: see [Making.ClearanceFrom]
	OutsideDiameter float64
	Thickness       float64
	Material        string
	Screws          Screws
}

// Screws is a circle of evenly spaced screws about the pivot.
type Screws struct {
	Count    int
	Circle   float64 // diameter of the circle through their centres
	Diameter float64 // of the hole
	Start    float64 // azimuth of the first
}

// Catch is the sprung ball in its housing. All catches of a plan are alike.
type Catch struct {
	BallDiameter    float64
	Protrusion      float64 // of the ball from the part's face, catch fitted
	FreeForce       float64 // of the spring with the ball fully out
	FlushForce      float64 // of the spring with the ball pushed in flush
	BodyDiameter    float64
	BodyLength      float64 // flange included
	FlangeDiameter  float64 // 0: none
	FlangeThickness float64
	BodyAllowance   float64 // added to the body's diameter for its bore
	RecessAllowance float64 // added to the flange's thickness for its recess
}

// Placement is where one catch sits in the part that holds it, at table zero,
// seen from above.
type Placement struct {
	Name    string
	Azimuth float64
	Radius  float64
}

// Form is the kind of seat.
type Form string

// The forms.
const (
	Drilled     Form = "drilled"
	Countersunk Form = "countersunk"
)

// Seat is the hole the ball drops into. All seats of a plan are alike.
type Seat struct {
	Form             Form
	Diameter         float64 // of the drill, or of a countersink's mouth
	Depth            float64 // of the cylinder; 0: right through
	DrillPoint       float64 // included angle of the drill's point, 180: flat
	CountersinkAngle float64 // included
	ReliefDiameter   float64 // of a smaller hole drilled on through; 0: none
	Chamfer          float64 // widens the rim by this much all round
}

// Mouth returns the diameter at the face, chamfer included. Webs, edges and the
// ball's rim are all reckoned with it.
func (s Seat) Mouth() float64 { return s.Diameter + 2*s.Chamfer }

// Span is a range of angles, From not above To.
type Span struct {
	From float64
	To   float64
}

// Stop is an angle at which the turntable must rest.
type Stop struct {
	Angle     float64
	BothSides bool // also at -Angle; 0 is never doubled
	Label     string
	Catches   []string // those that drop together; none: the plan's first
}

// Kind is the kind of a feature.
type Kind string

// The kinds.
const (
	Hole    Kind = "hole"
	Slot    Kind = "slot"
	ArcSlot Kind = "arc_slot"
)

// Feature is something else cut right through a part: a screw hole, a dust
// slot. It is placed as seen from above with the table at zero.
type Feature struct {
	Part  Part
	Kind  Kind
	Label string

	X, Y     float64 // a hole's centre; a slot's first end
	X2, Y2   float64 // a slot's second end
	Diameter float64 // a hole's
	Width    float64 // a slot's or an arc slot's
	Radius   float64 // an arc slot's centre line, about the pivot
	From, To float64 // an arc slot's ends, as azimuths
}

// Rules are the least amounts of material the maker wants left.
type Rules struct {
	Web  float64 // between two holes
	Edge float64 // between a hole and an edge or the pivot bore
}

// Shop is what the maker's workshop can do, and what the table carries.
type Shop struct {
	Method        string   // how the holes are placed
	SeatError     float64  // radius of the circle within which a seat's centre lands
	CatchError    float64  // the same for a catch
	Friction      float64  // ball on seat and face
	TableFriction float64  // table on base
	Load          float64  // kg
	StockWidth    float64  // of the work that is mitred
	Target        float64  // degrees off that the maker will accept
	Reference     *float64 // the stop the table is zeroed at; nil: the one nearest 0
	Humidity      Humidity
}

// Humidity is relative humidity in per cent.
type Humidity struct {
	MadeAt float64
	Low    float64
	High   float64
}

// Turning says which of the tool and the fence turns with the table; the other
// stands on the base.
type Turning string

// What may turn.
const (
	ToolTurns  Turning = "tool"
	FenceTurns Turning = "fence"
)

// Tool is where the tool's line and the fence lie at table zero, seen from
// above, and how large they are.
type Tool struct {
	Offset  float64 // of the tool's line from the pivot, + right
	Fence   float64 // distance of the fence's face, + away from the operator
	Turning Turning
	Kerf    float64 // width of the cut, its middle on the tool's line
	Reach   float64 // how far beyond the pivot the tool cuts along its line; 0: not given

	FenceLength    float64 // half to either side of the pivot
	FenceThickness float64 // behind the face
	FenceOpening   float64 // left free for the tool, half to either side of the pivot; 0: cut by the tool itself
	FenceScrew     float64 // diameter of the two fixing screws
	FenceInset     float64 // of those screws from the ends of the fence
	// FenceUnderside is the height of the fence's underside over the base's
	// face; nil: clear of turntable and collar.
	FenceUnderside *float64

	Marks []Mark
}

// Mark is where a trial cut crossed a board along the fence.
type Mark struct {
	Angle float64
	X     float64 // along the fence, + right
}

// Reading is one measured stop: part of a log, not a decision.
type Reading struct {
	Angle    float64
	Measured float64
	Approach string // the sense the stop was turned to: clockwise, counterclockwise or empty
	Method   string
	Date     string // as 2026-11-20
}

// AsDrilled is where a seat really came out, as seen at the drill.
type AsDrilled struct {
	Angle float64
	Catch string
	X, Y  float64
}
