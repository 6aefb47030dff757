package stock

// Range of temperature (°C) for which the Wood Handbook gives its equilibrium
// formula.
const (
	coldest = -1.1
	hottest = 132.2
)

// EquilibriumMoisture returns the moisture content (%) that wood comes to in
// air of a relative humidity (%, 0 to 100) and temperature (°C, -1 to 132), by
// Eq 4-5 of the USDA Wood Handbook, FPL-GTR-190. What lies outside either range
// is taken at its end. Table 4-2 of the handbook agrees with it to 0.05 %.
func EquilibriumMoisture(humidity, celsius float64) float64 {
	h := min(max(humidity, 0), 100) / 100
	t := min(max(celsius, coldest), hottest)
	w := 349 + 1.29*t + 0.0135*t*t
	k := 0.805 + 0.000736*t - 0.00000273*t*t
	k1 := 6.27 - 0.00938*t - 0.000303*t*t
	k2 := 1.91 + 0.0407*t - 0.000293*t*t
	kh := k * h
	one, two := k1*kh, k1*k2*kh*kh // water held singly and in pairs
	return 1800 / w * (kh/(1-kh) + (one+2*two)/(1+one+two))
}

// Movement returns how much (mm) a piece of solid wood of a size (mm) across
// the grain grows when its moisture content rises by a number of per cent:
// ΔD = D·C·ΔMC, with C per per cent (Wood Handbook Eq 13-2). It holds from 6 to
// 14 % moisture content; outside it is an estimate.
func Movement(size, coefficient, rise float64) float64 { return size * coefficient * rise }

// Swelling returns how much (mm) a piece of the material of a size (mm) grows
// at a temperature (°C) from one relative humidity (%) to another, given time.
// A solid wood is taken in its direction of largest movement. The value is not
// known where no source gives the material's movement.
func (m Material) Swelling(size, from, to, celsius float64) Value {
	if m.PerHumidity.Known() {
		return m.PerHumidity.Times(size * (to - from))
	}
	most := m.Tangential
	if m.Radial.Typical > most.Typical {
		most = m.Radial
	}
	rise := EquilibriumMoisture(to, celsius) - EquilibriumMoisture(from, celsius)
	return most.Times(Movement(size, 1, rise))
}
