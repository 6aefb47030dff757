package dxf

import (
	"github.com/yofu/dxf/format"

	"stopwright/export/drawing"
)

// Values of header variables, from the DXF Reference.
const (
	version     = "AC1015" // the release of 2000
	codePage    = "ANSI_1252"
	millimetres = 4 // $INSUNITS
	metric      = 1 // $MEASUREMENT: which hatch and line type files go with it
	decimal     = 2 // $LUNITS
	degrees     = 0 // $AUNITS
)

// header is the HEADER section. The library's own lacks $MEASUREMENT and
// $DWGCODEPAGE, without which a reader falls back on inches and on the code
// page of its own machine.
type header struct {
	extent   drawing.Bounds
	nextFree int // handle
}

// SetHandle takes the first free handle.
func (h *header) SetHandle(next *int) { h.nextFree = *next }

// Format writes the section.
func (h *header) Format(f format.Formatter) {
	f.WriteString(0, "SECTION")
	f.WriteString(2, "HEADER")
	variable(f, "$ACADVER").WriteString(1, version)
	variable(f, "$DWGCODEPAGE").WriteString(3, codePage)
	variable(f, "$INSBASE")
	writePoint(f, 10, 0, 0)
	variable(f, "$EXTMIN")
	writePoint(f, 10, h.extent.Min.X, h.extent.Min.Y)
	variable(f, "$EXTMAX")
	writePoint(f, 10, h.extent.Max.X, h.extent.Max.Y)
	variable(f, "$LTSCALE").WriteFloat(40, 1)
	variable(f, "$LUNITS").WriteInt(70, decimal)
	variable(f, "$AUNITS").WriteInt(70, degrees)
	variable(f, "$INSUNITS").WriteInt(70, millimetres)
	variable(f, "$MEASUREMENT").WriteInt(70, metric)
	variable(f, "$HANDSEED").WriteHex(5, h.nextFree)
	f.WriteString(0, "ENDSEC")
}

// variable names the header variable whose value is written next.
func variable(f format.Formatter, name string) format.Formatter {
	f.WriteString(9, name)
	return f
}

// writePoint writes a point of the drawing plane as the group codes first,
// first+10 and first+20.
func writePoint(f format.Formatter, first int, x, y float64) {
	f.WriteFloat(first, x)
	f.WriteFloat(first+10, y)
	f.WriteFloat(first+20, 0)
}
