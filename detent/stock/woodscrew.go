package stock

import (
	"math"
	"slices"
	"strconv"

	"stopwright/detent/measure"
)

// WoodScrew is a wood screw of a gauge.
type WoodScrew struct {
	Gauge    int   // 8 for #8
	Shank    Value // diameter, mm: also the clearance hole through the upper part
	LeadSoft Value // diameter of the lead hole in softwood, mm
	LeadHard Value // the same in hardwood
}

// Designation returns the gauge as it is written: #8.
func (s WoodScrew) Designation() string { return "#" + strconv.Itoa(s.Gauge) }

// Share of the root diameter that is drilled ahead of a screw under load (Wood
// Handbook, FPL-GTR-282, Eq 8-10), and of the shank that the root is.
const (
	leadSoftShare = 0.70
	leadHardShare = 0.90
	rootShare     = 2.0 / 3
)

var (
	shankTable = Evidence{"USDA Wood Handbook FPL-GTR-282 Table 8-9", Transcribed}
	shankRule  = Evidence{"ASME B18.6.1, 0.060 + 0.013 n inch", Memory}
	leadRule   = Evidence{"USDA Wood Handbook FPL-GTR-282 Eq 8-10, root taken as two thirds of the shank", Memory}
	leadDrill  = Evidence{"common practice, a number drill", CommonPractice}
)

// woodScrews holds the gauges that the handbook lists, and between them those
// that are sold as well. Numbers of drills are given where shops agree on one.
var woodScrews = []WoodScrew{
	ruled(2),
	ruled(3),
	listed(4, 2.84),
	ruled(5),
	listed(6, 3.51).drilled(1.6129, 2.1844), // #52, #44
	ruled(7),
	listed(8, 4.17).drilled(1.9304, 2.7940), // #48, #35
	ruled(9),
	listed(10, 4.83).drilled(2.2606, 3.0480), // #43, #31
	listed(12, 5.49),
	listed(14, 6.15),
	ruled(16),
	ruled(18),
	listed(20, 8.13),
	listed(24, 9.45),
}

// WoodScrews returns the wood screws #2 to #24, the smallest first.
func WoodScrews() []WoodScrew { return slices.Clone(woodScrews) }

// GaugeShank returns the shank (mm) of a wood screw of a gauge, by the rule
// 0.060 + 0.013 n inch.
func GaugeShank(gauge int) float64 {
	return (60 + 13*float64(gauge)) / 1000 * measure.MillimetresPerInch
}

// listed is a screw whose shank (mm) the handbook prints.
func listed(gauge int, shank float64) WoodScrew { return screw(gauge, figure(shank, shankTable)) }

// ruled is a screw whose shank follows from its gauge, to the hundredths of a
// mm that the handbook prints.
func ruled(gauge int) WoodScrew {
	return screw(gauge, figure(math.Round(GaugeShank(gauge)*100)/100, shankRule))
}

// screw is a screw whose lead holes follow from its shank.
func screw(gauge int, shank Value) WoodScrew {
	root := shank.Typical * rootShare
	return WoodScrew{gauge, shank, figure(root*leadSoftShare, leadRule), figure(root*leadHardShare, leadRule)}
}

// drilled returns the screw with the drills (mm) that shops use for its lead
// holes in softwood and in hardwood.
func (s WoodScrew) drilled(soft, hard float64) WoodScrew {
	s.LeadSoft, s.LeadHard = figure(soft, leadDrill), figure(hard, leadDrill)
	return s
}
