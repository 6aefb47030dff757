package drawing

// Layer names the kind of thing an entity is. The names are those written to
// files: A-Z, 0-9, _ and - only, unlike in any pair by case alone.
type Layer string

// The layers. Those that are cut or drilled come first.
const (
	Outline     Layer = "OUTLINE"      // edge of the part
	Pivot       Layer = "PIVOT"        // bore on the pivot
	Bore        Layer = "BORE"         // inner edge of the collar
	Seats       Layer = "SEATS"        // drill each to the seat's depth
	SeatRelief  Layer = "SEAT_RELIEF"  // smaller hole on through a seat's floor
	SeatChamfer Layer = "SEAT_CHAMFER" // outer rim of a seat's chamfer
	PocketBody  Layer = "POCKET_BODY"  // bore for a catch's body
	PocketRim   Layer = "POCKET_RIM"   // recess for a catch's flange
	Screws      Layer = "SCREWS"       // collar screws
	Holes       Layer = "HOLES"        // hole features
	Slots       Layer = "SLOTS"        // slot and arc slot features

	KnockOut     Layer = "KNOCK_OUT"     // hole on through a pocket, to push the catch out
	ScrewPilots  Layer = "SCREW_PILOTS"  // pilot holes for the collar's screws
	ScrewHeads   Layer = "SCREW_HEADS"   // recesses for their heads
	EndStops     Layer = "END_STOPS"     // end stop's pin and slot
	Clamp        Layer = "CLAMP"         // clamp's bolt and slot
	Dust         Layer = "DUST_SLOTS"    // slots beside the tracks
	Fence        Layer = "FENCE_SLOTS"   // slots that a fence is moved along
	Registration Layer = "REGISTRATION"  // pins for turning a part over
	WearRing     Layer = "WEAR_RING"     // both edges of the recess for a wear ring
	CarrierHoles Layer = "CARRIER_HOLES" // pilot holes for the carriers' screws
	Graduations  Layer = "GRADUATIONS"   // lines of a scale, to engrave
	Engraving    Layer = "ENGRAVING"     // letters as single strokes, to engrave

	Ring      Layer = "RING"    // pitch circles
	Track     Layer = "TRACK"   // path of each ball over the face
	Carrier   Layer = "CARRIER" // outline of a catch's carrier, on the far face
	Centres   Layer = "CENTRES" // centre marks
	Witness   Layer = "WITNESS" // asymmetric mark that tells the faces apart
	Lettering Layer = "TEXT"    // names, tags, the view
	Frame     Layer = "FRAME"   // each part's own origin, where parts lie side by side
	Shade     Layer = "SHADE"   // tinted ground on a printed sheet
)

// Pen is how a layer is drawn: only two weights of ink, as on a drawing board.
type Pen struct {
	Layer  Layer
	Width  float64   // mm on paper; 0 on [Shade], which is filled
	Dash   []float64 // mm drawn, mm left, and so on; nil: unbroken
	Colour int       // AutoCAD colour index, 1 to 255; 7 is black on white, white on black
	Cut    bool      // a tool goes here
}

// The two weights of line, after the 1:2 ratio of ISO 128-2.
const (
	ThinLine  = 0.25 // mm
	ThickLine = 0.5  // mm
)

var (
	chainDash  = []float64{8, 1.5, 1, 1.5} // long dash, dot: centre lines and pitch circles
	hiddenDash = []float64{3, 1.5}
)

// Pens lists every layer in the order of a file's layer table.
var Pens = []Pen{
	{Outline, ThickLine, nil, 7, true},
	{Pivot, ThickLine, nil, 7, true},
	{Bore, ThickLine, nil, 7, true},
	{Seats, ThickLine, nil, 5, true},
	{SeatRelief, ThinLine, nil, 4, true},
	{SeatChamfer, ThinLine, nil, 4, true},
	{PocketBody, ThickLine, nil, 3, true},
	{PocketRim, ThickLine, nil, 3, true},
	{Screws, ThickLine, nil, 6, true},
	{Holes, ThickLine, nil, 6, true},
	{Slots, ThickLine, nil, 6, true},
	{KnockOut, ThinLine, nil, 3, true},
	{ScrewPilots, ThickLine, nil, 6, true},
	{ScrewHeads, ThinLine, nil, 6, true},
	{EndStops, ThickLine, nil, 2, true},
	{Clamp, ThickLine, nil, 2, true},
	{Dust, ThickLine, nil, 2, true},
	{Fence, ThickLine, nil, 2, true},
	{Registration, ThickLine, nil, 2, true},
	{WearRing, ThinLine, nil, 4, true},
	{CarrierHoles, ThickLine, nil, 6, true},
	{Graduations, ThinLine, nil, 30, true},
	{Engraving, ThinLine, nil, 200, true},
	{Ring, ThinLine, chainDash, 8, false},
	{Track, ThinLine, hiddenDash, 8, false},
	{Carrier, ThinLine, hiddenDash, 8, false},
	{Centres, ThinLine, nil, 8, false},
	{Witness, ThinLine, nil, 1, false},
	{Lettering, ThinLine, nil, 7, false},
	{Frame, ThinLine, chainDash, 9, false},
	{Shade, 0, nil, 254, false},
}

// PenOf returns how layer l is drawn: one named with its depth as its kind is.
// An unknown layer is drawn thin in black.
func PenOf(l Layer) Pen {
	for _, p := range Pens {
		if p.Layer == l.Kind() {
			p.Layer = l
			return p
		}
	}
	return Pen{Layer: l, Width: ThinLine, Colour: 7}
}
