package drawing

import (
	"math"

	"stopwright/assets/words"
	"stopwright/detent/geom"
	"stopwright/detent/plan"
	"stopwright/detent/plate"
)

// Info is what every sheet says besides the drawing.
type Info struct {
	Words *words.Catalogue
	Date  string // as the caller writes it; empty: none given

	// Depths gives the layers of a file that are cut names with their depths.
	Depths bool
}

// The sizes of a file's lettering, mm (ISO 3098-1 series).
const (
	tagSize   = 2.5
	titleSize = 5.0
	lineStep  = 1.7 // line spacing over size
	margin    = 10.0
	partGap   = 30.0 // between parts that lie side by side
)

// NoteSize is the size of the words below a drawing, mm.
const NoteSize = 3.5

// PartSheet draws one part as it lies at the drill, pivot at the origin, with
// its seats' tags and, below, what the sheet must say and which layers it has.
func PartSheet(pl *plate.Plate, part plan.Part, info Info) Drawing {
	d := Part(pl, part, AsAtDrill)
	if part == pl.SeatsPart || part == plan.PartWearRing {
		seatTags(&d, pl, AsAtDrill.Mirrored(pl.SeatsPart))
	}
	if part == pl.CatchPart {
		pocketTags(&d, pl, AsAtDrill.Mirrored(part))
	}
	if info.Depths {
		d.depthNames(pl, part)
	}
	Notes(&d, partNotes(pl, part, info))
	layerTable(&d, pl, part, info.Words)
	return d
}

// AllParts draws every part side by side, each with its own frame marked: a
// cross through its pivot and where that pivot lies in the file.
func AllParts(pl *plate.Plate, info Info) Drawing {
	var d Drawing
	x := 0.0
	for k, part := range AllPartsOf(pl.Plan) {
		sheet := PartSheet(pl, part, info)
		b := sheet.Bounds()
		if k > 0 {
			x = math.Ceil(x + partGap - b.Min.X) // whole, so that the name says it exactly
		}
		frame(&sheet, plate.OutlineOf(pl.Plan, part), info.Words.Text(byOrigin(part, "sheet.frame", "sheet.frame.middle"), words.Args{
			"Part": PartName(info.Words, part), "X": words.MM(x), "Y": words.MM(0),
		}))
		d.Place(sheet, Transform{Scale: 1, Move: geom.Point{X: x}})
		x += b.Max.X
	}
	return d
}

// frame marks a part's own origin and axes, and writes its name above them from
// the left, where the notes below are always the wider.
func frame(d *Drawing, o plate.Outline, name string) {
	left := d.Bounds().Min.X
	right, up := o.Reach(90)+margin, o.Reach(0)+margin
	d.Add(Frame, Line{geom.Point{X: -right}, geom.Point{X: right}})
	d.Add(Frame, Line{geom.Point{Y: -up}, geom.Point{Y: up}})
	d.Add(Lettering, Text{At: geom.Point{X: left, Y: up + tagSize}, Size: NoteSize, Text: name})
}

// byOrigin returns the key of a text for what lies at a part's origin: the pivot,
// or the middle of a part that it does not pass through.
func byOrigin(part plan.Part, pivot, middle string) string {
	if part == plan.PartCarrier || part == plan.PartPad {
		return middle
	}
	return pivot
}

// PartName returns the name of a part in words.
func PartName(c *words.Catalogue, part plan.Part) string { return c.Text("part." + string(part)) }

// MaterialName returns the name of a material in words; one that the catalogue
// does not know as the plan writes it.
func MaterialName(c *words.Catalogue, material string) string {
	if key := "material." + material; c.Has(key) {
		return c.Text(key)
	}
	return material
}

// ViewName says which face of a part is shown, as it lies at the drill.
func ViewName(c *words.Catalogue, part plan.Part) string {
	return c.Text("view." + string(plate.FaceOf(part)))
}

// partNotes returns what a part's sheet must say.
func partNotes(pl *plate.Plate, part plan.Part, info Info) []string {
	c := info.Words
	lines := []string{
		Title(pl.Plan, c, ""),
		c.Text("sheet.part", words.Args{"Part": PartName(c, part), "View": ViewName(c, Like(pl, part))}),
		c.Text("sheet.thick", words.Args{
			"Thickness": words.MM(plate.ThicknessOf(pl.Plan, part)), "Material": MaterialName(c, plate.MaterialOf(pl.Plan, part)),
		}),
		c.Text(byOrigin(part, "sheet.units", "sheet.units.middle")),
	}
	if info.Date != "" {
		lines = append(lines, c.Text("sheet.date", words.Args{"Date": info.Date}))
	}
	return append(lines, c.Text("sheet.witness"),
		c.Text("caution.unplug"), c.Text("caution.clamp"), c.Text("caution.eyes"), c.Text("caution.manual"))
}

// Notes writes lines below everything drawn so far, the first as a title.
func Notes(d *Drawing, lines []string) {
	b := d.Bounds()
	y := b.Min.Y - margin
	for i, text := range lines {
		size := NoteSize
		if i == 0 {
			size = titleSize
		}
		if text != "" {
			d.Add(Lettering, Text{At: geom.Point{X: b.Min.X, Y: y - size}, Size: size, Text: text})
		}
		y -= size * lineStep
	}
}

// seatTags writes each seat's tag on the pivot side of it.
func seatTags(d *Drawing, pl *plate.Plate, mirror bool) {
	for i, s := range pl.Seats {
		tag(d, Item{SeatItem, i}, s.Tag, s.Azimuth, s.Radius-pl.Plan.Seat.Mouth()/2, mirror)
	}
}

// pocketTags writes each catch's name on the pivot side of its pocket.
func pocketTags(d *Drawing, pl *plate.Plate, mirror bool) {
	for i, p := range pl.Pockets {
		tag(d, Item{PocketItem, i}, p.Name, p.Azimuth, p.Radius-p.Widest()/2, mirror)
	}
}

// tag writes a name just inside radius at an azimuth.
func tag(d *Drawing, item Item, name string, az geom.Angle, radius float64, mirror bool) {
	at := geom.Polar(radius-1.5*tagSize, az)
	if mirror {
		at = at.MirrorX()
	}
	d.AddItem(Lettering, Text{At: at, Size: tagSize, Align: Centre, Text: name}, item)
}
