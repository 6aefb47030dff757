package plan

// Router is how a router cuts the holes of a plan: what a program for it needs
// to know besides the holes.
type Router struct {
	Units        string  // of the program: UnitsMM or UnitsInch
	SafeHeight   float64 // above the face, at which the tool travels between holes, mm
	Approach     float64 // above the face, down to which it travels fast, mm
	DepthPerPass float64 // of one turn of a helix, mm
	Peck         float64 // depth after which a drill is drawn back to clear its flutes, mm; 0: never
	Feed         float64 // sideways, mm/min
	PlungeFeed   float64 // straight down, mm/min
	Rapid        float64 // of fast travel, mm/min; only the estimate of time needs it
	Spindle      int     // rev/min; 0: off
	Cutter       float64 // diameter of the flat cutter for wider holes and flat floors, mm
	CutterLength float64 // of its cutting edges, mm
	DrillTo      float64 // diameter of the widest hole through a part that is drilled, mm; 0: all are milled
	Breakthrough float64 // how far a hole right through goes beyond the underside, its point not counted, mm
	SpoilBoard   float64 // thickness of the board beneath that may be cut into, mm
	Canned       bool    // drill by the controller's own cycles, G81 and G83
	ToolChange   string  // ChangeM6 or ChangePause
}

// The units of a router program: the values of [Router.Units].
const (
	UnitsMM   = "mm"
	UnitsInch = "inch"
)

// What asks for another tool: the values of [Router.ToolChange].
const (
	ChangeM6    = "m6"    // the controller's own tool change
	ChangePause = "pause" // a stop of the program, for controllers that know no tools
)

// The words of the router's choices, in the order they are named to a maker.
var (
	programUnits = []string{UnitsMM, UnitsInch}
	toolChanges  = []string{ChangeM6, ChangePause}
)

// The ranges of what only a router has.
var (
	feeds    = limits{lo: 1, hi: 30000, unit: "mm/min"}
	spindles = limits{lo: 0, hi: 60000, unit: "rev/min"}
)

// DefaultRouter returns the settings of a plan that gives none: for a small
// router with a 1/8 inch cutter in plywood. Values are common practice, no
// source.
func DefaultRouter() Router {
	return Router{
		Units:        UnitsMM,
		SafeHeight:   10, // over low clamps
		Approach:     1,
		DepthPerPass: 1,
		Peck:         3,
		Feed:         500,
		PlungeFeed:   150,
		Rapid:        2000,
		Spindle:      12000,
		Cutter:       3.175, // 1/8 inch
		CutterLength: 22,
		DrillTo:      6.35, // 1/4 inch: as wide as the collets of small routers
		Breakthrough: 0.5,
		SpoilBoard:   6,
		Canned:       false, // many small controllers have no cycles
		ToolChange:   ChangePause,
	}
}

// RouterSettings returns the plan's router, or the one it has by default.
func (p Plan) RouterSettings() Router {
	if p.Router == nil {
		return DefaultRouter()
	}
	return *p.Router
}

func visitRouter(v visitor, r *Router) {
	v.text(at("units"), &r.Units, wording{words: programUnits})
	v.number(at("safe_height"), &r.SafeHeight, hardware)
	v.number(at("approach"), &r.Approach, hardware)
	v.number(at("depth_per_pass"), &r.DepthPerPass, hardware)
	v.number(at("peck"), &r.Peck, hardwareOrZero)
	v.number(at("feed"), &r.Feed, feeds)
	v.number(at("plunge_feed"), &r.PlungeFeed, feeds)
	v.number(at("rapid"), &r.Rapid, feeds)
	v.count(at("spindle"), &r.Spindle, spindles)
	v.number(at("cutter"), &r.Cutter, hardware)
	v.number(at("cutter_length"), &r.CutterLength, hardware)
	v.number(at("drill_to"), &r.DrillTo, hardwareOrZero)
	v.number(at("breakthrough"), &r.Breakthrough, depths)
	v.number(at("spoil_board"), &r.SpoilBoard, depths)
	v.flag(at("canned"), &r.Canned)
	v.text(at("tool_change"), &r.ToolChange, wording{words: toolChanges})
}
