package dxf

import (
	"github.com/yofu/dxf/entity"
	"github.com/yofu/dxf/format"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/table"

	"stopwright/export/drawing"
)

// anchor is a pair of alignment codes of TEXT, from the DXF Reference.
type anchor struct{ across, up int }

// Group 72 (across) and 73 (up).
const (
	left, centre, right = 0, 1, 2

	baseLine, middle, top = 0, 2, 3
)

var anchors = map[drawing.Align]anchor{
	drawing.Left:   {left, baseLine},
	drawing.Centre: {centre, middle},
	drawing.Right:  {right, baseLine},
	drawing.Top:    {centre, top},
	drawing.Bottom: {centre, baseLine},
}

// lettering is a TEXT entity. The library's own leaves out the alignment point
// of a text that stands on its base line unless it starts there, and readers
// then put it at the origin; so this one writes itself.
type lettering struct {
	*entity.Text
	owner handle.Handler
	anchor
}

func newLettering(s drawing.Text, text string, style *table.Style) *lettering {
	t := entity.NewText()
	t.Coord1 = coordinates(s.At)
	t.Height = s.Size
	t.Rotation = turn(s.Angle)
	t.Value = text
	t.Style = style
	return &lettering{Text: t, anchor: anchors[s.Align]}
}

// SetOwner says which block the text belongs to.
func (t *lettering) SetOwner(h handle.Handler) { t.owner = h }

// Format writes the entity.
func (t *lettering) Format(f format.Formatter) {
	f.WriteString(0, "TEXT")
	f.WriteHex(5, t.Handle())
	f.WriteHex(330, t.owner.Handle())
	f.WriteString(100, "AcDbEntity")
	f.WriteString(8, t.Layer().Name())
	f.WriteString(100, "AcDbText")
	writePoint(f, 10, t.Coord1[0], t.Coord1[1])
	f.WriteFloat(40, t.Height)
	f.WriteString(1, t.Value)
	f.WriteFloat(50, t.Rotation)
	f.WriteString(7, t.Style.Name())
	f.WriteInt(72, t.across)
	if t.anchor != (anchor{left, baseLine}) {
		writePoint(f, 11, t.Coord1[0], t.Coord1[1])
	}
	f.WriteString(100, "AcDbText") // the second one: the vertical alignment
	f.WriteInt(73, t.up)
}
