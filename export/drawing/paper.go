package drawing

// Paper is a size of sheet, upright, mm.
type Paper struct {
	Name          string
	Width, Height float64
}

// The papers: ISO 216, and 8.5 by 11 and 11 by 17 inches.
var (
	A4      = Paper{"A4", 210, 297}
	A3      = Paper{"A3", 297, 420}
	Letter  = Paper{"Letter", 215.9, 279.4}
	Tabloid = Paper{"Tabloid", 279.4, 431.8}
)

// Papers lists every paper.
var Papers = []Paper{A4, Letter, A3, Tabloid}
