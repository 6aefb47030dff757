package plan

// formatName is what the key format says in every plan file.
const formatName = "stopwright"

// How the holes are placed: the values of [Shop.Method].
const (
	MethodHandDrill         = "hand-drill"
	MethodPillarDrill       = "pillar-drill"
	MethodPillarDrillGuided = "pillar-drill-guided" // through a drilled guide block or bush
	MethodRouter            = "router"
	MethodRouterTight       = "router-tight" // a router known to hold close positions
	MethodMeasured          = "measured"     // the errors were measured by the maker
)

// The words each key allows, in the order they are named to a maker.
var (
	parts      = []string{string(PartTurntable), string(PartBase), string(PartCollar)}
	catchParts = []string{string(PartTurntable), string(PartBase)}
	senses     = []string{string(Clockwise), string(Counterclockwise)}
	approaches = []string{"", string(Clockwise), string(Counterclockwise)}
	guides     = []string{string(GuidePivot), string(GuideCollar)}
	shapes     = []string{string(Rectangle), string(Disc)}
	turnings   = []string{string(ToolTurns), string(FenceTurns)}
	forms      = []string{string(Drilled), string(Countersunk)}
	kinds      = []string{string(Hole), string(Slot), string(ArcSlot)}
	sides      = []string{string(Inside), string(Outside), string(Both)}

	clearanceParts = []string{string(FromCollar), string(FromTurntable), string(FromBoth)}

	methods = []string{
		MethodHandDrill, MethodPillarDrill, MethodPillarDrillGuided,
		MethodRouter, MethodRouterTight, MethodMeasured,
	}
)
