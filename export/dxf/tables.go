package dxf

import (
	"math"
	"strconv"
	"strings"

	"github.com/yofu/dxf/color"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/table"

	"stopwright/export/drawing"
)

// tables is the TABLES section of one file, made afresh for it, and what the
// entities need of it.
type tables struct {
	all    table.Tables
	layers map[drawing.Layer]*table.Layer
	style  *table.Style
	space  handle.Handler // the block record that owns the entities
}

func newTables(d drawing.Drawing, ext drawing.Bounds, plotStyle handle.Handler) tables {
	lines := newLineTypes()
	t := tables{
		layers: map[drawing.Layer]*table.Layer{},
		style:  table.NewStyle("Standard"),
	}
	layers := t.addLayers(d, lines, plotStyle)
	model, paper := table.NewBlockRecord(modelSpace), table.NewBlockRecord(paperSpace)
	t.space = model
	t.all = table.Tables{
		newTable("VPORT", viewOf(ext)),
		lines.table,
		layers,
		newTable("STYLE", t.style),
		newTable("VIEW"),
		newTable("UCS"),
		newTable("APPID", table.NewAppID("ACAD")),
		newTable("DIMSTYLE", table.NewDimStyle("Standard")),
		newTable("BLOCK_RECORD", model, paper),
	}
	return t
}

func newTable(name string, rows ...table.SymbolTable) *table.Table {
	t := table.NewTable(name)
	for _, r := range rows {
		t.Add(r)
	}
	return t
}

// addLayers lists layer 0, which every file must have, then the drawing's own
// layers in their order, then any other that is used, as it comes.
func (t *tables) addLayers(d drawing.Drawing, lines *lineTypes, plotStyle handle.Handler) *table.Table {
	layers := newTable("LAYER")
	add := func(p drawing.Pen) {
		if _, known := t.layers[p.Layer]; known {
			return
		}
		l := table.NewLayer(string(p.Layer), color.ColorNumber(p.Colour), lines.of(p.Dash))
		l.SetLineWidth(int(math.Round(p.Width * 100))) // hundredths of a mm
		l.SetPlotStyle(plotStyle)
		t.layers[p.Layer] = l
		layers.Add(l)
	}
	add(drawing.PenOf("0"))
	for _, p := range drawing.Pens {
		if p.Layer != drawing.Shade {
			add(p)
		}
	}
	for _, e := range d.Entities {
		add(drawing.PenOf(e.Layer))
	}
	return layers
}

// lineTypes is the table of line types, which grows as pens ask for dashes.
type lineTypes struct {
	table      *table.Table
	continuous *table.LineType
	dashed     map[string]*table.LineType // by [dashName]
}

func newLineTypes() *lineTypes {
	c := table.NewLineType("Continuous", "Solid line")
	return &lineTypes{
		table:      newTable("LTYPE", table.NewLineType("ByLayer", ""), table.NewLineType("ByBlock", ""), c),
		continuous: c,
		dashed:     map[string]*table.LineType{},
	}
}

// usualNames of patterns, by how many lengths they have. A reader that knows
// only these draws its own pattern of the kind; all others draw the lengths
// that stand in the file.
var usualNames = map[int]string{2: "DASHED", 4: "CENTER", 6: "PHANTOM"}

// of returns the line type of a dash: mm drawn, mm left, and so on.
func (l *lineTypes) of(dash []float64) *table.LineType {
	if len(dash) == 0 {
		return l.continuous
	}
	name := dashName(dash)
	if lt, known := l.dashed[name]; known {
		return lt
	}
	lengths := make([]float64, len(dash))
	for i, v := range dash {
		lengths[i] = v
		if i%2 == 1 {
			lengths[i] = -v // the format tells gaps by their sign
		}
	}
	title, usual := usualNames[len(dash)]
	if _, err := l.table.Contains(title); !usual || err == nil {
		title = name // a second pattern of its kind
	}
	lt := table.NewLineType(title, "Drawn and left, in turn, mm", lengths...)
	l.dashed[name] = lt
	l.table.Add(lt)
	return lt
}

// dashName makes a name of the lengths, as in MM-8-1_5-1-1_5.
func dashName(dash []float64) string {
	name := "MM"
	for _, v := range dash {
		name += "-" + strings.ReplaceAll(strconv.FormatFloat(v, 'f', -1, 64), ".", "_")
	}
	return name
}

// What a reader's window shows when it opens the file: the geometry with a
// margin, in a window of the usual proportions.
const (
	viewMargin = 1.1
	viewAspect = 4.0 / 3
	emptyView  = 100.0 // mm high, where there is no geometry to go by
)

func viewOf(ext drawing.Bounds) *table.Viewport {
	v := table.NewViewport("*Active")
	v.UpperRight = []float64{1, 1} // the whole window
	v.ViewCenter = []float64{(ext.Min.X + ext.Max.X) / 2, (ext.Min.Y + ext.Max.Y) / 2}
	v.ViewDirection = []float64{0, 0, 1} // from above
	v.SnapSpacing = []float64{10, 10}
	v.GridSpacing = []float64{10, 10}
	v.AspectRatio = viewAspect
	v.Height = viewMargin * math.Max(ext.Height(), ext.Width()/viewAspect)
	if v.Height == 0 {
		v.Height = emptyView
	}
	return v
}
