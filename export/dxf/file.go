package dxf

import (
	"github.com/yofu/dxf/block"
	"github.com/yofu/dxf/class"
	yofu "github.com/yofu/dxf/drawing"

	"stopwright/export/drawing"
)

// The two blocks that every file has. The entities belong to the first.
const (
	modelSpace = "*Model_Space"
	paperSpace = "*Paper_Space"
)

// bytesPerEntity is about what a CIRCLE takes; it only sizes the buffer.
const bytesPerEntity = 160

// file returns the bytes of a checked drawing.
func file(d drawing.Drawing) []byte {
	ext := extent(d)
	head := &header{extent: ext}
	objs, plotStyle := objects()
	tabs := newTables(d, ext, plotStyle)
	sections := []yofu.Section{
		head,
		class.New(),
		tabs.all,
		block.Blocks{block.NewBlock(modelSpace, ""), block.NewBlock(paperSpace, "")},
		entities(d, tabs),
		objs,
	}

	handle := 1 // 0 stands for no object
	for _, s := range sections[1:] {
		s.SetHandle(&handle)
	}
	head.SetHandle(&handle) // the first handle that is free

	r := newRecords(len(d.Entities) * bytesPerEntity)
	for _, s := range sections {
		s.Format(r)
	}
	r.WriteString(0, "EOF")
	return r.out
}

// extent returns the bounds of the geometry alone; of a drawing without any,
// the origin.
func extent(d drawing.Drawing) drawing.Bounds {
	var geometry drawing.Drawing
	for _, e := range d.Entities {
		if _, lettering := e.Shape.(drawing.Text); !lettering {
			geometry.Entities = append(geometry.Entities, e)
		}
	}
	if b := geometry.Bounds(); !b.Empty() {
		return b
	}
	return drawing.Bounds{}
}
