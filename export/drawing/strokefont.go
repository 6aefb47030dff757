package drawing

import (
	"strings"

	"stopwright/detent/geom"
)

// The strokes are drawn on a grid of 4 across by 6 up, as on an engraving
// machine's copies: straight from point to point, corners cut off for curves.
const (
	strokeCap = 6.0 // height of a capital
	strokeGap = 2.0 // between two characters
)

// strokeGlyph is one character: paths on the grid, and how wide it is.
type strokeGlyph struct {
	paths [][]geom.Point
	width float64
}

// strokeGlyphs are all characters there are, taken from strokeCodes.
var strokeGlyphs = func() map[rune]strokeGlyph {
	all := map[rune]strokeGlyph{' ': {width: 2}}
	for r, code := range strokeCodes {
		var g strokeGlyph
		for path := range strings.SplitSeq(code, "/") {
			var points []geom.Point
			for _, p := range strings.Fields(path) {
				at := geom.Point{X: float64(p[0] - '0'), Y: float64(p[1] - '0')}
				g.width = max(g.width, at.X)
				points = append(points, at)
			}
			g.paths = append(g.paths, points)
		}
		all[r] = g
	}
	return all
}()

// strokeCodes describes each character: points as two digits, across and up,
// joined in turn; a stroke ends a path.
var strokeCodes = map[rune]string{
	'0': "10 20 31 35 26 16 05 01 10",
	'1': "04 26 20",
	'2': "05 16 36 45 44 00 40",
	'3': "05 16 36 45 44 33 42 41 30 10 01/13 33",
	'4': "30 36 02 42",
	'5': "46 06 04 34 43 41 30 10 01",
	'6': "45 36 16 05 01 10 30 41 42 33 03",
	'7': "06 46 10",
	'8': "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
	'9': "01 10 30 41 45 36 16 05 04 13 43",
	'A': "00 04 26 44 40/02 42",
	'B': "00 06 36 45 44 33 42 41 30 00/03 33",
	'C': "45 36 16 05 01 10 30 41",
	'D': "00 06 26 44 42 20 00",
	'E': "46 06 00 40/03 33",
	'F': "46 06 00/03 33",
	'G': "45 36 16 05 01 10 30 41 43 23",
	'H': "00 06/40 46/03 43",
	'I': "00 06",
	'J': "46 41 30 10 01",
	'K': "00 06/46 02/13 40",
	'L': "06 00 40",
	'M': "00 06 23 46 40",
	'N': "00 06 40 46",
	'O': "10 30 41 45 36 16 05 01 10",
	'P': "00 06 36 45 44 33 03",
	'Q': "10 30 41 45 36 16 05 01 10/22 40",
	'R': "00 06 36 45 44 33 03/23 40",
	'S': "45 36 16 05 04 13 33 42 41 30 10 01",
	'T': "06 46/26 20",
	'U': "06 01 10 30 41 46",
	'V': "06 20 46",
	'W': "06 10 24 30 46",
	'X': "00 46/06 40",
	'Y': "06 23 46/23 20",
	'Z': "06 46 00 40",
	'Ä': "00 04 26 44 40/02 42/07 08/47 48",
	'Ö': "10 30 41 45 36 16 05 01 10/17 18/37 38",
	'Ü': "06 01 10 30 41 46/17 18/37 38",
	'-': "03 33",
	'+': "03 43/25 21",
	'±': "04 44/26 22/00 40",
	'×': "01 45/05 41",
	'=': "02 42/04 44",
	'/': "00 46",
	'.': "00 01",
	',': "11 00",
	':': "01 02/04 05",
	'!': "06 02/00 01",
	'?': "05 16 36 45 44 23 22/20 21",
	'(': "16 05 01 10",
	')': "06 15 11 00",
	'°': "14 05 16 25 14",
	'⌀': "10 30 41 45 36 16 05 01 10/00 46",
	'#': "10 16/30 36/02 42/04 44",
	'%': "00 46/06 16 15 05 06/30 40 41 31 30",
	'&': "40 05 16 25 01 10 20 42",
	'_': "00 40",
	'"': "06 04/26 24",
	// An apostrophe, which is also the sign for minutes.
	'\'': "06 04",
}
