package ui

import (
	"strconv"
	"strings"

	"stopwright/assets/words"
	"stopwright/detent/angles"
	"stopwright/detent/geom"
	"stopwright/detent/measure"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// args is what the texts of a page are filled in with.
type args = words.Args

// deg is an angle in a text.
func deg(a geom.Angle) words.Deg { return words.Deg(a) }

// percent writes a share, 0 to 1. All of it and none are said only where that is
// so.
func percent(share float64) string {
	switch n := int(share*100 + 0.5); {
	case n == 100 && share < 1:
		return "> 99 %"
	case n == 0 && share > 0:
		return "< 1 %"
	default:
		return strconv.Itoa(n) + " %"
	}
}

// grouped writes a count with a space before every three digits.
func grouped(n int) string {
	digits := strconv.Itoa(n)
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "\u00a0" + digits[i:]
	}
	return digits
}

// truthWords says how true a stop will be, what makes most of it, and what would
// bring it within the target.
func (w *Window) truthWords(pl *plate.Plate, stop int) string {
	t, truth := w.words.Text, pl.Trueness
	if len(pl.Stops) == 0 {
		return t("truth.none")
	}
	zeroed, ok := plate.StopError{}, false
	if stop >= 0 {
		zeroed, ok = truth.Zeroed(stop)
	}
	if !ok {
		return t("truth.nothing")
	}
	drilled, _ := truth.Drilled(stop)
	target := geom.Angle(pl.Plan.Shop.Target)
	values := args{
		"Angle": deg(pl.Stops[stop].Angle), "Reference": deg(pl.Stops[truth.Reference].Angle), "Target": deg(target),
		"Zeroed": deg(zeroed.Interval95), "Worst": deg(zeroed.Worst), "Drilled": deg(drilled.Interval95),
	}
	if stop == truth.Reference {
		return t("truth.zero", values)
	}
	lines := []string{t("truth.widest", values)}
	if w.store.Selection().Lead >= 0 {
		lines[0] = t("truth.at", values)
	}
	lines = append(lines, t("truth.within", values))
	if most, share := chiefCause(zeroed); share > 0 {
		lines = append(lines, t("truth.most", args{"Cause": w.causeName(most), "Share": percent(share)}))
	}
	if zeroed.Interval95 <= target {
		lines = append(lines, t("truth.good", values))
	} else {
		lines = append(lines, t("truth.over", values))
	}
	if reach, needed := pl.ReachOf(stop, target); needed {
		lines = append(lines, w.reachWords(reach))
	}
	return strings.Join(lines, " ")
}

// chiefCause returns the cause with the largest share.
func chiefCause(e plate.StopError) (most plate.Cause, share float64) {
	for c := range plate.Causes {
		if s := e.Share(c); s > share {
			most, share = c, s
		}
	}
	return most, share
}

// causeName names what makes a stop miss its angle.
func (w *Window) causeName(c plate.Cause) string {
	if c != plate.GuidePlay {
		return w.words.Text("truth.cause." + c.String())
	}
	by := plan.GuidePivot
	if p := w.store.Plan(); p.Turntable.GuidedBy == plan.GuideCollar && p.Collar != nil {
		by = plan.GuideCollar
	}
	return w.words.Text("truth.cause.guide." + string(by))
}

// reachWords says what single changes would reach the target.
func (w *Window) reachWords(r plate.Reach) string {
	t := w.words.Text
	var ways []string
	switch {
	case r.Ring > 0 && r.RingFits:
		ways = append(ways, t("truth.way.ring", args{"Radius": words.MM(r.Ring)}))
	case r.Ring > 0:
		ways = append(ways, t("truth.way.ring.wide", args{"Radius": words.MM(r.Ring)}))
	}
	if r.Play > 0 {
		ways = append(ways, t("truth.way.pivot", args{"Play": words.MM(r.Play)}))
	}
	if len(r.Methods) > 0 {
		ways = append(ways, t("truth.way.method", args{"Method": t("choice." + r.Methods[0].ID)}))
	}
	if len(ways) == 0 {
		return t("truth.reach.none")
	}
	all := ways[len(ways)-1]
	if len(ways) > 1 {
		all = t("truth.or", args{"First": strings.Join(ways[:len(ways)-1], ", "), "Last": all})
	}
	return t("truth.reach", args{"Ways": all})
}

