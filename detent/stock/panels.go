package stock

// How the values of panels, metals and plastics are arrived at. None is from a
// standard that was opened.
var (
	panelWeight  = Evidence{"common practice, weights of panels as sold", CommonPractice}
	faceVeneer   = Evidence{"common practice, side hardness of woods used for the faces", CommonPractice}
	panelDent    = Evidence{"common practice, estimate", CommonPractice}
	panelMoves   = Evidence{"common practice, plywood in its plane", CommonPractice}
	mdfMoves     = Evidence{"common practice, 0.3 % from 30 % to 90 % humidity", CommonPractice}
	generalTable = Evidence{"general engineering tables", CommonPractice}
	drinksNone   = Evidence{"common practice, takes up no water to speak of", CommonPractice}
	ballPressure = Evidence{"estimate from Brinell hardness or ISO 2039-1 ball indentation in general tables", CommonPractice}
	hdpeWarmth   = Evidence{"general engineering tables", Memory}
)

// plywoodMoves is 0.0002 for 10 % of humidity.
var plywoodMoves = figure(0.00002, panelMoves)

var panels = []Material{
	{
		ID: "birch-plywood", Kind: Panel,
		Gravity:     between(0.64, 0.72, panelWeight),
		Hardness:    between(4000, 5600, faceVeneer), // paper and yellow birch
		PerHumidity: plywoodMoves,
	},
	{
		ID: "phenolic-plywood", Kind: Panel,
		Gravity:     between(0.66, 0.75, panelWeight),
		Hardness:    between(4000, 5600, faceVeneer), // the film is too thin to carry the ball
		PerHumidity: plywoodMoves,
	},
	{
		ID: "softwood-plywood", Kind: Panel,
		Gravity:     between(0.45, 0.60, panelWeight),
		Hardness:    between(1750, 3100, faceVeneer), // spruce to hard pine
		PerHumidity: plywoodMoves,
	},
	{
		ID: "mdf", Kind: Panel,
		Gravity:     between(0.65, 0.80, panelWeight),
		Hardness:    between(3500, 5000, panelDent),
		PerHumidity: figure(0.00005, mdfMoves),
	},
	{
		ID: "particleboard", Kind: Panel,
		Gravity:  between(0.60, 0.75, panelWeight),
		Hardness: between(2200, 3500, panelDent),
	},
}

// others holds metals and plastics. What acrylic and acetal take up from damp
// air is small but not nothing, and no source was found for it.
var others = []Material{
	{
		ID: "aluminium", Kind: Other,
		Gravity:     figure(2.70, generalTable),
		Hardness:    between(29_000, 147_000, ballPressure), // Brinell 30, soft, to 150, hardened
		PerHumidity: figure(0, drinksNone),
		PerKelvin:   Value{23.1, 21, 24, generalTable},
	},
	{
		ID: "mild-steel", Kind: Other,
		Gravity:     figure(7.85, generalTable),
		Hardness:    between(108_000, 137_000, ballPressure), // Brinell 110 to 140
		PerHumidity: figure(0, drinksNone),
		PerKelvin:   between(11, 13, generalTable),
	},
	{
		ID: "acrylic", Kind: Other,
		Gravity:   between(1.18, 1.20, generalTable),
		Hardness:  between(17_000, 20_000, ballPressure),
		PerKelvin: between(68, 75, generalTable),
	},
	{
		ID: "acetal", Kind: Other,
		Gravity:  between(1.41, 1.42, generalTable),
		Hardness: between(14_000, 17_500, ballPressure),
	},
	{
		ID: "hdpe", Kind: Other,
		Gravity:     between(0.94, 0.97, generalTable),
		Hardness:    between(4000, 6500, ballPressure),
		PerHumidity: figure(0, drinksNone),
		PerKelvin:   between(120, 200, hdpeWarmth),
	},
}
