package scale

import (
	"cmp"
	"math"
	"slices"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plate"
	"stopwright/export/drawing"
)

// Drawing returns the scale flat, seen from above with the table at zero and the
// pivot at the origin: the graduated ring, whose outer edge is the table's rim,
// and outside it, clear of the rim, the index with its vernier. Where the travel
// is short the ring is a piece of one. Angles are engraved as they are written in
// the language of a catalogue.
func Drawing(pl *plate.Plate, c *words.Catalogue, o Options) (drawing.Drawing, error) {
	d, err := newDial(pl, c, o)
	if err != nil {
		return drawing.Drawing{}, err
	}
	var out drawing.Drawing
	d.ring(&out)
	d.index0(&out)
	return out, nil
}

// ring draws the part that turns with the table.
func (d dial) ring(out *drawing.Drawing) {
	k := d.size()
	for i := d.lo; i <= d.hi; i++ {
		r := d.reading(i)
		az := d.onTable(r)
		spoke(out, drawing.Graduations, az, d.radius, d.radius-tick(r)*k)
		if numbered(r) {
			d.letter(out, d.number(r), az, d.radius-numberMid*k, numberSize*k)
		}
	}
	inner := d.radius - (labelFrom+rimMargin)*k
	if longest := d.labels(out); longest > 0 {
		inner -= longest
	}
	d.edges(out, math.Max(inner, d.radius/10))
}

// labels marks every stop by a small triangle that points at its place on the
// scale, with its label running in towards the pivot where there is room beside
// the last one, and returns the length of the longest label, mm.
func (d dial) labels(out *drawing.Drawing) (longest float64) {
	k := d.size()
	from := d.radius - labelFrom*k
	most := math.Min(labelMost*k, from/2)
	all := d.stops()
	slices.SortStableFunc(all, func(a, b stop) int { return cmp.Compare(a.reading, b.reading) })
	apart := geom.FromRadians(1.4 * labelSize * k / (from - most)).Degrees()
	last, first := math.Inf(-1), math.NaN()
	for _, s := range all {
		az := d.onTable(s.reading)
		d.triangle(out, az)
		if s.reading-last < apart || s.reading-first > 360-apart {
			continue
		}
		if last = s.reading; math.IsNaN(first) {
			first = last
		}
		text := d.engraved(s, labelSize*k, most)[0]
		longest = math.Max(longest, drawing.StrokeWidth(text, labelSize*k))
		d.inward(out, text, az, from, labelSize*k)
	}
	return longest
}

// triangle draws the mark of a stop.
func (d dial) triangle(out *drawing.Drawing, az geom.Angle) {
	k := d.size()
	tip := geom.Polar(d.radius-stopTip*k, az)
	foot := geom.Polar(d.radius-stopFoot*k, az)
	side := geom.Polar(stopHalf*k, az+90)
	a, b := foot.Add(side), foot.Sub(side)
	for _, l := range [3]drawing.Line{{A: tip, B: a}, {A: a, B: b}, {A: b, B: tip}} {
		out.Add(drawing.Graduations, l)
	}
}

// edges draws the outline of the ring, or of the piece that the graduations
// take, with a margin at its ends.
func (d dial) edges(out *drawing.Drawing, inner float64) {
	if d.whole {
		out.Add(drawing.Outline, drawing.Circle{Radius: d.radius})
		out.Add(drawing.Outline, drawing.Circle{Radius: inner})
		return
	}
	margin := geom.FromRadians(vernierEdge * d.size() / d.radius)
	a, b := d.onTable(d.reading(d.lo)), d.onTable(d.reading(d.hi))
	sector(out, inner, d.radius, min(a, b)-margin, max(a, b)+margin)
}

// index0 draws the part that stands still: the index and its vernier.
func (d dial) index0(out *drawing.Drawing) {
	k := d.size()
	inner := d.radius + vernierGap
	var first, last geom.Angle
	for _, m := range d.vernierMarks() {
		az := d.onTable(m.at.Degrees())
		spoke(out, drawing.Graduations, az, inner, inner+m.length*k)
		if m.number != "" {
			d.letter(out, m.number, az, inner+numberMid*k, numberSize*k)
		}
		first, last = min(first, az-d.index), max(last, az-d.index)
	}
	margin := geom.FromRadians(vernierEdge * k / d.radius)
	sector(out, inner, inner+vernierWidth*k, d.index+first-margin, d.index+last+margin)
}

// sector draws the outline of a piece of a ring between two azimuths, closed.
func sector(out *drawing.Drawing, inner, outer float64, from, to geom.Angle) {
	arc := func(r float64) drawing.Shape {
		return drawing.ArcOf(geom.Arc{Radius: r, From: from, Sweep: to - from})
	}
	out.Add(drawing.Outline, arc(outer))
	spoke(out, drawing.Outline, from, outer, inner)
	out.Add(drawing.Outline, arc(inner))
	spoke(out, drawing.Outline, to, inner, outer)
}

// spoke draws a line along a radius.
func spoke(out *drawing.Drawing, l drawing.Layer, az geom.Angle, from, to float64) {
	out.Add(l, drawing.Line{A: geom.Polar(from, az), B: geom.Polar(to, az)})
}

// upright returns the angle at which letters at an azimuth stand so that they
// are upright to the operator when that azimuth comes to the index.
func (d dial) upright(az geom.Angle) float64 {
	if _, cos := d.index.SinCos(); cos > 0 { // beyond the pivot: tops point outwards
		return (-az).Wrap().Degrees()
	}
	return (180 - az).Wrap().Degrees()
}

// letter engraves a text across a radius, its middle at that radius.
func (d dial) letter(out *drawing.Drawing, text string, az geom.Angle, radius, size float64) {
	out.Engrave(drawing.Text{At: geom.Polar(radius, az), Size: size, Angle: d.upright(az), Align: drawing.Centre, Text: text})
}

// inward engraves a text along a radius, from that radius towards the pivot,
// turned a quarter to the left of the letters across.
func (d dial) inward(out *drawing.Drawing, text string, az geom.Angle, radius, size float64) {
	mid := geom.Polar(radius-drawing.StrokeWidth(text, size)/2, az)
	out.Engrave(drawing.Text{At: mid, Size: size, Angle: d.upright(az) + 90, Align: drawing.Centre, Text: text})
}
