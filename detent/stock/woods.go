package stock

// Where the values of solid wood come from. All are means of clear wood of a
// species; a single board differs from them by a fifth either way or more.
var (
	strength   = Evidence{"USDA Wood Handbook FPL-GTR-190 Table 5-3a", Transcribed}
	movement   = Evidence{"USDA Wood Handbook FPL-GTR-190 Table 13-5", Seen}
	group      = Evidence{"USDA Wood Handbook FPL-GTR-190 Table 13-5, commercial group", Seen}
	shrinkage  = Evidence{"USDA Wood Handbook FPL-GTR-190, reckoned from the shrinkage in Table 4-3", Transcribed}
	recollects = Evidence{"USDA Wood Handbook FPL-GTR-190 Table 13-5", Memory}
)

// woods holds, after the name, specific gravity, compression across the grain
// (kPa), side hardness (N), and radial and tangential movement per per cent of
// moisture content.
var woods = []Material{
	wood("yellow-birch", 0.62, 6700, 5600, 0.00256, 0.00338, movement),
	wood("paper-birch", 0.55, 4100, 4000, 0.00219, 0.00304, movement),
	wood("sugar-maple", 0.63, 10100, 6400, 0.00165, 0.00353, movement),
	wood("red-maple", 0.54, 6900, 4200, 0.00137, 0.00289, movement),
	wood("red-oak", 0.63, 7000, 5700, 0.00158, 0.00369, group),
	wood("white-oak", 0.68, 7400, 6000, 0.00180, 0.00365, group),
	wood("beech", 0.64, 7000, 5800, 0.00190, 0.00431, movement),
	wood("yellow-poplar", 0.42, 3400, 2400, 0.00158, 0.00289, shrinkage),
	wood("loblolly-pine", 0.51, 5400, 3100, 0.00165, 0.00259, shrinkage),
	wood("white-pine", 0.35, 3000, 1700, 0.00071, 0.00212, recollects),
	wood("engelmann-spruce", 0.35, 2800, 1750, 0.00130, 0.00248, shrinkage),
	wood("sitka-spruce", 0.40, 4000, 2300, 0.00148, 0.00263, recollects),
}

// wood is a solid wood of which all is known.
func wood(id string, gravity, compression, hardness, radial, tangential float64, moves Evidence) Material {
	return Material{
		ID: id, Kind: Solid,
		Gravity:     figure(gravity, strength),
		Compression: figure(compression, strength),
		Hardness:    figure(hardness, strength),
		Radial:      figure(radial, moves),
		Tangential:  figure(tangential, moves),
	}
}

// CoefficientFromShrinkage returns the movement per per cent of moisture
// content of a wood that shrinks by a share S of its green size in drying from
// 30 % to none: (S/30)/(1 - 2S/3). For 24 hardwoods it gives what Table 13-5 of
// the Wood Handbook prints, to 0.00001, from the shrinkage in its Table 4-3.
func CoefficientFromShrinkage(share float64) float64 {
	return share / 30 / (1 - 2*share/3)
}