// jointWords says what the least true stop does to a frame, and how true cuts
// must be for the gap wanted.
func (v *truthView) jointWords() string {
	w, pl := v.w, v.w.store.Report().Plate
	_, worst, ok := pl.Trueness.WorstZeroed()
	if !ok {
		return ""
	}
	n, length := v.sideCount(), v.jointLength()
	corner, _ := angles.CornerGap(length, worst.Interval95)
	last, closes := angles.ClosingGap(length, n, worst.Interval95)
	if !closes {
		return w.words.Text("truth.joint.open", args{"Sides": n})
	}
	wanted, err := w.units().ReadLength(v.wanted.Text)
	if err != nil || wanted < 0 {
		return w.words.Text("truth.joint.unread", args{"Text": v.wanted.Text})
	}
	return w.words.Text("truth.joint.says", args{
		"Sides": n, "Width": words.MM(pl.Plan.Shop.StockWidth), "Gap": words.MM(corner), "Closing": words.MM(last),
		"Wanted": words.MM(wanted), "Allowed": deg(angles.AllowedOff(length, n, wanted)),
	})
}

// seasonWords says what the year's air does to the plate.
func (w *Window) seasonWords(pl *plate.Plate) string {
	t, s, air := w.words.Text, plate.NewSeason(pl.Plan), pl.Plan.Shop.Humidity
	number := func(x float64) string { return w.decimal(measure.Trim(x, 1)) }
	lines := []string{t("truth.season.air", args{
		"Dry": number(s.Dry.Moisture), "Wet": number(s.Wet.Moisture), "Low": number(air.Low), "High": number(air.High),
	})}
	if s.Growth.Known() {
		lines = append(lines, t("truth.season.grows", args{"Growth": words.MM(s.Growth.Typical)}))
	} else {
		lines = append(lines, t("truth.season.unknown"))
	}
	if pl.Plan.Collar == nil {
		return strings.Join(append(lines, t("truth.season.nocollar")), " ")
	}
	values := args{"Least": words.MM(s.Least()), "Choose": words.MM(s.Choose)}
	switch {
	case !s.HasCollar:
		return strings.Join(append(lines, t("truth.season.unsure")), " ")
	case s.Least() <= 0:
		lines = append(lines, t("truth.season.binds", values))
	case s.Tight():
		lines = append(lines, t("truth.season.tight", values))
	case s.Loose(pl.Plan.Collar.Clearance):
		lines = append(lines, t("truth.season.loose", values))
	default:
		lines = append(lines, t("truth.season.right", values))
	}
	return strings.Join(append(lines, t("truth.season.half")), " ")
}

// drilledWords says which angles the seats measured will really give.
func (w *Window) drilledWords(pl *plate.Plate) string {
	if len(pl.Drilled) == 0 {
		return w.words.Text("drilled.none")
	}
	var lines []string
	for _, d := range pl.Drilled {
		values := args{"Angle": words.Deg(d.Angle), "Catch": d.AsDrilled.Catch}
		if d.Catch >= 0 {
			values["Catch"] = pl.Plan.Catches[d.Catch].Name
		}
		key := "drilled.row.gone"
		if d.Stop >= 0 {
			key = "drilled.row"
			values["True"], values["Off"], values["Radial"] = deg(d.True), deg(d.Off), words.MM(d.Radial)
			if off, ok := pl.ReallyOffZeroed(d.Stop); ok {
				key, values["Zeroed"] = "drilled.row.zeroed", deg(off)
			}
		}
		lines = append(lines, w.words.Text(key, values))
	}
	return strings.Join(lines, "\n")
}
